using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>An option as it stands in its hall at the start: enough to write it as a plan.</summary>
/// <param name="Racks">Every rack of the hall the option was laid out in: hosts' racks first, then those of upper tiers.</param>
/// <param name="IsStandardHall">Whether the hall was laid out by rule and not taken from a plan.</param>
/// <param name="Groups">The devices.</param>
/// <param name="Links">The links, in natural order of their names.</param>
public sealed record FabricLayout(
    ImmutableArray<Rack> Racks, bool IsStandardHall, ImmutableArray<FabricGroup> Groups, ImmutableArray<FabricLinks> Links)
{
    /// <summary>What stands in the hall already and stays where it is.</summary>
    public ImmutableArray<StandingDevice> Standing { get; init; } = [];
}
