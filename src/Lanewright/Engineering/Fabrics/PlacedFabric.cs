using System.Collections.Immutable;
using Lanewright.Model.Devices;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A design that has its places, in one year.</summary>
/// <param name="Layout">Where everything stands and how it is linked.</param>
/// <param name="Cages">The cages of each group's devices.</param>
/// <param name="Hosts">Hosts of each kind.</param>
internal sealed record PlacedFabric(FabricLayout Layout, ImmutableArray<CageLayout> Cages, ImmutableArray<int> Hosts);
