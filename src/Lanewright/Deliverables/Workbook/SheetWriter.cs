using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;
using Lanewright.Deliverables.Tables;
using Lanewright.Quantities;
using Cell = Lanewright.Deliverables.Tables.Cell;
using SheetCell = DocumentFormat.OpenXml.Spreadsheet.Cell;
using SheetColumn = DocumentFormat.OpenXml.Spreadsheet.Column;
using SheetInline = DocumentFormat.OpenXml.Spreadsheet.InlineString;
using SheetLetters = DocumentFormat.OpenXml.Spreadsheet.Text;

namespace Lanewright.Deliverables.Workbook;

/// <summary>Writes one sheet, row after row: nothing of a table stays in memory. Elements and attributes are made once and used for every
/// cell.</summary>
internal sealed class SheetWriter
{
    private readonly OpenXmlWriter writer;
    private readonly TableView table;
    private readonly SheetCell cell = new();
    private readonly CellValue value = new();
    private readonly SheetInline inline = new();
    private readonly SheetLetters letters = new();
    private readonly Row row = new();
    private readonly OpenXmlAttribute[][] textLooks;
    private readonly OpenXmlAttribute[][] numberLooks;
    private readonly decimal[] totals;
    private readonly OpenXmlAttribute[] keepBlanks = [new("xml", "space", "http://www.w3.org/XML/1998/namespace", "preserve")];

    private SheetWriter(OpenXmlWriter writer, TableView table)
    {
        this.writer = writer;
        this.table = table;
        totals = new decimal[table.Columns.Length];
        textLooks = [.. table.Columns.Select(c => Look(WorkbookStyles.Of(HoldsWords(c.Kind) ? c.Kind : ColumnKind.Text), isText: true))];
        numberLooks = [.. table.Columns.Select(c => Look(WorkbookStyles.Of(c.Kind), isText: false))];
    }

    /// <summary>Writes rows until the table or the sheet ends; true when rows are left.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="table">The table.</param>
    /// <param name="rows">Its rows, from the first not yet written.</param>
    /// <param name="most">Rows a sheet holds, the heading among them.</param>
    /// <param name="isFirst">Whether it is the sheet to open at.</param>
    public static bool Write(Stream stream, TableView table, RowsLeft rows, int most, bool isFirst)
    {
        using var writer = OpenXmlWriter.Create(stream);
        return new SheetWriter(writer, table).Write(rows, most, isFirst);
    }

    /// <summary>The name of a column by its number from 0: A to Z, then AA.</summary>
    public static string ColumnName(int column) =>
        (column >= 26 ? ColumnName((column / 26) - 1) : "") + (char)('A' + (column % 26));

    private static OpenXmlAttribute[] Look(uint style, bool isText)
    {
        var look = new OpenXmlAttribute("s", "", Numerals.Whole(style));
        return isText ? [look, new OpenXmlAttribute("t", "", "inlineStr")] : [look];
    }

    private static bool HoldsWords(ColumnKind kind) => kind is ColumnKind.Prose or ColumnKind.Mixed;

    private bool Write(RowsLeft rows, int most, bool isFirst)
    {
        writer.WriteStartDocument(true);
        writer.WriteStartElement(new Worksheet());
        writer.WriteElement(new SheetProperties(new PageSetupProperties { FitToPage = true }));
        View(isFirst);
        Widths();
        writer.WriteStartElement(new SheetData());
        Heading();
        var written = 1;
        while (written < most && rows.Next() is { } cells)
        {
            Row(cells);
            written++;
        }
        if (!rows.HasMore && written > 1 && table.Columns.Any(c => c.IsSummed)) Totals();
        writer.WriteEndElement();
        Page($"A1:{ColumnName(table.Columns.Length - 1)}{Numerals.Whole(written)}");
        writer.WriteEndElement();
        return rows.HasMore;
    }

