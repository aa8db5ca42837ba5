using Lanewright.Quantities;

namespace Lanewright.Deliverables.Markup;

/// <summary>Writes elements, attributes and text as XML, which is also good HTML as long as only void elements are leaves.
/// Everything that is not an element's name is escaped, so no name in a plan can become markup.</summary>
public sealed class MarkupWriter(TextWriter writer)
{
    private readonly Stack<string> open = new();

    /// <summary>A number as attributes and paths take it.</summary>
    public static string Number(double value) => Numerals.Plain(Math.Round(value, 2));

    /// <summary>Begins an element.</summary>
    public void Open(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Tag(name, attributes);
        writer.Write('>');
        open.Push(name);
    }

    /// <summary>Ends the element begun last.</summary>
    public void Close()
    {
        writer.Write("</");
        writer.Write(open.Pop());
        writer.Write(">\n");
    }

    /// <summary>Ends the element begun last with no line break after it.</summary>
    public void CloseInline()
    {
        writer.Write("</");
        writer.Write(open.Pop());
        writer.Write('>');
    }

    /// <summary>An element with nothing in it.</summary>
    public void Leaf(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Tag(name, attributes);
        writer.Write("/>\n");
    }

    /// <summary>An element with text in it.</summary>
    public void Element(string name, string text, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        Text(text);
        Close();
    }

    /// <summary>An element with text in it, inside a line of text.</summary>
    public void Inline(string name, string text, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Open(name, attributes);
        Text(text);
        CloseInline();
    }

    /// <summary>Text.</summary>
    public void Text(string text) => Escape(VisibleText.Of(text), inAttribute: false);

    /// <summary>What this program itself wrote, such as a style sheet of constants; never anything of a plan.</summary>
    public void Trusted(string markup) => writer.Write(markup);

    private void Tag(string name, ReadOnlySpan<(string Name, string Value)> attributes)
    {
        writer.Write('<');
        writer.Write(name);
        foreach (var (attribute, value) in attributes)
        {
            writer.Write(' ');
            writer.Write(attribute);
            writer.Write("=\"");
            Escape(value, inAttribute: true);
            writer.Write('"');
        }
    }

    private void Escape(string text, bool inAttribute)
    {
        foreach (var c in CleanText.Of(text))
        {
            switch (c)
            {
                case '&': writer.Write("&amp;"); break;
                case '<': writer.Write("&lt;"); break;
                case '>': writer.Write("&gt;"); break;
                case '"': writer.Write("&quot;"); break;
                case '\'': writer.Write("&#39;"); break;
                // A parser would make these blanks, or drop the return.
                case '\r': writer.Write("&#13;"); break;
                case '\n' or '\t' when inAttribute: writer.Write(c == '\n' ? "&#10;" : "&#9;"); break;
                default: writer.Write(c); break;
            }
        }
    }
}
