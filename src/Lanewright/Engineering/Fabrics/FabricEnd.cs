using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Links;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One side of a set of links.</summary>
/// <param name="Devices">The devices, in order.</param>
/// <param name="Ports">Numbers of the cages that are used, from 1, as a plan counts them.</param>
/// <param name="Mode">How each of these cages is split.</param>
public sealed record FabricEnd(ImmutableArray<FabricRun> Devices, PortFilter Ports, PortMode Mode);
