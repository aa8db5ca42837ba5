using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;

namespace Lanewright.Deliverables.Report;

/// <summary>Writes a table of a page row by row. A heading that begins with <c>#</c> stands over a column of numbers,
/// one that begins with <c>@</c> over a column of sections of the page, and one that begins with <c>|</c> over words that are not
/// broken.</summary>
internal sealed class HtmlTable
{
    private readonly MarkupWriter markup;
    private readonly ImmutableArray<char> kinds;

    private HtmlTable(MarkupWriter markup, ImmutableArray<char> kinds)
    {
        this.markup = markup;
        this.kinds = kinds;
    }

    /// <summary>Begins a table.</summary>
    public static HtmlTable Open(MarkupWriter markup, params ReadOnlySpan<string> headings)
    {
        var kinds = ImmutableArray.CreateBuilder<char>(headings.Length);
        markup.Open("table");
        markup.Open("thead");
        markup.Open("tr");
        foreach (var heading in headings)
        {
            kinds.Add(heading[0]);
            if (heading[0] == '#') markup.Element("th", heading[1..], ("class", "n"), ("scope", "col"));
            else markup.Element("th", heading.TrimStart('@', '|'), ("scope", "col"));
        }
        markup.Close();
        markup.Close();
        markup.Open("tbody");
        return new HtmlTable(markup, kinds.ToImmutable());
    }

    /// <summary>A row of texts.</summary>
    public void Row(params ReadOnlySpan<LinkedText> cells) => Row("", cells);

    /// <summary>A row that sums the rows above.</summary>
    public void Sum(params ReadOnlySpan<LinkedText> cells) => Row("sum", cells);

    /// <summary>Ends the table.</summary>
    public void Close()
    {
        markup.Close();
        markup.Close();
    }

    private void Row(string style, ReadOnlySpan<LinkedText> cells)
    {
        if (style.Length > 0) markup.Open("tr", ("class", style));
        else markup.Open("tr");
        for (var i = 0; i < cells.Length; i++) Cell(i, cells[i]);
        markup.Close();
    }

    /// <summary>A verdict that needs action is marked by its box, not by colour alone.</summary>
    private void Cell(int column, LinkedText cell)
    {
        var text = cell.Text;
        if (kinds[column] == '#') markup.Open("td", ("class", "n"));
        else if (kinds[column] == '|') markup.Open("td", ("class", "w"));
        else markup.Open("td");
        if (text is ReportWords.Fails) markup.Inline("span", text, ("class", "stop"));
        else if (text is ReportWords.Unproven) markup.Inline("span", text, ("class", "open"));
        else if (cell.Address.Length > 0) markup.Inline("a", text, ("href", cell.Address));
        else if (kinds[column] == '@' && text.Length > 0) markup.Inline("a", text, ("href", "#" + text));
        else markup.Text(text);
        markup.Close();
    }
}
