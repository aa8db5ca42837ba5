using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Reliability;
using Lanewright.Model;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a part: what fails until more arrive, and the spares by both conventions; where no rate of failure is stated, those
/// by the share of the policy alone.</summary>
public static class SparesView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("spares",
    [
        new("model", 26), new("kind", 10), new("length-m", 9, ColumnKind.Real), new("in-use", 9, ColumnKind.Whole),
        new("fit", 10, ColumnKind.Real), new("failures-a-year", 14, ColumnKind.Real), new("failures-till-resupply", 20, ColumnKind.Real),
        new("spares-S", 9, ColumnKind.Whole), new("spares-F", 9, ColumnKind.Whole), new("convention", 11),
        new("spares-by-share", 14, ColumnKind.Whole), new("kept", 7, ColumnKind.Whole), new("rate-from", 24),
    ], () => SpareBook.Of(designed.Plan, designed.Parts).Select(Row));

    private const int LevelCells = 6;

    private static Cell[] Level(SpareLevelNeed need, long inUse) =>
    [
        Math.Round(need.Each.Fit, 3), Math.Round(need.Each.PerYear * inUse, 4), Math.Round(need.Expected, 6), need.OneOnShelf,
        need.NeverShort, Letter(need.Convention),
    ];

    /// <summary>The letter of a convention.</summary>
    public static string Letter(SpareCount count) => count == SpareCount.OneOnShelf ? "S" : "F";

    private static Cell[] Row(SpareNeed need) =>
    [
        need.Item.Name, PartsView.KindOf(need.Item), need.Length is { } length ? length.Metres : Cell.Empty, need.InUse,
        .. need.ByLevel is { } level ? Level(level, need.InUse) : Enumerable.Repeat(Cell.Empty, LevelCells),
        need.ByShare, need.Kept, need.ByLevel?.Source is { Length: > 0 } source ? source : Cell.Empty,
    ];
}