    /// <summary>The filter and how the sheet is printed: as wide as the page and as long as it takes. The heading is repeated by a name of
    /// the book.</summary>
    private void Page(string all)
    {
        writer.WriteElement(new AutoFilter { Reference = all });
        writer.WriteElement(new PageMargins { Left = 0.5, Right = 0.5, Top = 0.6, Bottom = 0.6, Header = 0.3, Footer = 0.3 });
        writer.WriteElement(new PageSetup
        {
            PaperSize = 9,
            Orientation = OrientationValues.Landscape,
            FitToWidth = 1,
            FitToHeight = 0,
        });
        writer.WriteElement(new HeaderFooter(new OddFooter("&L&A&R&P / &N")));
        // The number of a port is a name: it may as well be 1/2.
        writer.WriteElement(new IgnoredErrors(new IgnoredError
        {
            SequenceOfReferences = new ListValue<StringValue> { InnerText = all },
            NumberStoredAsText = true,
        }));
    }

    /// <summary>The heading stays in sight.</summary>
    private void View(bool isFirst)
    {
        var pane = new Pane { VerticalSplit = 1, TopLeftCell = "A2", ActivePane = PaneValues.BottomLeft, State = PaneStateValues.Frozen };
        var view = new SheetView(pane) { WorkbookViewId = 0, TabSelected = isFirst };
        writer.WriteElement(new SheetViews(view));
    }

    private void Widths()
    {
        writer.WriteStartElement(new Columns());
        for (var i = 0; i < table.Columns.Length; i++)
        {
            var at = (uint)(i + 1);
            writer.WriteElement(new SheetColumn { Min = at, Max = at, Width = Math.Max(table.Columns[i].Width,
                table.Columns[i].Name.Length) + 3, CustomWidth = true });
        }
        writer.WriteEndElement();
    }

    private void Heading()
    {
        writer.WriteStartElement(row);
        var look = Look(WorkbookStyles.Heading, isText: true);
        foreach (var column in table.Columns) Text(column.Name, look);
        writer.WriteEndElement();
    }

    private void Row(Cell[] cells)
    {
        writer.WriteStartElement(row);
        for (var i = 0; i < cells.Length; i++)
        {
            if (cells[i].IsNumber) Number(cells[i].Number, numberLooks[i]);
            else if (cells[i].Text.Length == 0) Nothing(numberLooks[i]);
            else Text(cells[i].Text, textLooks[i]);
            if (table.Columns[i].IsSummed && cells[i].IsNumber) totals[i] += (decimal)cells[i].Number;
        }
        writer.WriteEndElement();
    }

    /// <summary>The last row, outside of the filter: sums of the columns that have one.</summary>
    private void Totals()
    {
        writer.WriteStartElement(row);
        for (var i = 0; i < table.Columns.Length; i++)
        {
            var style = WorkbookStyles.TotalOf(table.Columns[i].Kind);
            if (table.Columns[i].IsSummed) Number((double)totals[i], Look(style, isText: false));
            else if (i == 0) Text("total", Look(style, isText: true));
            else Nothing(Look(style, isText: false));
        }
        writer.WriteEndElement();
    }

    /// <summary>An empty cell has to stand there all the same: cells are counted, not named. It is no text, so that sums and filters
    /// pass it over.</summary>
    private void Nothing(OpenXmlAttribute[] look)
    {
        writer.WriteStartElement(cell, look);
        writer.WriteEndElement();
    }

    private void Number(double number, OpenXmlAttribute[] look)
    {
        writer.WriteStartElement(cell, look);
        writer.WriteStartElement(value);
        writer.WriteString(Numerals.Exact(number));
        writer.WriteEndElement();
        writer.WriteEndElement();
    }

    private void Text(string text, OpenXmlAttribute[] look)
    {
        writer.WriteStartElement(cell, look);
        writer.WriteStartElement(inline);
        if (NeedsBlanks(text)) writer.WriteStartElement(letters, keepBlanks);
        else writer.WriteStartElement(letters);
        writer.WriteString(SheetText.Of(text));
        writer.WriteEndElement();
        writer.WriteEndElement();
        writer.WriteEndElement();
    }

    private static bool NeedsBlanks(string text) => text.Length > 0 && (char.IsWhiteSpace(text[0]) || char.IsWhiteSpace(text[^1])
        || text.Contains('\n', StringComparison.Ordinal));
}
