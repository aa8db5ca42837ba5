using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Deliverables.Tables;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>A table on a sheet. A heading that begins with <c>#</c> stands over numbers.</summary>
internal sealed class PaperTable
{
    /// <summary>Letters of a text that wants room beside narrow columns.</summary>
    private const int LongText = 28;

    /// <summary>Columns that would stand too far apart on a wide sheet.</summary>
    private const int Few = 6;

    /// <summary>Columns from which on they stand closer together.</summary>
    private const int Many = 11;

    private readonly MarkupWriter markup;
    private readonly ImmutableArray<bool> numbers;

    private PaperTable(MarkupWriter markup, ImmutableArray<bool> numbers)
    {
        this.markup = markup;
        this.numbers = numbers;
    }

    /// <summary>Begins a table.</summary>
    public static PaperTable Open(MarkupWriter markup, string caption, params ReadOnlySpan<string> headings) =>
        Begin(markup, caption, headings.Length switch { <= Few => "roll few", >= Many => "roll many", _ => "roll" }, headings);

    /// <summary>Begins a table of few columns.</summary>
    public static PaperTable OpenNarrow(MarkupWriter markup, string caption, params ReadOnlySpan<string> headings) =>
        Begin(markup, caption, "roll narrow", headings);

    private static PaperTable Begin(MarkupWriter markup, string caption, string style, ReadOnlySpan<string> headings)
    {
        var numbers = ImmutableArray.CreateBuilder<bool>();
        markup.Open("div", ("class", style));
        markup.Open("table");
        markup.Element("caption", caption);
        markup.Open("thead");
        markup.Open("tr");
        foreach (var heading in headings)
        {
            numbers.Add(heading.StartsWith('#'));
            markup.Element("th", heading.TrimStart('#'), ("scope", "col"), ("class", numbers[^1] ? "n" : "t"));
        }
        markup.Close();
        markup.Close();
        markup.Open("tbody");
        return new PaperTable(markup, numbers.ToImmutable());
    }

    /// <summary>A row.</summary>
    public void Row(params ReadOnlySpan<Entry> cells) => Row("", cells);

    /// <summary>A row that looks different.</summary>
    public void Row(string style, ReadOnlySpan<Entry> cells)
    {
        markup.Open("tr", ("class", style));
        for (var i = 0; i < cells.Length; i++)
        {
            var (text, address, look) = cells[i];
            markup.Open("td", ("class", numbers[i] ? "n" : text.Length > LongText ? "t long" : "t"));
            if (address.Length > 0) markup.Inline("a", text, ("href", address), ("class", look));
            else if (look.Length > 0) markup.Inline("span", text, ("class", look));
            else markup.Text(text);
            markup.Close();
        }
        markup.Close();
    }

    /// <summary>Ends the table.</summary>
    public void Close()
    {
        markup.Close();
        markup.Close();
        markup.Close();
    }

    /// <summary>A table of the documents as it is.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="view">The table.</param>
    /// <param name="caption">What it is.</param>
    /// <param name="most">Rows at most.</param>
    /// <param name="address">Where the cell of a column leads; empty for nowhere.</param>
    public static void Write(MarkupWriter markup, TableView view, string caption, int most, Func<string, string, string> address) =>
        Write(markup, view, caption, most, (column, text, _) => address(column, text));

    /// <summary>The same with ways that hang on the whole row.</summary>
    /// <param name="markup">Where to.</param>
    /// <param name="view">The table.</param>
    /// <param name="caption">What it is.</param>
    /// <param name="most">Rows at most.</param>
    /// <param name="address">Where the cell of a column leads, by the column, the text and the row; empty for nowhere.</param>
    public static void Write(MarkupWriter markup, TableView view, string caption, int most, Func<string, string, int, string> address)
    {
        view = FittedTable.Filled(view);
        string[] headings = [.. view.Columns.Select(c => (IsNumber(c.Kind) ? "#" : "") + c.Name.Replace('-', ' '))];
        var table = Open(markup, caption, headings);
        var (left, number) = (0, 0);
        foreach (var row in view.Rows())
        {
            number++;
            if (number > most)
            {
                left++;
                continue;
            }
            table.Row("", Entries(view, row, (column, text) => address(column, text, number - 1)));
        }
        table.Close();
        if (left > 0) markup.Element("p", $"{Numerals.Grouped(left)} more rows are in {view.Name}.csv among the documents.",
            ("class", "soft"));
    }

    private static Entry[] Entries(TableView view, Cell[] row, Func<string, string, string> address)
    {
        var entries = new Entry[view.Columns.Length];
        for (var i = 0; i < entries.Length; i++)
        {
            var text = i < row.Length ? Words(row[i], view.Columns[i].Kind) : "";
            var style = text is "fail" ? "stop" : "";
            entries[i] = new Entry(text, text.Length > 0 ? address(view.Columns[i].Name, text) : "", style);
        }
        return entries;
    }

    private static bool IsNumber(ColumnKind kind) => kind is ColumnKind.Whole or ColumnKind.Money or ColumnKind.Real;

    private static string Words(Cell cell, ColumnKind kind) => !cell.IsNumber ? cell.Text : kind switch
    {
        ColumnKind.Money => Numerals.Grouped((decimal)cell.Number, 2),
        ColumnKind.Whole => Numerals.Grouped((decimal)cell.Number),
        _ when Math.Abs(cell.Number) >= 1000 => Numerals.Grouped((decimal)cell.Number, cell.Number == Math.Floor(cell.Number) ? 0 : 2),
        _ => Numerals.Plain(Math.Round(cell.Number, 2)),
    };
}
