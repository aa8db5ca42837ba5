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
    private readonly OpenXmlAttribute[] keepBlanks = [new("xml", "space", "http://www.w3.org/XML/1998/namespace", "preserve")];

    private SheetWriter(OpenXmlWriter writer, TableView table)
    {
        this.writer = writer;
        this.table = table;
        textLooks = [.. table.Columns.Select(_ => Look(WorkbookStyles.Of(ColumnKind.Text), isText: true))];
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

    private bool Write(RowsLeft rows, int most, bool isFirst)
    {
        writer.WriteStartDocument(true);
        writer.WriteStartElement(new Worksheet());
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
        writer.WriteEndElement();
        writer.WriteElement(new AutoFilter { Reference = $"A1:{ColumnName(table.Columns.Length - 1)}{Numerals.Whole(written)}" });
        writer.WriteElement(new PageMargins { Left = 0.5, Right = 0.5, Top = 0.6, Bottom = 0.6, Header = 0.3, Footer = 0.3 });
        writer.WriteElement(new PageSetup { PaperSize = 9, Orientation = OrientationValues.Landscape });
        writer.WriteEndElement();
        return rows.HasMore;
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
            else Text(cells[i].Text, textLooks[i]);
        }
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
        // An empty cell has to stand there all the same: cells are counted, not named.
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
