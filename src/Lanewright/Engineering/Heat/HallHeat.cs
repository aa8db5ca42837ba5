using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Heat;

/// <summary>Heat of a hall: what is drawn in it.</summary>
/// <param name="Hall">The hall.</param>
/// <param name="Typical">Under a usual load.</param>
/// <param name="Maximum">At the most.</param>
/// <param name="Weight">What all its racks and devices weigh.</param>
public sealed record HallHeat(Hall Hall, Watts Typical, Watts Maximum, Mass Weight)
{
    /// <summary>All halls with a device, in order.</summary>
    public static ImmutableArray<HallHeat> Of(RackBook book) =>
    [
        .. book.Racks.GroupBy(r => r.Rack.Hall).Select(g => new HallHeat(
            g.Key,
            Watts.From(g.Sum(r => r.Typical.Value)),
            Watts.From(g.Sum(r => r.Maximum.Value)),
            Mass.FromKilograms(g.Sum(r => r.OnFloor.Kilograms)))),
    ];
}
