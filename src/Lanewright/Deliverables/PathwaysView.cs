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
        new("most-%", 8, ColumnKind.Real),
    ], () => designed.Pathways.Value.Fills.Select(f => Row(designed, f)));

    private static Cell[] Row(DesignedPlan designed, SegmentFill fill)
    {
        var segment = fill.Ways.Graph.Segments[fill.Segment];
        var (a, b) = (fill.Ways.Graph.Points[segment.A], fill.Ways.Graph.Points[segment.B]);
        return
        [
            fill.Pathway.Hall.FullName, fill.Pathway.Name, fill.Pathway.IsDuct ? "duct" : "tray", Math.Round(a.X, 2), Math.Round(a.Y, 2),
            Math.Round(b.X, 2), Math.Round(b.Y, 2), Math.Round(segment.Metres, 2), fill.Pathway.Width.Millimetres,
            fill.Pathway.Depth.Millimetres, fill.Cables, fill.Unknown, Math.Round(fill.Fill.Percent, 2),
            fill.Planned(designed.Plan.Standards).Value * 100, fill.Most(designed.Plan.Standards).Value * 100,
        ];
    }
}
