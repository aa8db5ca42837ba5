using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Pathways;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A row a stretch of tray or duct: where it is, what lies in it and how full that makes it.</summary>
public static class PathwaysView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("pathways",
    [
        new("hall", 14), new("pathway", 16), new("kind", 7), new("from-x-m", 9, ColumnKind.Real), new("from-y-m", 9, ColumnKind.Real),
        new("to-x-m", 9, ColumnKind.Real), new("to-y-m", 9, ColumnKind.Real), new("length-m", 9, ColumnKind.Real),
        new("width-mm", 9, ColumnKind.Real), new("depth-mm", 9, ColumnKind.Real), new("cables", 8, ColumnKind.Whole),
        new("of-unknown-diameter", 17, ColumnKind.Whole), new("fill-%", 8, ColumnKind.Real), new("planned-%", 9, ColumnKind.Real),
        new("most-%", 8, ColumnKind.Real), new("side", 6), new("kg-per-m", 9, ColumnKind.Real), new("weight-known", 14),
        new("bears-kg-per-m", 11, ColumnKind.Real), new("bundles", 8, ColumnKind.Whole), new("moved-off", 9, ColumnKind.Whole),
        new("from-z-m", 9, ColumnKind.Real), new("to-z-m", 9, ColumnKind.Real),
    ], () => Rows(designed));

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed)
    {
        var book = designed.Pathways.Value;
        var moved = book.Detours.Moves.CountBy(m => m.Full).ToDictionary();
        var bundles = new int[book.Fills.Length];
        foreach (var bundle in designed.Pulls.Value.Bundles)
            foreach (var stretch in bundle.Way?.Stretches ?? []) bundles[stretch]++;
        return book.Fills.Select(f => Row(designed, f, bundles[f.Segment], moved.GetValueOrDefault(f.Segment)));
    }

    private static Cell[] Row(DesignedPlan designed, SegmentFill fill, int bundles, int moved)
    {
        var (a, b) = (fill.Net.Points[fill.Stretch.A], fill.Net.Points[fill.Stretch.B]);
        return
        [
            fill.Pathway.Hall.FullName, fill.Pathway.Name, fill.Pathway.Kind, Math.Round(a.X, 2), Math.Round(a.Y, 2),
            Math.Round(b.X, 2), Math.Round(b.Y, 2), Math.Round(fill.Stretch.Metres, 2), fill.Pathway.Width.Millimetres,
            fill.Pathway.Depth.Millimetres, fill.Cables, fill.Unknown, Math.Round(fill.Fill.Percent, 2),
            fill.Planned(designed.Plan.Standards).Value * 100, fill.Most(designed.Plan.Standards).Value * 100,
            fill.Pathway.Side, Math.Round(fill.KilogramsAMetre, 3), fill.WeightKnown,
            fill.Pathway.LoadRating is { } bears ? bears : Cell.Empty, bundles, moved, Math.Round(a.Z, 2), Math.Round(b.Z, 2),
        ];
    }
}
