using System.Collections.Immutable;
using CsCheck;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Sweeps by class against sweeps one by one, pairs, and what availability makes of them.</summary>
public sealed class FailureTests
{
    [Fact]
    public void SweepByClasses_IsTheSweepOneByOne() => Gen.Select(RandomFabrics.Any, Gen.Int[0, 4], Gen.Bool).Sample(d =>
    {
        var (fabric, choice, perHop) = d;
        var rule = perHop ? SplitRule.PerHop : SplitRule.PathWeighted;
        var traffic = RandomFabrics.Traffic(fabric, choice);
        var units = Units(fabric.Graph);
        var sweep = FailureSweep.Of(fabric.Graph, traffic, rule, units);
        Assert.NotNull(sweep);
        Assert.Equal(Enumerable.Range(0, units.Length), sweep.Classes.SelectMany(c => c.Units).Order());
        foreach (var alike in sweep.Classes)
        {
            foreach (var unit in alike.Units)
            {
                var loads = LoadSolver.OnShortestPaths(fabric.Graph.Without(units[unit].Outage), traffic, rule);
                Assert.Equal(loads.MaxUtilisation.Value, alike.MaxUtilisation.Value, 1e-9);
                Assert.Equal(loads.UnroutedGigabits, alike.UnroutedGigabits, 1e-9);
            }
        }
    });

