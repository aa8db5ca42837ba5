using System.Collections.Immutable;
using System.Text;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Markup;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Report;

/// <summary>The report: one page that needs no network and no script, for reading and for printing on A4.</summary>
public static class HtmlReport
{
    /// <summary>Ways with drawings and comparisons at most; more would help no reader.</summary>
    public const int MostWays = 24;

    /// <summary>Writes it.</summary>
    /// <param name="compilation">The results.</param>
    /// <param name="ways">Its ways of making links; none without a design.</param>
    /// <param name="summary">Its headline numbers; asked for only when there is a plan.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(Compilation compilation, ImmutableArray<LinkWay> ways, Lazy<PlanSummary> summary, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 16, leaveOpen: true);
        writer.Write("<!DOCTYPE html>\n");
        var markup = new MarkupWriter(writer);
        markup.Open("html", ("xmlns", "http://www.w3.org/1999/xhtml"), ("lang", "en-GB"));
        Head(markup, compilation);
        markup.Open("body");
        Body(markup, compilation, ways, summary);
        markup.Close();
        markup.Close();
    }

    private static void Head(MarkupWriter markup, Compilation compilation)
    {
        markup.Open("head");
        markup.Leaf("meta", ("charset", "utf-8"));
        // Even if a name slipped through as markup, nothing of it could run or be fetched.
        markup.Leaf("meta", ("http-equiv", "Content-Security-Policy"), ("content", "default-src 'none'; style-src 'unsafe-inline'"));
        markup.Leaf("meta", ("name", "viewport"), ("content", "width=device-width"));
        markup.Element("title", (compilation.Plan?.Name ?? "plan") + ", report");
        markup.Open("style");
        markup.Trusted(ReportStyle.Sheet);
        markup.Trusted(DrawingStyle.Sheet);
        markup.Close();
        markup.Close();
    }

    private static void Body(MarkupWriter markup, Compilation compilation, ImmutableArray<LinkWay> ways, Lazy<PlanSummary> summary)
    {
        var front = new ReportFront(markup, compilation);
        var drawn = LinkWays.MostTelling(ways, MostWays);
        front.Title();
        if (compilation is { Plan: not null, Design: not null }) front.Figures(compilation.Plan, summary.Value);
        Contents(markup, drawn);
        front.Findings();
        if (compilation.Plan is { } plan && compilation.Design is not null)
        {
            new ReportClasses(markup, compilation, ways, drawn).Write();
            LeftOut(markup, ways, drawn);
            foreach (var way in drawn) new ReportWay(markup, plan, way).Write();
            ReportParts.Write(markup, compilation, plan);
        }
        ReportNotes.Write(markup, compilation, compilation.Plan);
    }

    private static void Contents(MarkupWriter markup, ImmutableArray<LinkWay> drawn)
    {
        markup.Open("nav");
        foreach (var (target, words) in new[] { ("findings", "What is wrong"), ("classes", "Classes of links"), ("parts", "Parts"),
            ("notes", "Notes") })
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
            + "those that fail, then those that cannot be proved, "
            + $"then those most links are made in. {Numerals.Grouped(left)} are left out here. The folder drawings/ holds "
            + $"{Numerals.Grouped(filed)} of them; links.json holds the comparisons of all.");
    }
}
