namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of a rail-aligned fabric at its largest.</summary>
/// <param name="Servers">Servers.</param>
/// <param name="Accelerators">Accelerators.</param>
/// <param name="AcceleratorsPerUnit">Accelerators of a unit: servers that share a set of leaves.</param>
/// <param name="LeavesPerUnit">Leaves of a unit, one a rail.</param>
/// <param name="Units">Units.</param>
/// <param name="Leaves">All leaves.</param>
/// <param name="Spines">Spines; 0 where rails never meet.</param>
public sealed record RailCounts(
    int Servers, int Accelerators, int AcceleratorsPerUnit, int LeavesPerUnit, int Units, int Leaves, int Spines);
