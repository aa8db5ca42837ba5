using System.Collections.Immutable;
using System.Text;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Markup;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>The report: one page that needs no network and no script, for reading and for printing on A4.</summary>
public static class HtmlReport
{
    /// <summary>Ways with drawings and comparisons at most; more would help no reader.</summary>
    public const int MostWays = 24;

    /// <summary>Writes it.</summary>
    /// <param name="judged">The results.</param>
    /// <param name="ways">Its ways of making links; none without a plan.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(JudgedPlan judged, ImmutableArray<LinkWay> ways, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 16, leaveOpen: true);
        writer.Write("<!DOCTYPE html>\n");
        var markup = new MarkupWriter(writer);
        markup.Open("html", ("xmlns", "http://www.w3.org/1999/xhtml"), ("lang", "en-GB"));
        Head(markup, judged);
        markup.Open("body");
        Body(markup, judged, ways);
        markup.Close();
        markup.Close();
    }

    private static void Head(MarkupWriter markup, JudgedPlan judged)
    {
        markup.Open("head");
        markup.Leaf("meta", ("charset", "utf-8"));
        // Even if a name slipped through as markup, nothing of it could run or be fetched.
        markup.Leaf("meta", ("http-equiv", "Content-Security-Policy"), ("content", "default-src 'none'; style-src 'unsafe-inline'"));
        markup.Leaf("meta", ("name", "viewport"), ("content", "width=device-width"));
        markup.Element("title", (judged.Plan?.Name ?? "plan") + ", report");
        markup.Open("style");
        markup.Trusted(ReportStyle.Sheet);
        markup.Trusted(DrawingStyle.Sheet);
        markup.Close();
        markup.Close();
    }

    private static void Body(MarkupWriter markup, JudgedPlan judged, ImmutableArray<LinkWay> ways)
    {
        var front = new ReportFront(markup, judged);
        var drawn = LinkWays.MostTelling(ways, MostWays);
        front.Title();
        if (judged.Designed is { } known) front.Figures(known.Plan, PlanSummary.Of(known));
        Contents(markup, judged, drawn);
        front.Findings();
        if (judged.Designed is { } designed)
        {
            if (designed.Sizing.Value is { } study) new ReportSizing(markup, designed.Plan, study).Write();
            new ReportLoad(markup, designed).Write();
            new ReportRacks(markup, designed).Write();
            new ReportPathways(markup, designed).Write();
            new ReportPlant(markup, designed).Write();
            ReportSpares.Write(markup, designed);
            new ReportLines(markup, designed).Write();
            new ReportClasses(markup, designed, ways, drawn).Write();
            LeftOut(markup, ways, drawn);
            foreach (var way in drawn) new ReportWay(markup, designed.Plan, way).Write();
            ReportParts.Write(markup, designed);
        }
        ReportNotes.Write(markup, judged);
    }

    private static void Contents(MarkupWriter markup, JudgedPlan judged, ImmutableArray<LinkWay> drawn)
    {
        markup.Open("nav");
        (string, string)[] sizing = judged.Plan?.Wanted is null ? [] : [("sizing", "What fabric to buy")];
        (string, string)[] load = judged.Designed?.Load.Demands.IsEmpty != false ? [] : [(ReportLoad.Anchor, "What the network carries")];
        (string, string)[] racks = judged.Designed?.Racks.Value.Racks.IsEmpty != false ? [] : [(ReportRacks.Anchor, "Racks, power "
            + "and heat")];
        (string, string)[] pathways = judged.Designed?.Pathways.Value.Net is null ? [] : [(ReportPathways.Anchor, ReportPathways.Heading)];
        (string, string)[] plant = judged.Plan?.Trunks.IsEmpty != false ? [] : [(ReportPlant.Anchor, ReportPlant.Heading)];
        (string, string)[] lines = judged.Plan?.Lines.IsEmpty != false ? [] : [(ReportLines.Anchor, "Lines between sites")];
        foreach (var (target, words) in (IEnumerable<(string, string)>)[("findings", ReportFront.Heading), .. sizing, .. load, .. racks,
            .. pathways, .. plant, .. lines, ("classes", "Classes of links"), ("parts", "Parts"), ("notes", "Notes")])
            markup.Inline("a", words, ("href", "#" + target));
        foreach (var way in drawn) markup.Inline("a", way.Name, ("href", "#" + way.Name));
        markup.Close();
    }

    private static void LeftOut(MarkupWriter markup, ImmutableArray<LinkWay> ways, ImmutableArray<LinkWay> drawn)
    {
        var left = ways.Length - drawn.Length;
        if (left == 0) return;
        var filed = Math.Min(ways.Length, DrawingSet.MostWays);
        markup.Element("p", $"This report shows {Numerals.Grouped(drawn.Length)} of {Numerals.Grouped(ways.Length)} ways of making links: "
            + "those that fail, then those that cannot be proved, then each kind once, then those most links are made in. "
            + $"{Numerals.Grouped(left)} are left out here. The folder drawings/ holds {Numerals.Grouped(filed)} of them; "
            + "links.json holds the comparisons of all.");
    }
}
