using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Power;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a feed: what it carries over all racks, with all feeds up and with the worst other one lost.</summary>
public static class FeedTotalsView
{
    private const int MostPhases = 3;

    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("feed-totals",
    [
        new("feed", 12), new("volts", 8, ColumnKind.Real), new("phases", 8, ColumnKind.Whole), new("strips", 8, ColumnKind.Whole),
        new("most-W", 10, ColumnKind.Real, IsSummed: true), new("most-VA", 10, ColumnKind.Real, IsSummed: true),
        .. Phases("phase"),
        new("lost-feed", 12), new("after-loss-W", 12, ColumnKind.Real), new("after-loss-VA", 13, ColumnKind.Real),
        .. Phases("after-loss-phase"),
    ], () => FeedLoad.Of(designed.Racks.Value, designed.Strips).Select(f => Row(f, designed.Plan.Policy.PowerFactor.Value)));

    private static IEnumerable<Column> Phases(string name) =>
        Enumerable.Range(1, MostPhases).Select(i => new Column($"{name}-{Numerals.Whole(i)}-A", name.Length + 5, ColumnKind.Real));

    private static Cell[] Row(FeedLoad load, double powerFactor) =>
    [
        load.Feed.Name, load.Feed.Volts, load.Feed.Phases, load.Strips, .. Cells(load.Whole, powerFactor, true), load.Lost?.Name,
        .. Cells(load.AfterLoss, powerFactor, load.Lost is not null),
    ];

    private static IEnumerable<Cell> Cells(FeedDraw draw, double powerFactor, bool isThere)
    {
        Cell Of(double value, int digits) => isThere ? Math.Round(value, digits) : Cell.Empty;
        return
        [
            Of(draw.Watts.Value, 0), Of(draw.Watts.Value / powerFactor, 0),
            .. Enumerable.Range(0, MostPhases).Select(i => i < draw.Phases.Length ? Of(draw.Phases[i].Value, 1) : Cell.Empty),
        ];
    }
}
