using CsCheck;
using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>What must hold of loads on any fabric, and agreement with paths written down one by one.</summary>
public sealed class LoadProperties
{
    private static readonly Gen<(KnownFabric Fabric, int Traffic, SplitRule Rule)> Drawn = Gen.Select(
        RandomFabrics.Any, Gen.Int[0, 4], Gen.Bool, (f, t, hop) => (f, t, hop ? SplitRule.PerHop : SplitRule.PathWeighted));

    private static readonly Gen<(KnownFabric Fabric, int Pick, int Count, int First)> Outages =
        Gen.Select(RandomFabrics.Any, Gen.Int[0, 99], Gen.Int[1, 3], Gen.Int[0, 2]);

    [Fact]
    public void Loads_AreThoseOfAllPathsOneByOne() => Drawn.Sample(d =>
    {
        var traffic = RandomFabrics.Traffic(d.Fabric, d.Traffic);
        var loads = LoadSolver.OnShortestPaths(d.Fabric.Graph, traffic, d.Rule);
        var (sides, unrouted) = new PathByPath(d.Fabric.Graph).Loads(Demand(d.Fabric.Graph, traffic), d.Rule == SplitRule.PerHop);
        AssertSides(sides, loads);
        Assert.Equal(unrouted, loads.UnroutedGigabits, 1e-9);
    }, iter: 500);

    [Fact]
    public void Flow_IsKeptAtEverySwitch() => Drawn.Sample(d =>
    {
        var loads = LoadSolver.OnShortestPaths(d.Fabric.Graph, RandomFabrics.Traffic(d.Fabric, d.Traffic), d.Rule);
        AssertKept(loads);
    });

    [Fact]
    public void SumOfLoads_IsDemandTimesDistance() => Drawn.Sample(d =>
    {
        var traffic = RandomFabrics.Traffic(d.Fabric, d.Traffic);
        var loads = LoadSolver.OnShortestPaths(d.Fabric.Graph, traffic, d.Rule);
        var demand = Demand(d.Fabric.Graph, traffic);
        var paths = new PathByPath(d.Fabric.Graph);
        var expected = 0.0;
        foreach (var from in d.Fabric.Terminals)
            foreach (var to in d.Fabric.Terminals)
                if (demand(from.Node, to.Node) > 0 && paths.Shortest(from.Node, to.Node, true) is { Count: > 0 } found)
                    expected += demand(from.Node, to.Node) * found[0].Path.Length;
        Assert.Equal(expected, Sides(loads).Sum(), 1e-9);
    });

    [Fact]
    public void LinksWrittenOneByOne_LoadTheSame() => Drawn.Sample(d =>
    {
        // A bundle's links stay together, as each member must have as many; between switches every cable gets a link of its own.
        var graph = d.Fabric.Graph;
        var parts = graph.Links.Select((l, i) => (Link: l, Old: i))
            .SelectMany(l => graph.Nodes[l.Link.A].IsTerminal
                ? [l]
                : Enumerable.Repeat((Link: l.Link with { Count = 1 }, l.Old), l.Link.Count))
            .ToList();
        var apart = new FabricGraph(graph.Nodes, [.. parts.Select(p => p.Link)]);
        var traffic = RandomFabrics.Traffic(d.Fabric, d.Traffic);
        var before = LoadSolver.OnShortestPaths(graph, traffic, d.Rule);
        var after = LoadSolver.OnShortestPaths(apart, traffic, d.Rule);
        var sums = new double[graph.Links.Length * 2];
        for (var i = 0; i < parts.Count; i++)
        {
            sums[parts[i].Old * 2] += after.GigabitsFromA(i);
            sums[(parts[i].Old * 2) + 1] += after.GigabitsFromB(i);
        }
        AssertSides(sums, before);
    });

    [Fact]
    public void OtherNumbers_LoadTheSame() => Drawn.Sample(d =>
    {
        var graph = d.Fabric.Graph;
        int New(int node) => graph.Nodes.Length - 1 - node;
        var links = graph.Links.Select(l => l with { A = New(l.B), B = New(l.A) }).Reverse();
        var turned = new FabricGraph([.. graph.Nodes.Reverse()], [.. links]);
        var terminals = d.Fabric.Terminals.Select(t => t with { Node = New(t.Node) }).ToArray();
        var traffic = RandomFabrics.Traffic(d.Fabric, d.Traffic);
        var image = RandomFabrics.Traffic(new KnownFabric(turned, [.. terminals]), d.Traffic);
        var before = LoadSolver.OnShortestPaths(graph, traffic, d.Rule);
        var after = LoadSolver.OnShortestPaths(turned, image, d.Rule);
        for (var i = 0; i < graph.Links.Length; i++)
        {
            Assert.Equal(before.GigabitsFromA(i), after.GigabitsFromB(graph.Links.Length - 1 - i), 1e-9);
            Assert.Equal(before.GigabitsFromB(i), after.GigabitsFromA(graph.Links.Length - 1 - i), 1e-9);
        }
    });

