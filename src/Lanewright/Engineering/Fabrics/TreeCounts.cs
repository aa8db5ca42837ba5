using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of a generalised fat tree.</summary>
/// <param name="Nodes">Nodes of each level, from the hosts at level 0.</param>
/// <param name="Links">Links from each level to the one above.</param>
public sealed record TreeCounts(ImmutableArray<long> Nodes, ImmutableArray<long> Links);
