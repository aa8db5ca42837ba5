using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The pods of a design of three tiers: kind after kind, after the last year.</summary>
internal sealed class PodPlan
{
    private readonly FabricDemand demand;
    private readonly FabricDesign design;
    private readonly List<(int Kind, int Pod)> pods = [];

    public PodPlan(FabricDemand demand, FabricDesign design)
    {
        this.demand = demand;
        this.design = design;
        for (var kind = 0; kind < demand.Hosts.Length; kind++)
            for (var pod = 0; pod < design.Leaves[kind].PodsFor(demand.Finals[kind]); pod++) pods.Add((kind, pod));
    }

    /// <summary>Pods after the last year.</summary>
    public int Count => pods.Count;

    /// <summary>The kind of host of a pod, and its number among the pods of that kind, from 0.</summary>
    public (int Kind, int Pod) KindOf(int pod) => pods[pod];

    /// <summary>Pods that stand when there are so many hosts.</summary>
    public ImmutableArray<int> PresentFor(ImmutableArray<int> hosts) =>
        [.. Enumerable.Range(0, pods.Count).Where(p => pods[p].Pod < design.Leaves[pods[p].Kind].PodsFor(hosts[pods[p].Kind]))];

    /// <summary>Racks of hosts of a pod: the first and the last.</summary>
    public (int First, int Last) RacksOf(int pod)
    {
        var (kind, nth) = pods[pod];
        var perPod = (long)design.Leaves[kind].BlocksPerPod * design.Leaves[kind].HostsPerLeaf;
        var last = Math.Min(((nth + 1) * perPod) - 1, demand.Finals[kind] - 1);
        var perRack = demand.Hosts[kind].Demand.PerRack;
        var start = demand.Hall.FirstRack[kind];
        return (start + (int)(nth * perPod / perRack), start + (int)(last / perRack));
    }

    /// <summary>The kind of host whose pods take the most cages of an aggregation switch for ports below: uplinks come behind them, so that
    /// they are the same cages in every pod.</summary>
    public (int Kind, int Ports) MostBelow()
    {
        var upper = design.Upper ?? throw new InvalidOperationException("a design without pods");
        return Enumerable.Range(0, demand.Hosts.Length)
            .Select(k => (Kind: k, Ports: design.Leaves[k].BlocksPerPod
                * (demand.Hosts[k].Demand.Ports / design.Planes) * design.Leaves[k].Parallel))
            .OrderByDescending(k => upper.Down[k.Kind].CagesFor(k.Ports))
            .First();
    }
}
