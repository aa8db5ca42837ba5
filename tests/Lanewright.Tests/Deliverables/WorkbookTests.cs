using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Tables;
using Lanewright.Deliverables.Workbook;
using Cell = Lanewright.Deliverables.Tables.Cell;
using Column = Lanewright.Deliverables.Tables.Column;
using SheetCell = DocumentFormat.OpenXml.Spreadsheet.Cell;

namespace Lanewright.Tests.Deliverables;

/// <summary>The workbook opens without complaint and holds the tables as they are.</summary>
public sealed class WorkbookTests
{
    private const string Plan = """
        lanewright: 1
        name: book
        devices:
          a: { model: fixed-32x400, count: 2, name: "=1+1-{n}" }
          b: { model: fixed-32x400, count: 2, name: "@b-{n}" }
        links:
          l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, length: 100 m, count: 2 }
        """;

    [Fact]
    public void Workbook_IsValidAndHasItsSheetsInOrder()
    {
        using var book = Open(Delivered.File(PlanBlock.Compile(Plan), "handover.xlsx"));
        Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019)
            .Validate(book, TestContext.Current.CancellationToken).Select(e => $"{e.Part?.Uri} {e.Path?.XPath} {e.Description}"));
        Assert.Equal(
            ["Summary", "Findings", "Links", "Parts", "Ports", "Cables", "Pathways", "Racks", "Feeds", "Labels"],
            Sheets(book).Select(s => s.Name!.Value!));
    }

    [Fact]
    public void SparesAndLabels_StandAsInTheirTables()
    {
        var judged = PlanBlock.Compile(Plan + """

            policy:
              spare-level: { confidence: 99 %, resupply: 720 h }
              failure-rates: [ { of: module, fit: 500, repair: 8 h } ]
            """);
        using var book = Open(Delivered.File(judged, "handover.xlsx"));
        foreach (var (sheet, file) in new[] { ("Spares", "spares.csv"), ("Labels", "labels.csv") })
        {
            var rows = Worksheet(book, Sheets(book).Single(s => s.Name == sheet)).Descendants<Row>().Count();
            var lines = System.Text.Encoding.UTF8.GetString(Delivered.File(judged, file)).TrimEnd().Split('\n');
            Assert.True(rows > 1);
            Assert.Equal(lines.Length, rows);
        }
    }

    [Fact]
    public void EverySheet_HasAFrozenBoldHeadingAFilterAndWidths()
    {
        using var book = Open(Delivered.File(PlanBlock.Compile(Plan), "handover.xlsx"));
        var styles = book.WorkbookPart!.WorkbookStylesPart!.Stylesheet!;
        foreach (var sheet in Sheets(book))
        {
            var worksheet = Worksheet(book, sheet);
            var pane = worksheet.Descendants<Pane>().Single();
            Assert.Equal((1.0, "A2", PaneStateValues.Frozen), (pane.VerticalSplit!.Value, pane.TopLeftCell!.Value!, pane.State!.Value));
            var rows = worksheet.Descendants<Row>().ToList();
            var heading = rows[0].Elements<SheetCell>().ToList();
            var last = SheetWriterName(heading.Count - 1);
            // The row of totals is no row to be sorted or filtered.
            var filtered = rows.Count - (sheet.Name == "Parts" ? 1 : 0);
            Assert.Equal($"A1:{last}{filtered}", worksheet.Descendants<AutoFilter>().Single().Reference!.Value);
            Assert.Equal(heading.Count, worksheet.Descendants<DocumentFormat.OpenXml.Spreadsheet.Column>().Count(c => c.Width!.Value > 5));
            var format = styles.CellFormats!.Elements<CellFormat>().ElementAt((int)heading[0].StyleIndex!.Value);
            Assert.NotNull(styles.Fonts!.Elements<Font>().ElementAt((int)format.FontId!.Value).Bold);
            Assert.Equal(PatternValues.Solid, styles.Fills!.Elements<Fill>().ElementAt((int)format.FillId!.Value)
                .PatternFill!.PatternType!.Value);
        }
    }

    [Fact]
    public void Tables_AreThereCellByCell()
    {
        var judged = PlanBlock.Compile(Plan);
        using var book = Open(Delivered.File(judged, "handover.xlsx"));
        var designed = Expect.Designed(judged);
        foreach (var (name, table) in new[]
            { ("Ports", PortsView.Of(designed)), ("Cables", CablesView.Of(designed)), ("Parts", PartsView.Of(designed)) })
        {
            var rows = Worksheet(book, Sheets(book).Single(s => s.Name == name)).Descendants<Row>().Skip(1).ToList();
            var expected = table.Rows().Select(r => r.ToArray()).ToList();
            Assert.NotEmpty(expected);
            Assert.Equal(expected.Count + (name == "Parts" ? 1 : 0), rows.Count);
            for (var i = 0; i < expected.Count; i++)
                Assert.Equal(expected[i].Select(c => c.IsNumber ? c.Number.ToString("R",
                    System.Globalization.CultureInfo.InvariantCulture) : Harmless.Text(c.Text)),
                        rows[i].Elements<SheetCell>().Select(TextOf));
        }
    }

    [Fact]
    public void NamesLikeFormulas_AreTextsAndHarmless()
    {
        using var book = Open(Delivered.File(PlanBlock.Compile(Plan), "handover.xlsx"));
        var cells = Sheets(book).SelectMany(s => Worksheet(book, s).Descendants<SheetCell>()).ToList();
        Assert.DoesNotContain(cells, c => c.CellFormula is not null);
        Assert.Contains(cells, c => TextOf(c) == "'=1+1-1" && c.DataType!.Value == CellValues.InlineString);
        Assert.Contains(cells, c => TextOf(c) == "'@b-2");
        Assert.DoesNotContain(cells, c => c.DataType is not null && TextOf(c) is ['=' or '+' or '-' or '@', ..]);
    }

    [Fact]
    public void Numbers_AreNumbersInTheFormatOfTheirKind()
    {
        using var book = Open(Delivered.File(PlanBlock.Compile(Plan), "handover.xlsx"));
        var parts = Worksheet(book, Sheets(book).Single(s => s.Name == "Parts"));
        var heading = parts.Descendants<Row>().First().Elements<SheetCell>().Select(TextOf).ToList();
        var price = parts.Descendants<Row>().ElementAt(1).Elements<SheetCell>().ElementAt(heading.IndexOf("unit-price"));
        Assert.Null(price.DataType);
        var styles = book.WorkbookPart!.WorkbookStylesPart!.Stylesheet!;
        var format = styles.CellFormats!.Elements<CellFormat>().ElementAt((int)price.StyleIndex!.Value);
        Assert.Equal("#,##0.00", styles.NumberingFormats!.Elements<NumberingFormat>().Single(f =>
            f.NumberFormatId!.Value == format.NumberFormatId!.Value).FormatCode!.Value);
    }

    [Fact]
    public void PartsList_EndsWithTheTotalsOfItsRows()
    {
        var judged = PlanBlock.Compile(Plan);
        using var book = Open(Delivered.File(judged, "handover.xlsx"));
        var rows = Worksheet(book, Sheets(book).Single(s => s.Name == "Parts")).Descendants<Row>()
            .Select(r => r.Elements<SheetCell>().Select(TextOf).ToList()).ToList();
        Assert.Equal("total", rows[^1][0]);
        var summary = PlanSummary.Of(Expect.Designed(judged));
        Assert.Equal((double)summary.Price.Units, Value(rows[^1][rows[0].IndexOf("total-price")]), 1e-6);
        Assert.Equal(summary.Power.Value, Value(rows[^1][rows[0].IndexOf("total-watts")]), 1e-6);
        Assert.DoesNotContain("total", Delivered.Table(judged, "parts.csv")[^1], StringComparison.Ordinal);

        static double Value(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void NumberColumns_HoldNoTextAndPortsAreNames()
    {
        using var book = Open(Delivered.File(PlanBlock.Compile(Plan), "handover.xlsx"));
        foreach (var sheet in Sheets(book))
        {
            var rows = Worksheet(book, sheet).Descendants<Row>().ToList();
            var texts = rows.Skip(1).SelectMany(r => r.Elements<SheetCell>()).Where(c => c.DataType?.Value == CellValues.InlineString);
            Assert.DoesNotContain(texts, c => TextOf(c).Length == 0);
            Assert.Single(Worksheet(book, sheet).Descendants<IgnoredError>());
        }
        var summary = Worksheet(book, Sheets(book).Single(s => s.Name == "Summary")).Descendants<Row>()
            .ToDictionary(r => TextOf(r.Elements<SheetCell>().First()), r => r.Elements<SheetCell>().ElementAt(1));
        Assert.All(["devices", "language of the plan", "price of what is to be bought"], n => Assert.Null(summary[n].DataType));
    }

    [Fact]
    public void EverySheet_PrintsAsWideAsThePageWithItsHeadingOnEach()
    {
        using var book = Open(Delivered.File(PlanBlock.Compile(Plan), "handover.xlsx"));
        foreach (var sheet in Sheets(book))
        {
            var worksheet = Worksheet(book, sheet);
            Assert.True(worksheet.Descendants<PageSetupProperties>().Single().FitToPage!.Value);
            var page = worksheet.Descendants<PageSetup>().Single();
            Assert.Equal((1u, 0u, OrientationValues.Landscape),
                (page.FitToWidth!.Value, page.FitToHeight!.Value, page.Orientation!.Value));
        }
        Assert.Equal(
            Sheets(book).Select((s, i) => ("_xlnm.Print_Titles", (uint)i, $"'{s.Name}'!$1:$1")),
            book.WorkbookPart!.Workbook!.Descendants<DefinedName>().Select(d => (d.Name!.Value!, d.LocalSheetId!.Value, d.Text)));
    }

    [Fact]
    public void Messages_GoOnInFurtherLines()
    {
        using var book = Open(Delivered.File(PlanBlock.Compile(Plan), "handover.xlsx"));
        var rows = Worksheet(book, Sheets(book).Single(s => s.Name == "Findings")).Descendants<Row>().ToList();
        var message = rows[0].Elements<SheetCell>().Select(TextOf).ToList().IndexOf("message");
        var cell = rows[1].Elements<SheetCell>().ElementAt(message);
        var look = book.WorkbookPart!.WorkbookStylesPart!.Stylesheet!.CellFormats!.Elements<CellFormat>()
            .ElementAt((int)cell.StyleIndex!.Value);
        Assert.True(look.Alignment!.WrapText!.Value);
    }

    [Fact]
    public void Archive_CarriesNoClock()
    {
        using var archive = new System.IO.Compression.ZipArchive(new MemoryStream(Delivered.File(PlanBlock.Compile(Plan),
            "handover.xlsx")));
        Assert.NotEmpty(archive.Entries);
        // Two builds in one test could share a time stamp, so the stamp itself is looked at.
        Assert.All(archive.Entries, e => Assert.Equal(new DateTime(1980, 1, 1), e.LastWriteTime.DateTime));
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(9, 1)]
    [InlineData(10, 2)]
    [InlineData(18, 2)]
    [InlineData(19, 3)]
    public void LongTable_GoesOnInAnotherSheet(int rows, int sheets)
    {
        var table = new TableView("t", [new Column("n", 8, ColumnKind.Whole)], () =>
            Enumerable.Range(1, rows).Select(i => new Cell[] { i }));
        using var stream = new MemoryStream();
        using (var file = new WorkbookFile(stream, mostRows: 10)) file.Add("Long", table);
        using var book = Open(stream.ToArray());
        Assert.Equal(Enumerable.Range(1, sheets).Select(i => i == 1 ? "Long" : "Long " + i), Sheets(book).Select(s => s.Name!.Value!));
        var all = Sheets(book).Select(s => Worksheet(book, s).Descendants<Row>().Select(r => TextOf(r.Elements<SheetCell>().Single()))
            .ToList()).ToList();
        Assert.All(all, s => Assert.Equal("n", s[0]));
        Assert.All(all, s => Assert.True(s.Count <= 10));
        Assert.Equal(Enumerable.Range(1, rows).Select(i => i.ToString(System.Globalization.CultureInfo.InvariantCulture)),
            all.SelectMany(s => s.Skip(1)));
    }

    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("=SUM(A1)", "'=SUM(A1)")]
    [InlineData("a\u0007b", "a\uFFFDb")]
    [InlineData("_x0041_", "_x005F_x0041_")]
    [InlineData("_x00zz_", "_x00zz_")]
    public void SheetText_IsWhatACellCanHold(string text, string expected) => Assert.Equal(expected, SheetText.Of(text));

    [Fact]
    public void SheetText_IsCutAtTheLongestACellHolds() =>
        Assert.Equal(SheetText.Longest, SheetText.Of(new string('x', SheetText.Longest + 1)).Length);

    private static SpreadsheetDocument Open(byte[] bytes) => SpreadsheetDocument.Open(new MemoryStream(bytes), false);

    private static List<Sheet> Sheets(SpreadsheetDocument book) => [.. book.WorkbookPart!.Workbook!.Descendants<Sheet>()];

    private static Worksheet Worksheet(SpreadsheetDocument book, Sheet sheet) =>
        ((WorksheetPart)book.WorkbookPart!.GetPartById(sheet.Id!.Value!)).Worksheet!;

    private static string TextOf(SheetCell cell) => cell.InlineString?.InnerText ?? cell.CellValue?.Text ?? "";

    /// <summary>A to Z, then AA: written out here, so that the writer's own arithmetic is held against it.</summary>
    private static string SheetWriterName(int column) =>
        column < 26 ? ((char)('A' + column)).ToString() : "A" + (char)('A' + column - 26);
}
