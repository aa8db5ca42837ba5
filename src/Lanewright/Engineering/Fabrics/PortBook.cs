using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts ports of a design: what each switch could open in its modes, and how many hosts that leaves room for.</summary>
internal sealed class PortBook(FabricDemand demand, FabricDesign design)
{
    /// <summary>Ports one switch of a role can open: those its links are given, and more in the same modes.</summary>
    public int Openable(SwitchRole role, int kind)
    {
        var taking = new PortTaking(BuildOf(role, kind).Layout);
        var demands = DemandsOf(role, kind);
        var ports = demands.Sum(d => taking.Take(d.Use, d.Ports).Length * d.Use.Mode.Ways);
        return ports + Further(taking, BuildOf(role, kind), demands.Select(d => d.Use)).Sum();
    }

    /// <summary>Ports that are left in the ways in use, then in any other cage that opens ports of the same rates.</summary>
    private static IEnumerable<int> Further(PortTaking taking, SwitchBuild build, IEnumerable<PortUse> inUse)
    {
        var uses = inUse.Distinct().ToList();
        var rates = uses.Select(u => u.Mode.Rate).Distinct().ToList();
        var others = build.Cages.SelectMany(c => c.Modes.Distinct().Where(m => rates.Contains(m.Rate)).Select(m => new PortUse(c, m)));
        foreach (var use in uses.Concat(others.OrderBy(u => u.Mode.Ways)))
            yield return taking.Take(use, int.MaxValue).Length * use.Mode.Ways;
    }

    /// <summary>How many hosts of the most numerous kind find room before the tier above the leaves is full.</summary>
    public GrowthRoom Room()
    {
        var starts = demand.CountsIn(0);
        var kind = Enumerable.Range(0, starts.Length).MaxBy(k => starts[k]);
        var leaf = design.Leaves[kind];
        var inPlane = demand.Hosts[kind].Demand.Ports / design.Planes;
        if (design is { Upper: { } upper, Core: { } core })
        {
            // Pods of other kinds take ports of the core as well.
            var others = leaf.PodsFor(demand.Finals[kind]) - new PodPlan(demand, design).Count;
            return new GrowthRoom("pods", PortTaking.Most(core.Build.Layout, core.Down[0]), upper.Parallel, others,
                leaf.BlocksPerPod * leaf.HostsPerLeaf, starts[kind]);
        }
        return design.Upper is not null
            ? new GrowthRoom("leaves", PortsFor(SwitchRole.Spine, kind), inPlane * leaf.Parallel, 0, leaf.HostsPerLeaf, starts[kind])
            : new GrowthRoom("hosts", PortsFor(SwitchRole.Box, kind), inPlane, 0, 1, starts[kind]);
    }

    private int PortsFor(SwitchRole role, int kind)
    {
        var taking = new PortTaking(BuildOf(role, kind).Layout);
        var own = 0;
        foreach (var (use, ports, of) in DemandsOf(role, kind))
        {
            var taken = taking.Take(use, ports).Length * use.Mode.Ways;
            if (of == kind) own += taken;
        }
        var mine = DemandsOf(role, kind).First(d => d.Kind == kind).Use;
        return own + Further(taking, BuildOf(role, kind), [mine]).Sum();
    }

    private SwitchBuild BuildOf(SwitchRole role, int kind) => role switch
    {
        SwitchRole.Spine or SwitchRole.Aggregation when design.Upper is { } upper => upper.Build,
        SwitchRole.Core when design.Core is { } core => core.Build,
        _ => design.Leaves[kind].Build,
    };

    /// <summary>The ports a switch is given, in the order they are taken.</summary>
    private ImmutableArray<(PortUse Use, int Ports, int Kind)> DemandsOf(SwitchRole role, int kind)
    {
        var kinds = Enumerable.Range(0, demand.Hosts.Length);
        var leaf = design.Leaves[kind];
        switch (role)
        {
            case SwitchRole.Box:
                var hosts = kinds.SelectMany(k => Enumerable.Repeat(
                    (design.Leaves[k].HostPorts, demand.Finals[k], k), demand.Hosts[k].Demand.Ports / design.Planes));
                return design.PeerLinks == 0 ? [.. hosts] : [.. hosts, (leaf.UpPorts, design.PeerLinks, -1)];
            case SwitchRole.Leaf:
                return design.Upper is { } above
                    ? [(leaf.HostPorts, leaf.HostsPerLeaf, kind), (leaf.UpPorts, above.Count * leaf.Parallel, -1)]
                    : [(leaf.HostPorts, leaf.HostsPerLeaf, kind)];
            case SwitchRole.Spine when design.Upper is { } spine:
                return [.. kinds.Select(k => (spine.Down[k], PortsBelow(k, design.Leaves[k].BlocksFor(demand.Finals[k])), k))];
            case SwitchRole.Aggregation when design is { Upper: { } upper, Core: { } core }:
                var below = new PodPlan(demand, design).MostBelow();
                return [(upper.Down[below.Kind], below.Ports, below.Kind), (upper.Up, core.Count * upper.Parallel, -1)];
            case SwitchRole.Core when design is { Upper: { } upper, Core: { } core }:
                return [(core.Down[0], new PodPlan(demand, design).Count * upper.Parallel, kind)];
            default:
                return [];
        }
    }

    private int PortsBelow(int kind, int blocks) =>
        blocks * (demand.Hosts[kind].Demand.Ports / design.Planes) * design.Leaves[kind].Parallel;
}
