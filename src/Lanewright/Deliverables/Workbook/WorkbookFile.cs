using System.IO.Compression;
using DocumentFormat.OpenXml;
using Lanewright.Deliverables.Markup;
using Lanewright.Deliverables.Tables;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Workbook;

/// <summary>Writes tables as a workbook, straight into the archive: same tables, same bytes.</summary>
public sealed class WorkbookFile : IDisposable
{
    /// <summary>Rows a sheet holds.</summary>
    public const int MostRows = 1_048_576;

    private const string Content = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

#pragma warning disable RS0030 // no clock is read: every entry carries the first day an archive can name
    private static readonly DateTimeOffset Dateless = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
#pragma warning restore RS0030

    private readonly ZipArchive archive;
    private readonly List<string> sheets = [];
    private readonly int mostRows;

    /// <summary>Begins a workbook.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="mostRows">Rows a sheet takes before the table goes on in another.</param>
    public WorkbookFile(Stream stream, int mostRows = MostRows)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(mostRows, 2);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(mostRows, MostRows);
        archive = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true);
        this.mostRows = mostRows;
    }

    /// <summary>Adds a table as a sheet, or as several when it is longer than one holds.</summary>
    public void Add(string name, TableView table)
    {
        using var rows = new RowsLeft(table);
        for (var part = 1; part == 1 || rows.HasMore; part++)
        {
            sheets.Add(part == 1 ? name : name + " " + Numerals.Whole(part));
            using var entry = Entry($"xl/worksheets/sheet{Numerals.Whole(sheets.Count)}.xml");
            SheetWriter.Write(entry, table, rows, mostRows, sheets.Count == 1);
        }
    }

    /// <summary>Ends the workbook.</summary>
    public void Dispose()
    {
        Part("xl/styles.xml", WorkbookStyles.Create());
        Markup("xl/workbook.xml", Book);
        Markup("xl/_rels/workbook.xml.rels", BookRelations);
        Markup("_rels/.rels", m => Relationships(m, [("rId1", Relations + "/officeDocument", "xl/workbook.xml")]));
        Markup("[Content_Types].xml", ContentTypes);
        archive.Dispose();
    }

    private Stream Entry(string name)
    {
        var entry = archive.CreateEntry(name, CompressionLevel.Fastest);
        entry.LastWriteTime = Dateless;
        return entry.Open();
    }

    private void Part(string name, OpenXmlElement root)
    {
        using var stream = Entry(name);
        using var writer = OpenXmlWriter.Create(stream);
        writer.WriteStartDocument(true);
        writer.WriteElement(root);
    }

    private void Markup(string name, Action<MarkupWriter> write)
    {
        using var writer = new StreamWriter(Entry(name));
        writer.Write("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
        write(new MarkupWriter(writer));
    }

    private void Book(MarkupWriter markup)
    {
        markup.Open("workbook", ("xmlns", "http://schemas.openxmlformats.org/spreadsheetml/2006/main"), ("xmlns:r", Relations));
        markup.Open("sheets");
        for (var i = 0; i < sheets.Count; i++)
            markup.Leaf("sheet", ("name", sheets[i]), ("sheetId", Numerals.Whole(i + 1)), ("r:id", "rId" + Numerals.Whole(i + 1)));
        markup.Close();
        // The heading of a sheet is printed on each of its pages.
        markup.Open("definedNames");
        for (var i = 0; i < sheets.Count; i++)
            markup.Inline("definedName", $"'{sheets[i]}'!$1:$1", ("name", "_xlnm.Print_Titles"), ("localSheetId", Numerals.Whole(i)));
        markup.Close();
        markup.Close();
    }

    private void BookRelations(MarkupWriter markup)
    {
        var links = sheets.Select((_, i) => ("rId" + Numerals.Whole(i + 1), Relations + "/worksheet",
            $"worksheets/sheet{Numerals.Whole(i + 1)}.xml")).ToList();
        links.Add(("rId" + Numerals.Whole(sheets.Count + 1), Relations + "/styles", "styles.xml"));
        Relationships(markup, links);
    }

    private static void Relationships(MarkupWriter markup, IEnumerable<(string Id, string Type, string Target)> links)
    {
        markup.Open("Relationships", ("xmlns", "http://schemas.openxmlformats.org/package/2006/relationships"));
        foreach (var (id, type, target) in links) markup.Leaf("Relationship", ("Id", id), ("Type", type), ("Target", target));
        markup.Close();
    }

    private void ContentTypes(MarkupWriter markup)
    {
        markup.Open("Types", ("xmlns", "http://schemas.openxmlformats.org/package/2006/content-types"));
        markup.Leaf("Default", ("Extension", "rels"), ("ContentType", "application/vnd.openxmlformats-package.relationships+xml"));
        markup.Leaf("Default", ("Extension", "xml"), ("ContentType", "application/xml"));
        markup.Leaf("Override", ("PartName", "/xl/workbook.xml"), ("ContentType", Content + "sheet.main+xml"));
        markup.Leaf("Override", ("PartName", "/xl/styles.xml"), ("ContentType", Content + "styles+xml"));
        for (var i = 1; i <= sheets.Count; i++)
            markup.Leaf("Override", ("PartName", $"/xl/worksheets/sheet{Numerals.Whole(i)}.xml"),
                ("ContentType", Content + "worksheet+xml"));
        markup.Close();
    }
}