    [Fact]
    public void Bundles_LoadAsTheirHostsOneByOne() => Drawn.Sample(d =>
    {
        // A host of a bundle has its share of the bundle's demand, so only demand among all hosts alike compares.
        var (apart, _) = RandomFabrics.OneByOne(d.Fabric);
        var before = LoadSolver.OnShortestPaths(d.Fabric.Graph, d.Fabric.AllToAll, SplitRule.PerHop);
        var after = LoadSolver.OnShortestPaths(apart.Graph, apart.AllToAll, SplitRule.PerHop);
        AssertSides(SumByOrigin(d.Fabric, after), before);
    });

    [Fact]
    public void MembersThatLoseLinks_LoadAsHostsOneByOne() => Outages.Sample(d =>
    {
        var (fabric, pick, count, first) = d;
        var links = Enumerable.Range(0, fabric.Graph.Links.Length);
        var atHosts = links.Where(l => fabric.Graph.Nodes[fabric.Graph.Links[l].A].IsTerminal).ToArray();
        var link = atHosts[pick % atHosts.Length];
        var members = fabric.Graph.Nodes[fabric.Graph.Links[link].A].Members;
        var all = fabric.Graph.Links[link].Count;
        var lost = new LinkOutage(link, Math.Min(count, all), first % members * (all / members));
        var hurt = fabric.Graph.Without(new Outage([], [lost], []));
        var (apart, _) = RandomFabrics.OneByOne(fabric);
        var starts = Starts(fabric);
        var each = fabric.Graph.Links[link].Count / members;
        var outage = Outage.None;
        for (var (left, member) = (lost.Count, first % members); left > 0; (left, member) = (left - each, (member + 1) % members))
            outage = outage.With(Outage.OfLink(starts[link] + member, Math.Min(each, left)));
        var before = LoadSolver.OnShortestPaths(hurt, fabric.AllToAll, SplitRule.PerHop);
        var after = LoadSolver.OnShortestPaths(apart.Graph.Without(outage), apart.AllToAll, SplitRule.PerHop);
        var sums = new double[fabric.Graph.Links.Length * 2];
        for (var i = 0; i < hurt.Links.Length; i++)
        {
            sums[hurt.OriginOfLink(i) * 2] += before.GigabitsFromA(i);
            sums[(hurt.OriginOfLink(i) * 2) + 1] += before.GigabitsFromB(i);
        }
        var expected = SumByOrigin(fabric, after);
        for (var side = 0; side < sums.Length; side++) Assert.Equal(expected[side], sums[side], 1e-9);
        Assert.Equal(after.UnroutedGigabits, before.UnroutedGigabits, 1e-9);
        Assert.Equal(after.MaxUtilisation.Value, before.MaxUtilisation.Value, 1e-9);
    });

    [Fact]
    public void LinksThatAreLost_LeaveAllOtherPathsOneByOne() => Gen.Select(Drawn, Gen.Int[0, 99], Gen.Int[0, 99]).Sample(d =>
    {
        var ((fabric, choice, rule), one, two) = d;
        bool IsInside(FabricLink link) => !fabric.Graph.Nodes[link.A].IsTerminal;
        var inside = Enumerable.Range(0, fabric.Graph.Links.Length).Where(l => IsInside(fabric.Graph.Links[l])).ToArray();
        if (inside.Length == 0) return;
        var outage = Outage.OfLink(inside[one % inside.Length], 1 + (one % 2)).With(Outage.OfLink(inside[two % inside.Length]));
        var hurt = fabric.Graph.Without(outage);
        var traffic = RandomFabrics.Traffic(fabric, choice);
        var loads = LoadSolver.OnShortestPaths(hurt, traffic, rule);
        var (sides, unrouted) = new PathByPath(hurt).Loads(Demand(fabric.Graph, traffic), rule == SplitRule.PerHop);
        AssertSides(sides, loads);
        Assert.Equal(unrouted, loads.UnroutedGigabits, 1e-9);
    });

    [Fact]
    public void Demand_OfAllKinds_AddsUpToItsTotal() => Drawn.Sample(d =>
    {
        var traffic = RandomFabrics.Traffic(d.Fabric, d.Traffic);
        var demand = Demand(d.Fabric.Graph, traffic);
        var nodes = Enumerable.Range(0, d.Fabric.Graph.Nodes.Length).ToList();
        Assert.Equal(nodes.Sum(from => nodes.Sum(to => demand(from, to))), traffic.TotalGigabits, 1e-9);
        // No host sends more than its rate, whatever it is spread over.
        if (d.Traffic > 1) return;
        foreach (var terminal in d.Fabric.Terminals)
            Assert.True(nodes.Sum(to => demand(terminal.Node, to)) <= terminal.Gigabits + 1e-9);
    });

