namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of planes side by side.</summary>
/// <param name="Planes">Planes.</param>
/// <param name="Plane">Counts of each.</param>
/// <param name="HostCables">Links of hosts.</param>
public sealed record PlaneCounts(int Planes, TwoTierCounts Plane, long HostCables)
{
    /// <summary>Switches of all planes.</summary>
    public int Switches => Planes * (Plane.Leaves + Plane.Spines);

    /// <summary>Links between switches of all planes.</summary>
    public long FabricLinks => Planes * Plane.FabricLinks;
}
