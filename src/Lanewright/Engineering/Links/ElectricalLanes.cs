using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>What a port must put on its contacts for one leg of a cable.</summary>
/// <param name="Name">The interface.</param>
/// <param name="Count">Lanes.</param>
/// <param name="Signal">What each carries.</param>
/// <param name="Definition">Where it is defined.</param>
/// <param name="IsPassive">Whether they run straight into wire.</param>
public sealed record ElectricalLanes(string Name, int Count, LaneSignal Signal, Citation Definition, bool IsPassive)
{
    /// <summary>The lanes of a passive copper type.</summary>
    public static ElectricalLanes Of(CopperType type) => new(type.Name, type.Lanes, type.Signal, type.Definition, IsPassive: true);

    /// <summary>The lanes of a host interface.</summary>
    public static ElectricalLanes Of(HostInterface host) => new(host.Name, host.Lanes, host.Signal, host.Definition, IsPassive: false);
}
