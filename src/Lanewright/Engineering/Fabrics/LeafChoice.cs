namespace Lanewright.Engineering.Fabrics;

/// <summary>The lowest tier for one kind of host.</summary>
/// <param name="Build">The switch.</param>
/// <param name="HostPorts">How its ports for hosts are opened.</param>
/// <param name="UpPorts">How its uplinks are opened; not set for one tier.</param>
/// <param name="HostsPerLeaf">Hosts of a full leaf, one port of each.</param>
/// <param name="Parallel">Links to each switch of the tier above.</param>
/// <param name="BlocksPerPod">Blocks of leaves in a pod; 0 without pods.</param>
internal sealed record LeafChoice(
    SwitchBuild Build, PortUse HostPorts, PortUse UpPorts, int HostsPerLeaf, int Parallel, int BlocksPerPod = 0)
{
    /// <summary>Whether it stands in racks of its own, or of upper tiers, rather than above its hosts.</summary>
    public bool IsApart { get; init; }

    /// <summary>Blocks for a number of hosts: sets of leaves, one leaf for each port of a host in a plane.</summary>
    public int BlocksFor(int hosts) => (hosts + HostsPerLeaf - 1) / HostsPerLeaf;

    /// <summary>Pods for a number of hosts.</summary>
    public int PodsFor(int hosts) => (BlocksFor(hosts) + BlocksPerPod - 1) / BlocksPerPod;
}
