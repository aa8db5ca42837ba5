using System.Collections.Immutable;
using Lanewright.Model.Devices;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A design that has its places, in one year.</summary>
/// <param name="Hall">The hall it stands in.</param>
/// <param name="Layout">Where everything stands and how it is linked.</param>
/// <param name="Cages">The cages of each group's devices.</param>
/// <param name="Hosts">Hosts of each kind.</param>
/// <param name="Edges">For each set of links what decides how it is made; null where nothing shorter than the design does.</param>
internal sealed record PlacedFabric(
    FabricHall Hall, FabricLayout Layout, ImmutableArray<CageLayout> Cages, ImmutableArray<int> Hosts, ImmutableArray<EdgeKey?> Edges)
{
    /// <summary>Whether leaves stand in racks of their own.</summary>
    public bool HasLeavesApart { get; init; }
}