    [Fact]
    public void IdealSplit_IsNeverFullerAndKeepsFlow() => Gen.Select(RandomFabrics.Any, Gen.Int[0, 3]).Sample(d =>
    {
        var traffic = RandomFabrics.Traffic(d.Item1, d.Item2);
        var ideal = LoadSolver.Of(d.Item1.Graph, traffic, SplitRule.Ideal);
        Assert.NotNull(ideal);
        AssertKept(ideal);
        foreach (var rule in new[] { SplitRule.PerHop, SplitRule.PathWeighted })
        {
            var other = LoadSolver.OnShortestPaths(d.Item1.Graph, traffic, rule);
            Assert.True(ideal.MaxUtilisation.Value <= other.MaxUtilisation.Value * (1 + 1e-6));
            Assert.Equal(other.UnroutedGigabits, ideal.UnroutedGigabits, 1e-9);
        }
    }, iter: 60);

    [Fact]
    public async Task OneCore_GivesTheSameBytes()
    {
        var fabric = KnownFabric.FatTree(16);
        var many = LoadSolver.OnShortestPaths(fabric.Graph, fabric.AllToAll, SplitRule.PathWeighted);
        var single = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, 1).ConcurrentScheduler;
        var one = await Task.Factory.StartNew(
            () => LoadSolver.OnShortestPaths(fabric.Graph, fabric.AllToAll, SplitRule.PathWeighted),
            default, TaskCreationOptions.None, single);
        Assert.Equal(Sides(many).Select(BitConverter.DoubleToInt64Bits), Sides(one).Select(BitConverter.DoubleToInt64Bits));
    }

    [Fact]
    public void ACableBetweenTwoHosts_CarriesWhatTheySendEachOther()
    {
        var unit = KnownFabric.Unit;
        var graph = new FabricGraph(
            [FabricNode.Switch(0), FabricNode.Hosts(0, 1), FabricNode.Hosts(0, 1), FabricNode.Hosts(0, 1)],
            [new(1, 0, unit, 1), new(2, 0, unit, 1), new(3, 0, unit, 1), new(1, 2, unit, 1)]);
        var traffic = TrafficMatrix.AllToAll([new(1, 1, unit), new(2, 1, unit), new(3, 1, unit)]);
        var loads = LoadSolver.OnShortestPaths(graph, traffic, SplitRule.PerHop);
        Assert.Equal([0.5, 0.5, 1, 0.5], Enumerable.Range(0, 4).Select(loads.GigabitsFromA));
        Assert.Equal([0.5, 0.5, 1, 0.5], Enumerable.Range(0, 4).Select(loads.GigabitsFromB));
    }

    private static Func<int, int, double> Demand(FabricGraph graph, TrafficMatrix traffic)
    {
        var columns = new double[graph.Nodes.Length][];
        for (var to = 0; to < columns.Length; to++) traffic.AddColumn(to, columns[to] = new double[columns.Length]);
        return (from, to) => columns[to][from];
    }

    private static IEnumerable<double> Sides(LinkLoads loads) =>
        Enumerable.Range(0, loads.Graph.Links.Length).SelectMany(l => new[] { loads.GigabitsFromA(l), loads.GigabitsFromB(l) });

    private static void AssertSides(double[] expected, LinkLoads loads)
    {
        var found = Sides(loads).ToArray();
        for (var side = 0; side < expected.Length; side++) Assert.Equal(expected[side], found[side], 1e-9);
    }

    private static void AssertKept(LinkLoads loads)
    {
        var surplus = new double[loads.Graph.Nodes.Length];
        for (var i = 0; i < loads.Graph.Links.Length; i++)
        {
            var net = loads.GigabitsFromA(i) - loads.GigabitsFromB(i);
            surplus[loads.Graph.Links[i].A] -= net;
            surplus[loads.Graph.Links[i].B] += net;
        }
        for (var node = 0; node < surplus.Length; node++)
            if (!loads.Graph.Nodes[node].IsTerminal) Assert.Equal(0, surplus[node], 1e-6);
    }

    /// <summary>The first link of each bundle's link when its hosts are taken apart.</summary>
    private static int[] Starts(KnownFabric fabric)
    {
        var starts = new int[fabric.Graph.Links.Length + 1];
        for (var i = 0; i < fabric.Graph.Links.Length; i++)
            starts[i + 1] = starts[i] + Math.Max(1, fabric.Graph.Nodes[fabric.Graph.Links[i].A].Members);
        return starts;
    }

    private static double[] SumByOrigin(KnownFabric fabric, LinkLoads apart)
    {
        var starts = Starts(fabric);
        var sums = new double[fabric.Graph.Links.Length * 2];
        for (var link = 0; link < fabric.Graph.Links.Length; link++)
        {
            for (var i = starts[link]; i < starts[link + 1]; i++)
            {
                sums[link * 2] += apart.GigabitsFromA(i);
                sums[(link * 2) + 1] += apart.GigabitsFromB(i);
            }
        }
        return sums;
    }
}
