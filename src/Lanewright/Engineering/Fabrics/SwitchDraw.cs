namespace Lanewright.Engineering.Fabrics;

/// <summary>What one switch of a design draws at the least with what sits in its cages, before anything is placed: the fullest leaf, box
/// and spine with the thriftiest way of each link.</summary>
internal sealed class SwitchDraw(FabricDemand demand, LinkPricer pricer, CostFloor floor)
{
    /// <summary>Whether one switch of a design is more than a rack may draw, with what it draws and which it is.</summary>
    public (double Watts, SwitchBuild Build)? TooMuch(FabricDesign design) =>
        demand.Wanted.RackPower is { } limit && Of(design) is var most && Math.Round(most.Watts, StateCounter.Places) > limit.Value
            ? most
            : null;

    /// <summary>The most that one switch draws at the least, and which it is.</summary>
    private (double Watts, SwitchBuild Build) Of(FabricDesign design)
    {
        var most = (Watts: 0.0, Build: design.Leaves[0].Build);
        var box = most.Build.Maximum;
        for (var kind = 0; kind < design.Leaves.Length; kind++)
        {
            var leaf = design.Leaves[kind];
            var below = Below(design, kind);
            if (design.IsBox)
            {
                box += below;
                continue;
            }
            var watts = leaf.Build.Maximum + below + Above(design, leaf, kind);
            if (watts > most.Watts) most = (watts, leaf.Build);
        }
        if (design.IsBox) return (box, most.Build);
        return design is { Upper: { } upper, Core: null } && Spine(design, upper) is var spine && spine > most.Watts
            ? (spine, upper.Build)
            : most;
    }

    /// <summary>Links to hosts of the fullest leaf, or of a box.</summary>
    private double Below(FabricDesign design, int kind)
    {
        var (leaf, host) = (design.Leaves[kind], demand.Hosts[kind]);
        var ports = design.IsBox ? host.Demand.Ports / design.Planes : 1;
        var hosts = Math.Min(leaf.HostsPerLeaf, demand.Finals[kind]);
        var each = pricer.LeastWatts(new LinkEnds(host.Port, leaf.HostPorts), 0).To;
        return ports * Cages(hosts, leaf.HostPorts) * each;
    }

    private double Above(FabricDesign design, LeafChoice leaf, int kind)
    {
        if (design.Upper is not { } upper) return 0;
        var each = pricer.LeastWatts(new LinkEnds(leaf.UpPorts, upper.Down[kind]), PlaceOf(leaf)).From;
        return Cages((long)upper.Count * leaf.Parallel, leaf.UpPorts) * each;
    }

    /// <summary>A spine has links to all leaves of its plane.</summary>
    private double Spine(FabricDesign design, UpperChoice upper)
    {
        var watts = upper.Build.Maximum;
        for (var kind = 0; kind < design.Leaves.Length; kind++)
        {
            var leaf = design.Leaves[kind];
            var leaves = (long)leaf.BlocksFor(demand.Finals[kind]) * (demand.Hosts[kind].Demand.Ports / design.Planes);
            var each = pricer.LeastWatts(new LinkEnds(leaf.UpPorts, upper.Down[kind]), PlaceOf(leaf)).To;
            watts += Cages(leaves * leaf.Parallel, upper.Down[kind]) * each;
        }
        return watts;
    }

    private int PlaceOf(LeafChoice leaf) => leaf.IsApart ? Math.Min(floor.PlaceApart, floor.PlaceAcross) : floor.PlaceAcross;

    private static long Cages(long ports, PortUse use) => (ports + use.Mode.Ways - 1) / use.Mode.Ways;
}
