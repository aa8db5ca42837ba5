namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of groups of switches joined to each other.</summary>
/// <param name="Groups">Groups.</param>
/// <param name="Switches">Switches of all groups.</param>
/// <param name="Hosts">Hosts.</param>
/// <param name="Radix">Ports each switch needs.</param>
public sealed record GroupCounts(int Groups, long Switches, long Hosts, int Radix);
