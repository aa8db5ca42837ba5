using System.Collections.Immutable;
using Lanewright.Engineering.Lines.Routes;
using Lanewright.Model;
using Lanewright.Model.Lines;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Share of time in which a line carries something: fibre that is not cut, and sites that work. What both routes need stands
/// before both; the rest of each fails by itself. Equipment of the line is not in it.</summary>
internal sealed class LineAvailability(Plan plan)
{
    /// <summary>A line with its routes.</summary>
    public LineUptime Of(LineStatement line, ImmutableArray<LineRoute> routes)
    {
        var ends = Works([line.From, line.To]);
        if (routes is not [var first, var second, ..])
            return new LineUptime(ends, Share.From(1), default, Share.From(1), [.. routes.Select(r => Own(r, default, []))]);
        var shared = first.Sites[1..^1].Intersect(second.Sites[1..^1]).ToList();
        var (ofFirst, ofSecond) = (InCommon(first, second), InCommon(second, first));
        var common = Length.FromKilometres(Math.Min(ofFirst, ofSecond));
        return new LineUptime(ends, Works(shared), common, Whole(common), [Own(first, common, shared), Own(second, common, shared)]);
    }

    private RouteUptime Own(LineRoute route, Length inCommon, IEnumerable<Site> shared)
    {
        // What one route has in a duct beyond the other is its own: every kilometre counts once.
        var own = Length.FromKilometres(route.Length.Kilometres - inCommon.Kilometres);
        return new RouteUptime(route.Name, own, Whole(own), Works(route.Sites[1..^1].Except(shared)));
    }

    /// <summary>A route by itself: its fibre, and the sites between its ends.</summary>
    public Share Of(ImmutableArray<FibreSpan> spans, ImmutableArray<Site> sites) =>
        Share.From(Whole(Length.FromKilometres(spans.Sum(s => s.Length.Kilometres))).Value * Works(sites[1..^1]).Value);

    /// <summary>Kilometres of a route that fail with the other: spans of both, and of spans in one duct as much as the shorter one has,
    /// since nobody says how long the duct is.</summary>
    private static double InCommon(LineRoute route, LineRoute other) => route.Spans.Sum(span => other.Spans.Contains(span)
        ? span.Length.Kilometres
        : other.Spans.Where(s => s.Ducts.Intersect(span.Ducts).Any())
            .Select(s => Math.Min(s.Length.Kilometres, span.Length.Kilometres)).DefaultIfEmpty(0).Max());

    private Share Whole(Length fibre) => RouteAvailability.Of(fibre, plan.Policy.FibreCuts.Value, plan.Policy.FibreRepair.Value);

    private Share Works(IEnumerable<Site> sites) => Share.From(
        sites.Aggregate(1.0, (all, site) => all * (site.Availability ?? plan.Policy.SiteAvailability ?? Share.From(1)).Value));
}