    [Fact]
    public void SweepOnWellKnownFabrics_IsTheSweepOneByOne()
    {
        KnownFabric[] fabrics =
        [
            KnownFabric.FatTree(4), KnownFabric.SlimFly(5, 4), KnownFabric.Dragonfly(2, 4, 2), KnownFabric.LeafSpine(4, 2, 2, 2),
        ];
        foreach (var fabric in fabrics)
        {
            var units = Simple(fabric.Graph);
            var sweep = FailureSweep.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units);
            Assert.NotNull(sweep);
            Assert.True(sweep.Classes.Length < units.Length / 2);
            foreach (var alike in sweep.Classes)
            {
                foreach (var unit in alike.Units)
                {
                    var loads = LoadSolver.OnShortestPaths(fabric.Graph.Without(units[unit].Outage), fabric.AllToAll, SplitRule.PerHop);
                    Assert.Equal(loads.MaxUtilisation.Value, alike.MaxUtilisation.Value, 1e-9);
                }
            }
        }
    }

    /// <summary>Without symmetry every failure stands alone: each against all paths anew, by its fullest link and by what is without a
    /// path.</summary>
    [Theory]
    [InlineData(14, 3, 1)]
    [InlineData(20, 4, 2)]
    [InlineData(24, 3, 3)]
    public void SweepOfIrregularFabrics_IsTheSweepOneByOne(int switches, int degree, ulong seed)
    {
        var drawn = KnownFabric.RandomRegular(switches, degree, seed);
        // Parallel cables and hosts on two switches, which random regular graphs have none of.
        var links = drawn.Graph.Links.Select((l, i) => drawn.Graph.Nodes[l.A].IsTerminal ? l : l with { Count = 1 + (i % 3) });
        ImmutableArray<FabricLink> more = [.. links, .. drawn.Terminals.Where((_, i) => i % 4 == 0)
            .Select((t, i) => new FabricLink(t.Node, ((i * 4) + 7) % switches, KnownFabric.Unit, 1))];
        var graph = new FabricGraph(drawn.Graph.Nodes, more);
        var units = Units(graph);
        var traffic = drawn.AllToAll;
        var sweep = FailureSweep.Of(graph, traffic, SplitRule.PerHop, units);
        Assert.NotNull(sweep);
        foreach (var alike in sweep.Classes)
        {
            var unit = units[alike.Units[0]];
            var loads = LoadSolver.OnShortestPaths(graph.Without(unit.Outage), traffic, SplitRule.PerHop);
            Assert.Equal(loads.MaxUtilisation.Value, alike.MaxUtilisation.Value, 1e-9);
            Assert.Equal(loads.UnroutedGigabits, alike.UnroutedGigabits, 1e-9);
            var alone = FailureSweep.Of(graph, traffic, SplitRule.PerHop, [unit])?.Classes[0];
            Assert.Equal(alone?.MembersCut, alike.MembersCut);
            Assert.Equal(alone?.LostGigabits ?? -1, alike.LostGigabits, 1e-9);
        }
    }

    /// <summary>One uplink of S lost leaves D/(S-1) on each other uplink of that leaf: closed form.</summary>
    [Fact]
    public void OneUplinkLost_LoadsTheOthersByTheClosedForm()
    {
        var fabric = KnownFabric.LeafSpine(6, 5, 4);
        var sweep = FailureSweep.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, Simple(fabric.Graph));
        var uplinks = sweep?.Classes.Single(c => c.Kind == FailureKind.Link && c.Size == 30);
        Assert.Equal(1.0, uplinks?.MaxUtilisation.Value ?? 0, 1e-12);
        var hurt = LoadSolver.OnShortestPaths(fabric.Graph.Without(Outage.OfLink(3)), fabric.AllToAll, SplitRule.PerHop);
        foreach (var link in new[] { 0, 1, 2, 4 }) Assert.Equal(4.0 / 4, hurt.Utilisation(link).Value, 1e-12);
        // Another leaf: D/S (L-2)/(L-1) + D/((L-1)(S-1)) to the spines that are whole, D/S (L-2)/(L-1) to the one that lost a link.
        Assert.Equal((4.0 / 5 * 4 / 5) + (4.0 / (5 * 4)), hurt.Utilisation(5).Value, 1e-12);
        Assert.Equal(4.0 / 5 * 4 / 5, hurt.Utilisation(8).Value, 1e-12);
        Assert.Equal(0, uplinks?.MembersCut);
    }

    [Fact]
    public void ALeafThatFails_CutsItsSingleHomedHostsAndNoOthers()
    {
        var unit = KnownFabric.Unit;
        // Two leaves, a spine; four hosts on the first leaf alone, two on both.
        var graph = new FabricGraph(
            [
                FabricNode.Switch(1), FabricNode.Switch(1), FabricNode.Switch(2),
                FabricNode.Hosts(0, 4), FabricNode.Hosts(0, 2), FabricNode.Hosts(0, 5),
            ],
            [new(0, 2, unit, 4), new(1, 2, unit, 4), new(3, 0, unit, 4), new(4, 0, unit, 2), new(4, 1, unit, 2), new(5, 1, unit, 5)]);
        var traffic = TrafficMatrix.AllToAll([new(3, 4, unit), new(4, 2, unit), new(5, 5, unit)]);
        int Cut(Outage outage) =>
            FailureSweep.Of(graph, traffic, SplitRule.PerHop, [new("x", FailureKind.Switch, outage)])?.Classes[0].MembersCut ?? -1;
        Assert.Equal(4, Cut(Outage.OfNode(0)));
        Assert.Equal(5, Cut(Outage.OfNode(1)));
        // Without the spine the leaves stand alone: the larger part is the second leaf with its seven.
        Assert.Equal(4, Cut(Outage.OfNode(2)));
        Assert.Equal(1, Cut(Outage.OfLink(2)));
        Assert.Equal(0, Cut(Outage.OfLink(3)));
        Assert.Equal(1, Cut(Outage.OfLink(3).With(Outage.OfLink(4))));
        Assert.Equal(0, Cut(Outage.OfLink(3, 1, 0).With(Outage.OfLink(4, 1, 1))));
        // Hosts that are down themselves are not cut off.
        Assert.Equal(0, Cut(new Outage([], [], [new MemberOutage(3, 1, 2)])));
    }

    [Fact]
    public void Pairs_ByClasses_AreAllPairsOneByOne() => Gen.Select(RandomFabrics.Any, Gen.Int[0, 2]).Sample(d =>
    {
        var units = Units(d.Item1.Graph);
        var traffic = RandomFabrics.Traffic(d.Item1, d.Item2);
        var found = FailurePairs.Of(d.Item1.Graph, traffic, SplitRule.PerHop, units, int.MaxValue, 1);
        Assert.True(found.IsExact);
        AssertPairs(d.Item1.Graph, traffic, units, found);
    }, iter: 12);

    /// <summary>A cable that fails with a tray it lies in takes nothing more down; counted twice it would empty a pair of two.</summary>
    [Fact]
    public void Pairs_ThatHaveACableInCommon_TakeItOnce()
    {
        var fabric = KnownFabric.LeafSpine(2, 2, 2, parallel: 3);
        var tray = new FailureUnit("tray", FailureKind.Tray, Outage.OfLink(0, 2).With(Outage.OfLink(1)));
        var both = fabric.Graph.Without(tray.Outage.With(Outage.OfLink(0, 1, 1)));
        Assert.Equal([1, 2, 3, 3], both.Links.Take(4).Select(l => l.Count));
        Assert.Equal(0, fabric.Graph.Without(tray.Outage.With(Outage.OfLink(0, 1, 2))).Links[0].Count);
        ImmutableArray<FailureUnit> units = [.. Simple(fabric.Graph), tray];
        var found = FailurePairs.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units, int.MaxValue, 1);
        Assert.True(found.IsExact);
        AssertPairs(fabric.Graph, fabric.AllToAll, units, found);
    }

    /// <summary>Hosts in pairs on one cable each: a host's link and its own cable hit two hosts, with another cable
    /// three.</summary>
    [Fact]
    public void Pairs_OfALinkAndACable_KnowWhichCableTheLinkIsIn()
    {
        var fabric = KnownFabric.Of([1], [], [(0, 4, 4)]);
        ImmutableArray<FailureUnit> units =
        [
            .. Enumerable.Range(0, 4).Select(i => new FailureUnit($"l{i}", FailureKind.Link, Outage.OfLink(0, 1, i))),
            .. Enumerable.Range(0, 2).Select(i => new FailureUnit($"c{i}", FailureKind.Cable, Outage.OfLink(0, 2, i * 2))),
        ];
        var found = FailurePairs.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units, int.MaxValue, 1);
        // Links of one cable and of two, a link with its own cable and with the other, both cables.
        Assert.True(found is { IsExact: true, PairCount: 15, Evaluated: 5 }, $"{found.Evaluated}");
        AssertPairs(fabric.Graph, fabric.AllToAll, units, found);
    }

    [Fact]
    public void Pairs_OfAFatTree_AreAllPairsOneByOne()
    {
        var fabric = KnownFabric.FatTree(4);
        var units = Simple(fabric.Graph);
        var found = FailurePairs.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units, 2000, 1);
        Assert.True(found is { IsExact: true, Evaluated: < 100 });
        AssertPairs(fabric.Graph, fabric.AllToAll, units, found);
    }

    [Fact]
    public void Pairs_SampledFromAnySeed_HoldTheTruthAboutAsOftenAsTheySay()
    {
        var fabric = KnownFabric.FatTree(4);
        var units = Simple(fabric.Graph);
        var truth = FailurePairs.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units, 2000, 1);
        var holds = 0;
        for (var seed = 1ul; seed <= 40; seed++)
        {
            var sample = FailurePairs.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units, 20, seed);
            Assert.False(sample.IsExact);
            if (sample.Overloading.Lower <= truth.Overloading.Estimate && truth.Overloading.Estimate <= sample.Overloading.Upper) holds++;
            var again = FailurePairs.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units, 20, seed);
            Assert.Equal(sample, again with { WorstPair = sample.WorstPair });
            Assert.Equal(sample.WorstPair, again.WorstPair.AsEnumerable());
        }
        // 95 % or more each: fewer than 34 of 40 has a chance below one in three hundred.
        Assert.True(holds >= 34, $"{holds} of 40 intervals hold the true share");
    }

    /// <summary>MTBF / (MTBF + MTTR), `common practice`: one failure a year and 8.76 hours to repair make 1/1.001.</summary>
    [Fact]
    public void Availability_OfAUnit() =>
        Assert.Equal(1 / 1.001, Availability.OfUnit(1, TimeSpan.FromHours(8.76)).Value, 1e-12);

    [Fact]
    public void Availability_OfAFabric_LiesBetweenItsBounds()
    {
        // Four spines, three of which carry the load: exactly the binomial tail, which the bounds must hold.
        var fabric = KnownFabric.LeafSpine(4, 4, 3);
        ImmutableArray<FailureUnit> spines =
            [.. Enumerable.Range(4, 4).Select(s => new FailureUnit($"s{s}", FailureKind.Switch, Outage.OfNode(s)))];
        var sweep = FailureSweep.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, spines);
        Assert.NotNull(sweep);
        var up = Share.From(0.99);
        var found = Availability.OfFabric(sweep, Share.From(1 + 1e-9), _ => up);
        var truth = Availability.AtLeast(4, 3, up);
        Assert.Equal(truth.Value, found.Lower.Value, 1e-12);
        Assert.Equal(1.0, found.Upper.Value, 1e-12);
    }

    private static void AssertPairs(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units, FailurePairs found)
    {
        var (pairs, over, cutting, worst) = (0L, 0L, 0L, 0.0);
        for (var a = 0; a < units.Length; a++)
        {
            for (var b = a + 1; b < units.Length; b++)
            {
                var full = LoadSolver.OnShortestPaths(graph.Without(units[a].Outage.With(units[b].Outage)), traffic, SplitRule.PerHop)
                    .MaxUtilisation.Value;
                pairs++;
                over += full > 1 + 1e-9 ? 1 : 0;
                FailureUnit both = new("both", FailureKind.Cable, units[a].Outage.With(units[b].Outage));
                cutting += FailureSweep.Of(graph, traffic, SplitRule.PerHop, [both])?.Classes[0].HostsLost > 0 ? 1 : 0;
                worst = Math.Max(worst, full);
            }
        }
        Assert.Equal(pairs, found.PairCount);
        Assert.Equal(over / (double)pairs, found.Overloading.Estimate.Value, 1e-12);
        Assert.Equal(cutting / (double)pairs, found.Cutting.Estimate.Value, 1e-12);
        Assert.Equal(worst, found.WorstUtilisation.Value, 1e-9);
    }

    /// <summary>Every physical link, every switch, and every two neighbouring links as a cable.</summary>
    private static ImmutableArray<FailureUnit> Units(FabricGraph graph) =>
        [.. Simple(graph), .. Enumerable.Range(1, graph.Links.Length - 1)
            .Select(l => new FailureUnit($"c{l}", FailureKind.Cable, Outage.OfLink(l).With(Outage.OfLink(l - 1))))];

    /// <summary>Every physical link and every switch.</summary>
    private static ImmutableArray<FailureUnit> Simple(FabricGraph graph)
    {
        var units = ImmutableArray.CreateBuilder<FailureUnit>();
        for (var link = 0; link < graph.Links.Length; link++)
        {
            for (var i = 0; i < graph.Links[link].Count; i++)
                units.Add(new($"l{link}-{i}", FailureKind.Link, Outage.OfLink(link, 1, i)));
        }
        for (var node = 0; node < graph.Nodes.Length; node++)
            if (!graph.Nodes[node].IsTerminal) units.Add(new($"s{node}", FailureKind.Switch, Outage.OfNode(node)));
        return units.ToImmutable();
    }
}
