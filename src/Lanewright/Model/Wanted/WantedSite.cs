using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Model.Power;

namespace Lanewright.Model.Wanted;

/// <summary>What a plan says of the place a wanted fabric goes to.</summary>
/// <param name="Building">Halls, racks and pathways.</param>
/// <param name="Feeds">Power feeds.</param>
/// <param name="Standing">What exists there and stays where it is.</param>
public sealed record WantedSite(Building Building, ImmutableArray<PowerFeed> Feeds, ImmutableArray<StandingDevice> Standing)
{
    /// <summary>Whether anything is said that may keep equipment out of these racks: what they bear, feed or cool, trays, or what stands in
    /// them.</summary>
    public bool Binds(ImmutableArray<Rack> racks) =>
        racks.Any(r => r.Type.WeightLimit is not null || r.Type.PowerLimit is not null || r.Hall.FloorLoad is not null
            || r.Hall.Cooling is not null)
        || Building.Pathways.Any(p => racks.Any(r => r.Hall == p.Hall))
        || Feeds.Any(f => racks.Any(r => f.Racks.Contains(r.Index)))
        || Standing.Any(d => racks.Any(r => r.Index == d.Rack.Index));
}
