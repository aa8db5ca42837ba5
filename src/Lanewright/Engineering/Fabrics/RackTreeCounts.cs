namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of a network of racks, aggregation and intermediate switches.</summary>
/// <param name="Hosts">Hosts.</param>
/// <param name="Racks">Racks, and so top-of-rack switches.</param>
/// <param name="Aggregation">Aggregation switches.</param>
/// <param name="Intermediate">Intermediate switches.</param>
/// <param name="TopLinks">Links between aggregation and intermediate switches.</param>
public sealed record RackTreeCounts(long Hosts, long Racks, long Aggregation, long Intermediate, long TopLinks);
