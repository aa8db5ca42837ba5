using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Space;

/// <summary>Two racks that stand in one another: their footprints, from the front back and from the middle to both sides,
/// overlap.</summary>
/// <param name="First">The one.</param>
/// <param name="Second">The other.</param>
/// <param name="Along">How far along the rows.</param>
/// <param name="Across">How far across the rows.</param>
public sealed record RackOverlap(Rack First, Rack Second, Length Along, Length Across)
{
    /// <summary>Racks that touch do not overlap: widths and positions are written to the millimetre.</summary>
    private static readonly Length Touching = Length.FromMillimetres(1);

    /// <summary>All pairs in a building, hall by hall, in the order of the racks.</summary>
    public static IEnumerable<RackOverlap> Of(Plan plan)
    {
        foreach (var hall in plan.Building.Racks.GroupBy(r => r.Hall.Index))
        {
            var racks = hall.OrderBy(Left).ThenBy(r => r.Index).ToArray();
            var found = new List<RackOverlap>();
            for (var i = 0; i < racks.Length; i++)
            {
                for (var j = i + 1; j < racks.Length && Left(racks[j]) < Left(racks[i]) + racks[i].Type.Width; j++)
                    if (Of(racks[i], racks[j]) is { } overlap) found.Add(overlap);
            }
            foreach (var overlap in found.OrderBy(o => o.First.Index).ThenBy(o => o.Second.Index)) yield return overlap;
        }
    }

    private static RackOverlap? Of(Rack one, Rack two)
    {
        var (first, second) = one.Index < two.Index ? (one, two) : (two, one);
        var along = Length.Min(Left(one) + one.Type.Width, Left(two) + two.Type.Width) - Length.Max(Left(one), Left(two));
        var across = Length.Min(one.Y + one.Type.Depth, two.Y + two.Type.Depth) - Length.Max(one.Y, two.Y);
        return along > Touching && across > Touching ? new RackOverlap(first, second, along, across) : null;
    }

    private static Length Left(Rack rack) => rack.X - (rack.Type.Width * (1 / 2.0));
}
