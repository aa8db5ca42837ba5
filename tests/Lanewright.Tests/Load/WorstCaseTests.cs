using System.Collections.Immutable;
using CsCheck;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>The worst of all traffic under the ideal split, and after failures: rings worked out by hand, and bounds that must hold on any
/// fabric.</summary>
public sealed class WorstCaseTests
{
    private static readonly BitRate Each = BitRate.FromGigabits(100);

    /// <summary>Four switches in a ring, a host each. Opposite hosts send each other all they can: 4 flows of two hops fill 8 directions of
    /// links, so that each carries 100 Gb/s.</summary>
    [Fact]
    public void Ring_UnderTheIdealSplit_IsJustFull()
    {
        var ring = Ring(4);
        var worst = IdealWorstCase.Of(ring.Graph.WithWiderHostLinks(16), ring.Terminals, CancellationToken.None)?.Worst;
        Assert.NotNull(worst);
        Assert.Equal(1, worst.Utilisation.Value, 1e-6);
        Assert.Equal(1, worst.AtMost.Value, 1e-6);
    }

    /// <summary>A ring with one link out is a line: both hosts on one side of its middle link send to both on the other.</summary>
    [Fact]
    public void Ring_AfterALinkIsLost_IsTwiceFullInItsMiddle()
    {
        var ring = Ring(4);
        ImmutableArray<FailureUnit> units =
            [.. Enumerable.Range(0, 4).Select(l => new FailureUnit($"{l}", FailureKind.Link, Outage.OfLink(l)))];
        var sweep = HoseFailures.Of(
            ring.Graph.WithWiderHostLinks(16), ring.Terminals, SplitRule.PerHop, units, CancellationToken.None);
        Assert.NotNull(sweep);
        var only = Assert.Single(sweep.Classes);
        Assert.Equal(4, only.Size);
        Assert.Equal(2, only.MaxUtilisation.Value, 1e-9);
        Assert.Equal(0, only.HostsLost);
    }

    /// <summary>No traffic fills a link more under the ideal split than under a fixed one, and the matrix told keeps to the hosts'
    /// rates.</summary>
    [Fact]
    public void IdealSplit_IsNeverWorseThanAFixedOne() => RandomFabrics.Any.Sample(fabric =>
    {
        if (IdealWorstCase.Of(fabric.Graph, fabric.Terminals, CancellationToken.None)?.Worst is not { } worst) return;
        foreach (var rule in new[] { SplitRule.PerHop, SplitRule.PathWeighted })
        {
            var known = HoseWorstCase.OfFullest(fabric.Graph, fabric.Terminals, rule).Worst?.Utilisation.Value ?? 0;
            Assert.True(worst.Utilisation.Value <= known * (1 + 1e-6));
            Assert.True(worst.AtMost.Value <= known * (1 + 1e-6));
        }
        foreach (var end in worst.Matrix.GroupBy(f => f.From).Concat(worst.Matrix.GroupBy(f => f.To)))
        {
            var most = fabric.Terminals.Single(t => t.Node == end.Key);
            Assert.True(end.Sum(f => f.Rate.BitsPerSecond) <= (most.Rate * most.Members).BitsPerSecond);
        }
    }, iter: 60);

    /// <summary>Each failure is asked again by itself.</summary>
    [Fact]
    public void Sweep_IsWhatEveryFailureDoesByItself() => RandomFabrics.Any.Sample(fabric =>
    {
        ImmutableArray<FailureUnit> units =
        [
            .. Enumerable.Range(0, fabric.Graph.Links.Length).Select(l => new FailureUnit($"{l}", FailureKind.Link, Outage.OfLink(l))),
        ];
        var sweep = HoseFailures.Of(fabric.Graph, fabric.Terminals, SplitRule.PerHop, units, CancellationToken.None);
        Assert.NotNull(sweep);
        Assert.Equal(Enumerable.Range(0, units.Length), sweep.Classes.SelectMany(c => c.Units).Order());
        foreach (var failure in sweep.Classes)
            foreach (var unit in failure.Units)
            {
                var hurt = fabric.Graph.Without(units[unit].Outage);
                var worst = HoseWorstCase.OfFullest(hurt, fabric.Terminals, SplitRule.PerHop).Worst?.Utilisation.Value ?? 0;
                Assert.Equal(worst, failure.MaxUtilisation.Value, 1e-9);
            }
    }, iter: 40);

    /// <summary>Pairs of everything in 32 leaves under 8 spines are of few kinds, and so all are told.</summary>
    [Fact]
    public void Pairs_OfAnEvenFabric_AreAllTold()
    {
        var fabric = KnownFabric.LeafSpine(32, 8, 16);
        ImmutableArray<FailureUnit> units =
        [
            .. Enumerable.Range(0, fabric.Graph.Nodes.Length).Where(n => !fabric.Graph.Nodes[n].IsTerminal)
                .Select(n => new FailureUnit($"s{n}", FailureKind.Switch, Outage.OfNode(n))),
            .. Enumerable.Range(0, fabric.Graph.Links.Length).SelectMany(l => Enumerable.Range(0, fabric.Graph.Links[l].Count)
                .SelectMany(c => new[] { FailureKind.Link, FailureKind.Module, FailureKind.Module }
                    .Select(k => new FailureUnit($"l{l}-{c}", k, Outage.OfLink(l, 1, c))))),
        ];
        var found = FailurePairs.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units, 4000, 1);
        Assert.True(found.IsExact, $"{units.Length} units");
        Assert.InRange(found.Evaluated, 2, 60);
        Assert.Equal((long)units.Length * (units.Length - 1) / 2, found.PairCount);
    }

    /// <summary>Two hosts on each of three switches, all links 400 Gb/s: two flows from the first switch to the second share one link when
    /// each switch takes shortest paths, and take both ways under the best split. So the demand is twice what the one carries and just
    /// what the other does.</summary>
    [Fact]
    public void Throughput_IsThatOfTheSplit()
    {
        var rate = BitRate.FromGigabits(400);
        var graph = new FabricGraph(
            [FabricNode.Switch(0), FabricNode.Switch(0), FabricNode.Switch(0), FabricNode.Hosts(0, 2), FabricNode.Hosts(0, 2)],
            [
                new FabricLink(0, 1, rate, 1), new FabricLink(0, 2, rate, 1), new FabricLink(2, 1, rate, 1), new FabricLink(3, 0, rate, 2),
                new FabricLink(4, 1, rate, 2),
            ]);
        var traffic = TrafficMatrix.Of([new Flow(3, 4, BitRate.FromGigabits(800))]);
        var own = Throughput.OfLoads(LoadSolver.OnShortestPaths(graph, traffic, SplitRule.PerHop));
        Assert.Equal(0.5, own.AtLeast.Value, 1e-9);
        Assert.True(own.IsExact);
        Assert.Equal(1, Throughput.Of(graph, traffic)?.AtLeast.Value ?? 0, 1e-6);
    }

    private static KnownFabric Ring(int switches)
    {
        var nodes = Enumerable.Range(0, switches).Select(_ => FabricNode.Switch(0))
            .Concat(Enumerable.Range(0, switches).Select(_ => FabricNode.Hosts(0, 1)));
        var links = Enumerable.Range(0, switches).Select(i => new FabricLink(i, (i + 1) % switches, Each, 1))
            .Concat(Enumerable.Range(0, switches).Select(i => new FabricLink(switches + i, i, Each, 1)));
        return new KnownFabric(
            new FabricGraph([.. nodes], [.. links]), [.. Enumerable.Range(0, switches).Select(i => new Terminal(switches + i, 1, Each))]);
    }
}
