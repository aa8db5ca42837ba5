using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of a folded Clos of switches alike.</summary>
/// <param name="Hosts">Host ports.</param>
/// <param name="Switches">Switches of each tier, from the hosts up.</param>
/// <param name="LinksUp">Links from each tier to the one above; none for the top.</param>
/// <param name="Pods">Sets of switches that the top tier joins; 1 for one tier.</param>
/// <param name="HostsPerPod">Hosts below one of them.</param>
/// <param name="Paths">Shortest paths between hosts of different pods.</param>
/// <param name="EndToEnd">Oversubscription of all tiers together.</param>
/// <param name="UnusedPorts">Ports of each switch of the lowest tier that the ratio leaves without use.</param>
public sealed record FoldedClos(
    long Hosts, ImmutableArray<long> Switches, ImmutableArray<long> LinksUp, long Pods, long HostsPerPod, long Paths, Ratio EndToEnd,
    int UnusedPorts)
{
    /// <summary>All switches.</summary>
    public long AllSwitches => Switches.Sum();

    /// <summary>Links between switches.</summary>
    public long FabricLinks => LinksUp.Sum();

    /// <summary>Links with those of hosts.</summary>
    public long Links => FabricLinks + Hosts;

    /// <summary>Links between the two switches farthest apart.</summary>
    public int Diameter => 2 * (Switches.Length - 1);

    /// <summary>Optical ends of links between switches, a host.</summary>
    public Ratio OpticEndsPerHost => FabricLinks == 0 ? new Ratio(0, 1) : new Ratio(2 * FabricLinks, Hosts).Reduced;
}
