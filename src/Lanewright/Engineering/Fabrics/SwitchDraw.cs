using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What one switch draws at the least with what sits in its cages, before anything is placed: the thriftiest way of each link, no
/// shorter than any there can be. What is too much by that is too much wherever it stands.</summary>
internal sealed class SwitchDraw(FabricDemand demand, LinkPricer pricer, CostFloor floor)
{
    private readonly Watts? limit = demand.Wanted.RackPower;

    /// <summary>Whether anything limits what a switch may draw with its modules.</summary>
    public bool Binds(SwitchBuild build) => limit is not null || build.Model.ModuleBudget is not null;

    /// <summary>The first switch of a design that draws too much with its modules, by how much it draws; null where none does.</summary>
    public (double Watts, string Reason)? FaultOf(FabricDesign design)
    {
        if (design.IsBox)
        {
            var build = design.Leaves[0].Build;
            return Fault(build, Enumerable.Range(0, design.Leaves.Length).Sum(k => Below(k, design.Leaves[k], BoxPorts(design, k))));
        }
        for (var kind = 0; kind < design.Leaves.Length; kind++)
            if (design.Upper is { } above && OfLeaf(kind, design.Leaves[kind], above.Down[kind], above.Count) is { } fault) return fault;
        if (design.Upper is not { } upper) return null;
        return Fault(upper.Build, UpperModules(design, upper))
            ?? (design.Core is { } core ? Fault(core.Build, CoreModules(design, upper, core)) : null);
    }

    /// <summary>What one upper switch and one core of a design draw at the least; nothing for a tier that is not there.</summary>
    public (double Upper, double Core) OfUppers(FabricDesign design) => design.Upper is not { } upper
        ? default
        : (upper.Build.Maximum + UpperModules(design, upper),
            design.Core is { } core ? core.Build.Maximum + CoreModules(design, upper, core) : 0);

    /// <summary>That a full leaf draws too much, by how much it draws; null where it does not.</summary>
    /// <param name="kind">The kind of host.</param>
    /// <param name="leaf">The leaf.</param>
    /// <param name="upper">How upper switches open ports for it.</param>
    /// <param name="uppers">How many it has links to.</param>
    public (double Watts, string Reason)? OfLeaf(int kind, LeafChoice leaf, PortUse upper, int uppers)
    {
        var each = pricer.LeastWatts(new LinkEnds(leaf.UpPorts, upper), PlaceOf(leaf)).From;
        return Fault(leaf.Build, Below(kind, leaf, Math.Min(leaf.HostsPerLeaf, demand.Finals[kind]))
            + (leaf.UpPorts.CagesFor((long)uppers * leaf.Parallel) * each));
    }

    /// <summary>That the leaves of some rack, which stand there whatever is above them, draw too much with their uplinks.</summary>
    /// <param name="racks">What stands where.</param>
    /// <param name="row">The leaves.</param>
    public (double Watts, string Reason)? OfRacks(ImmutableArray<LeafRack> racks, LeafRow row)
    {
        if (limit is not { } most || racks.IsEmpty) return null;
        var leaf = row.Choice;
        var up = leaf.UpPorts.CagesFor(row.Uplinks) * pricer.LeastWatts(new LinkEnds(leaf.UpPorts, row.UpperPorts), PlaceOf(leaf)).From;
        var hottest = racks.MaxBy(r => r.Watts + (r.Leaves * up));
        var watts = Rounded(hottest.Watts + (hottest.Leaves * up));
        return watts > most.Value ? (watts, BrokenLimits.LeavesInRack(leaf.Build, hottest.Leaves, watts, most)) : null;
    }

    private (double Watts, string Reason)? Fault(SwitchBuild build, double modules)
    {
        if (limit is { } most && Rounded(build.Maximum + modules) is var watts && watts > most.Value)
            return (watts, BrokenLimits.WithModules(build, watts, most));
        return build.Model.ModuleBudget is { } budget && Rounded(modules) > budget.Value
            ? (build.Maximum + modules, $"the modules of one {build.Name} draw {Watts.From(modules)} or more and it can spare {budget}")
            : null;
    }

    /// <summary>Modules of a spine, which has links to all leaves of its plane, or of an aggregation switch of the fullest pod.</summary>
    private double UpperModules(FabricDesign design, UpperChoice upper) => design.Core is not { } core
        ? Kinds(design).Sum(k => Leaves(design, k, upper, int.MaxValue))
        : Kinds(design).Max(k => Leaves(design, k, upper, design.Leaves[k].BlocksPerPod))
            + (upper.Up.CagesFor((long)core.Count * upper.Parallel) * Trunks(upper, core).From);

    private double CoreModules(FabricDesign design, UpperChoice upper, UpperChoice core) =>
        core.Down[0].CagesFor((long)new PodPlan(demand, design).Count * upper.Parallel) * Trunks(upper, core).To;

    private (double From, double To) Trunks(UpperChoice upper, UpperChoice core) =>
        pricer.LeastWatts(new LinkEnds(upper.Up, core.Down[0]), floor.PlaceTrunk);

    private static IEnumerable<int> Kinds(FabricDesign design) => Enumerable.Range(0, design.Leaves.Length);

    /// <summary>As racks are counted once all is placed.</summary>
    private static double Rounded(double watts) => Math.Round(watts, StateCounter.Places);

    private int BoxPorts(FabricDesign design, int kind) => demand.Finals[kind] * (demand.Hosts[kind].Demand.Ports / design.Planes);

    /// <summary>Modules toward hosts of the fullest leaf, or of a box.</summary>
    private double Below(int kind, LeafChoice leaf, int ports)
    {
        var each = pricer.LeastWatts(new LinkEnds(demand.Hosts[kind].Port, leaf.HostPorts), floor.PlaceInRack).To;
        return leaf.HostPorts.CagesFor(ports) * each;
    }

    /// <summary>Modules toward the leaves of a kind, at most so many blocks of them, of one upper switch.</summary>
    private double Leaves(FabricDesign design, int kind, UpperChoice upper, int mostBlocks)
    {
        var leaf = design.Leaves[kind];
        var blocks = (long)Math.Min(mostBlocks, leaf.BlocksFor(demand.Finals[kind]));
        var each = pricer.LeastWatts(new LinkEnds(leaf.UpPorts, upper.Down[kind]), PlaceOf(leaf)).To;
        return upper.Down[kind].CagesFor(blocks * (demand.Hosts[kind].Demand.Ports / design.Planes) * leaf.Parallel) * each;
    }

    private int PlaceOf(LeafChoice leaf) => leaf.IsApart ? Math.Min(floor.PlaceApart, floor.PlaceAcross) : floor.PlaceAcross;
}
