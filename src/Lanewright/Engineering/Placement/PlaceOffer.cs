using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Placement;

/// <summary>Places that devices of a group could take when those of the group are taken out: the free rack units, from the top of each rack
/// down, as far as rack, floor and feeds bear them.</summary>
internal static class PlaceOffer
{
    /// <summary>The places, rack by rack.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="book">What stands in the racks.</param>
    /// <param name="moved">The devices that are taken out, all of one model.</param>
    /// <param name="racks">Racks they may stand in.</param>
    /// <param name="most">Places a rack that are of any use: as many as there are devices.</param>
    public static ImmutableArray<PlacedAt> Of(Plan plan, RackBook book, ImmutableArray<int> moved, IEnumerable<Rack> racks, int most)
    {
        var gone = moved.ToHashSet();
        var contents = book.Racks.ToDictionary(r => r.Rack.Index);
        var units = plan.Devices.Group(moved[0]).Model.Units;
        var places = ImmutableArray.CreateBuilder<PlacedAt>();
        var bearing = new RackBearing(book, moved);
        foreach (var rack in racks)
        {
            ImmutableArray<int> stay = contents.TryGetValue(rack.Index, out var own) ? [.. own.Devices.Where(d => !gone.Contains(d))] : [];
            var (left, gaps) = (bearing.Most(rack, stay, most), bearing.Gaps(rack, stay));
            var isTaken = new bool[rack.Type.Units + 1];
            foreach (var device in stay)
                for (var u = 0; u < plan.Devices.Group(device).Model.Units; u++)
                    if (plan.Devices.Unit(device) + u is >= 1 and var unit && unit < isTaken.Length) isTaken[unit] = true;
            for (var unit = rack.Type.Units - units + 1; unit >= 1 && left > 0; unit--)
            {
                if (isTaken.AsSpan(unit, units).Contains(true)) continue;
                places.Add(new PlacedAt(rack, unit) { Gaps = gaps });
                isTaken.AsSpan(unit, units).Fill(true);
                left--;
            }
        }
        return places.ToImmutable();
    }
}
