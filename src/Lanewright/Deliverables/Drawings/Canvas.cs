using Lanewright.Deliverables.Markup;

namespace Lanewright.Deliverables.Drawings;

/// <summary>Lines, shapes and text of a drawing. Looks live in <see cref="DrawingStyle"/>; this only places things.</summary>
internal sealed class Canvas(MarkupWriter markup)
{
    /// <summary>By how much a rim is wider than the line over it.</summary>
    public const double RimOver = 1.6;

    /// <summary>A straight line.</summary>
    public void Line(double x1, double y1, double x2, double y2, string style) => markup.Leaf("line",
        ("x1", N(x1)), ("y1", N(y1)), ("x2", N(x2)), ("y2", N(y2)), ("class", style));

    /// <summary>A rectangle.</summary>
    public void Box(double x, double y, double width, double height, string style, double round = 0)
    {
        if (round > 0)
            markup.Leaf("rect", ("x", N(x)), ("y", N(y)), ("width", N(width)), ("height", N(height)), ("rx", N(round)), ("class", style));
        else
            markup.Leaf("rect", ("x", N(x)), ("y", N(y)), ("width", N(width)), ("height", N(height)), ("class", style));
    }

    /// <summary>A path.</summary>
    public void Path(string data, string style) => markup.Leaf("path", ("d", data), ("class", style));

    /// <summary>A path in a colour that carries a value.</summary>
    public void Path(string data, string style, string colour) => markup.Leaf("path", ("d", data), ("class", style), ("stroke", colour));

    /// <summary>A path whose colour and width both carry a value.</summary>
    public void Stroke(string data, string colour, double width) => markup.Leaf("path",
        ("d", data), ("class", "load"), ("stroke", colour), ("stroke-width", N(width)));

    /// <summary>The rim that what is drawn over it in a colour stands out by, however light or dark the colour and the paper are.</summary>
    public void Rim(string data, double width) => markup.Leaf("path", ("d", data), ("class", "rim"), ("stroke-width", N(width)));

    /// <summary>A rectangle in a colour that carries a value.</summary>
    public void Filled(double x, double y, double width, double height, string fill) => markup.Leaf("rect",
        ("x", N(x)), ("y", N(y)), ("width", N(width)), ("height", N(height)), ("fill", fill));

    /// <summary>Text that runs upwards from its base point.</summary>
    public void Upright(double x, double y, string text, string style) => markup.Element("text", text,
        ("x", N(x)), ("y", N(y)), ("class", style), ("transform", $"rotate(-90 {N(x)} {N(y)})"));

    /// <summary>A circle.</summary>
    public void Circle(double x, double y, double radius, string style) => markup.Leaf("circle",
        ("cx", N(x)), ("cy", N(y)), ("r", N(radius)), ("class", style));

    /// <summary>A circle in a colour that carries a value.</summary>
    public void Circle(double x, double y, double radius, string style, string fill) => markup.Leaf("circle",
        ("cx", N(x)), ("cy", N(y)), ("r", N(radius)), ("class", style), ("fill", fill));

    /// <summary>Text on one line, its base line at y.</summary>
    public void Text(double x, double y, string text, string style = "")
    {
        if (text.Length == 0) return;
        if (style.Length == 0) markup.Element("text", text, ("x", N(x)), ("y", N(y)));
        else markup.Element("text", text, ("x", N(x)), ("y", N(y)), ("class", style));
    }

    /// <summary>Lines of text one below the other; gives the base line after the last.</summary>
    public double Lines(double x, double y, IEnumerable<string> lines, double step, string style = "")
    {
        foreach (var line in lines)
        {
            Text(x, y, line, style);
            y += step;
        }
        return y;
    }

    /// <summary>Begins a group.</summary>
    public void Begin(string style) => markup.Open("g", ("class", style));

    /// <summary>Begins what leads somewhere on a page; whether it leads anywhere.</summary>
    /// <param name="address">Where to; empty for nowhere.</param>
    /// <param name="words">What it is and does, for those who do not see it.</param>
    /// <param name="style">How the way looks and behaves.</param>
    public bool BeginWay(string address, string words, string style = "way")
    {
        if (address.Length == 0) return false;
        markup.Open("a", ("href", address), ("class", style), ("aria-label", words));
        return true;
    }

    /// <summary>Ends the group begun last.</summary>
    public void End() => markup.Close();

    /// <summary>A number as it stands in a path.</summary>
    public static string N(double value) => MarkupWriter.Number(value);
}
