using System.Collections.Immutable;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>Floor plans: one of each hall that has racks.</summary>
internal static class FloorSet
{
    /// <summary>Halls drawn at most.</summary>
    private const int MostHalls = 60;

    /// <summary>The drawings.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed) =>
        Halls(designed.Plan.Building).Take(MostHalls).Select((hall, index) =>
        {
            var name = $"{Identifiers.Floor(index + 1)}-floor";
            return DrawingFile.Of($"drawings/{name}.svg", m => Drawing(designed, hall).Write(m, name, isFile: true));
        });

    /// <summary>The halls with racks, in order.</summary>
    public static ImmutableArray<Hall> Halls(Building building) => [.. building.Racks.Select(r => r.Hall).Distinct()];

    /// <summary>The drawing of a hall.</summary>
    /// <param name="designed">The plan.</param>
    /// <param name="hall">The hall.</param>
    /// <param name="view">How a page shows it; null for a file.</param>
    public static FloorDrawing Drawing(DesignedPlan designed, Hall hall, FloorView? view = null)
    {
        ImmutableArray<SegmentFill> fills =
            [.. designed.Pathways.Value.Fills.Where(f => f.Pathway.Hall == hall && f.Pathway.Route is null)];
        return new FloorDrawing(designed, hall, fills, view);
    }
}
