namespace Lanewright.Engineering.Fabrics;

/// <summary>A leaf for one kind of host in pods with a given number of aggregation switches of a model.</summary>
/// <param name="Config">The switch and its ports.</param>
/// <param name="Below">How the aggregation switches open ports for it, and how many uplinks are left beside.</param>
/// <param name="HostsPerLeaf">Hosts of a full leaf.</param>
/// <param name="Parallel">Links to each aggregation switch of the pod.</param>
/// <param name="Blocks">Blocks after the last year.</param>
/// <param name="PortsPerBlock">Ports of each aggregation switch that one block takes.</param>
/// <param name="Least">Hundredths its leaves cost at least over the years, with links to hosts and to the pod.</param>
internal sealed record PodRow(
    LeafConfig Config, LeafConfig Below, int HostsPerLeaf, int Parallel, int Blocks, int PortsPerBlock, double Least)
{
    /// <summary>What cores and the links to them cost at least, as far as counts of ports tell.</summary>
    public double Above { get; init; }

    /// <summary>What it all costs at least, with aggregation switches, cores and the links to them.</summary>
    public double Bound { get; init; }

    /// <summary>The fewest pods, whatever goes up.</summary>
    public int FewestPods => Below.MostHosts < PortsPerBlock ? int.MaxValue : BlocksOver(Below.MostHosts / PortsPerBlock);

    private int BlocksOver(int blocksPerPod) => (Blocks + blocksPerPod - 1) / blocksPerPod;

    /// <summary>The leaf in a design with so many pods.</summary>
    public LeafChoice Choice(int pods) => new(
        Config.Build, Config.HostPorts, Config.UpPorts, HostsPerLeaf, Parallel, BlocksPerPod(pods)) { IsApart = Config.IsApart };

    /// <summary>Blocks of a pod when there are so many pods.</summary>
    public int BlocksPerPod(int pods) => (Blocks + pods - 1) / pods;
}
