using System.Collections.Frozen;

namespace Lanewright.Workbench.Sheets;

/// <summary>What the documents are for, in a few words: their names alone tell it only to who knows them.</summary>
internal static class DocumentWords
{
    private static readonly FrozenDictionary<string, string> OfFiles = new Dictionary<string, string>
    {
        ["report.html"] = "everything on one page, to hand on",
        ["parts.csv"] = "what to buy, with prices and power",
        ["ports.csv"] = "every port: what sits in it and where it leads",
        ["cables.csv"] = "every cable: ends, length, way and labels",
        ["pathways.csv"] = "every stretch of tray and duct: what lies in it, how full it is",
        ["pull-plan.csv"] = "which cables are pulled together, and in what order",
        ["racks.csv"] = "every rack: room, weight, power, heat",
        ["feeds.csv"] = "every strip of a rack: amperes with all feeds and with one lost",
        ["feed-totals.csv"] = "what each feed carries over all racks, whole and with another lost",
        ["outlets.csv"] = "at which phase each device is plugged in",
        ["labels.csv"] = "every label, for a label printer",
        ["labels.html"] = "the same as sheets to print",
        ["trunks.csv"] = "structured cabling from panel to panel",
        ["patches.csv"] = "every cord at a panel",
        ["trunk-sizes.csv"] = "how many fibres each relation needs, growth with them",
        ["handover.xlsx"] = "the tables above as one workbook, to fill in on site",
        ["links.json"] = "every class of links with all its checks, for programs",
        ["findings.json"] = "all findings, for programs",
        ["lines.csv"] = "lines between sites: scheme, margins, equipment",
        ["spans.csv"] = "the fibre between sites: lengths, losses, dispersion",
        ["lines.json"] = "lines with every channel, for programs",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> OfKinds = new Dictionary<string, string>
    {
        ["ribbon"] = "lane ribbons, by class of links",
        ["ladder"] = "loss ladders, by class of links",
        ["load"] = "loads, by demand",
        ["failures"] = "what single failures do, by demand",
        ["floor"] = "floors from above, by hall",
        ["section"] = "trays and ducts cut open, by hall",
        ["front"] = "racks from the front",
        ["rear"] = "racks from the rear",
        ["panels"] = "panels from the front",
        ["trace"] = "ways of the light through panels",
        ["map"] = "sites and the fibre between them",
        ["single-line"] = "lines from terminal to terminal",
        ["power"] = "levels along lines",
        ["spectrum"] = "margins of the channels of lines",
        ["sweep"] = "how far lines are from the edge",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>What a file holds; empty for one that is not known here.</summary>
    public static string OfFile(string name) => OfFiles.GetValueOrDefault(name, "");

    /// <summary>What drawings of a kind show: the kind itself where it is not known here.</summary>
    public static string OfKind(string kind) => OfKinds.GetValueOrDefault(kind, kind);
}
