using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Power;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a strip: what each phase carries, and what it carries when another feed of the rack is lost.</summary>
public static class FeedsView
{
    private const int MostPhases = 3;

    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("feeds",
    [
        new("rack", 18), new("feed", 12), new("volts", 8, ColumnKind.Real), new("phases", 8, ColumnKind.Whole),
        new("breaker-A", 10, ColumnKind.Real), new("may-carry-A", 12, ColumnKind.Real), new("phase-1-A", 10, ColumnKind.Real),
        new("phase-2-A", 10, ColumnKind.Real),
        new("phase-3-A", 10, ColumnKind.Real), new("unbalance-%", 11, ColumnKind.Real), new("after-loss-A", 12, ColumnKind.Real),
        new("lost-feed", 12), new("verdict", 9),
    ], () => designed.Strips.Select(Row));

    private static Cell[] Row(StripLoad strip) =>
    [
        strip.Rack.Name, strip.Feed.Name, strip.Feed.Volts, strip.Feed.Phases, strip.Feed.Breaker.Value, Math.Round(strip.Limit.Value, 2),
        .. Enumerable.Range(0, MostPhases).Select(i => i < strip.Phases.Length ? Math.Round(strip.Phases[i].Value, 2) : Cell.Empty),
        strip.Feed.Phases > 1 ? Math.Round(strip.Unbalance.Percent, 1) : Cell.Empty,
        strip.Lost is null ? Cell.Empty : Math.Round(strip.AfterLoss.Value, 2), strip.Lost?.Name,
        strip.Highest > strip.Limit || strip.AfterLoss > strip.Limit ? "fail" : "pass",
    ];
}
