using System.Collections.Immutable;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Bisection of fabrics with more bundles than are enumerated, against published values, all divisions, and bounds.</summary>
public sealed class BisectionTests
{
    /// <summary>The bisection of a ring of n switches is two links, of an a-by-b torus with even a not below b twice b links, of a
    /// hypercube half of its switches: standard results on interconnection networks (Dally and Towles, Principles and Practices of
    /// Interconnection Networks, 2004, chapter 5; memory).</summary>
    [Theory]
    [InlineData("ring 16", 2)]
    [InlineData("ring 30", 2)]
    [InlineData("torus 4x4", 8)]
    [InlineData("torus 6x4", 8)]
    [InlineData("cube 4", 8)]
    public void KnownGraphs_HaveTheirPublishedBisection(string graph, int links)
    {
        var fabric = Named(graph).WithWideAccess(1000);
        var found = Bisection.Of(fabric.Graph, fabric.Terminals);
        Assert.True(found.IsExact, $"{graph}: {found.AtLeast} to {found.AtMost}");
        Assert.Equal(links, found.AtMost.Gigabits, 1e-9);
    }

    /// <summary>Fourteen bundles, every division by a largest flow of its own, as the enumeration of smaller ones does.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Search_FindsTheLeastOfAllDivisions(ulong seed)
    {
        var fabric = KnownFabric.RandomRegular(14, 3, seed).WithWideAccess(2);
        var least = double.MaxValue;
        for (var half = 0; half < 1 << 13; half++)
        {
            if (int.PopCount(half) != 7) continue;
            var side = fabric.Terminals.Where((_, i) => ((half >> i) & 1) != 0).Select(t => t.Node).ToHashSet();
            least = Math.Min(least, LeastCut(fabric, side));
        }
        var found = Bisection.Of(fabric.Graph, fabric.Terminals);
        Assert.True(found.IsExact, found.Proof.ToString());
        Assert.Equal(least, found.AtMost.Gigabits, 1e-9);
    }

    // Half of the hosts of one switch send all they can to the other half (definition).
    [Theory]
    [InlineData(2, 1)]
    [InlineData(20, 10)]
    [InlineData(7, 3)]
    public void OneSwitch_CarriesHalfOfItsHosts(int hosts, int carried)
    {
        var fabric = Bundled([hosts], [], rate: 1);
        var found = Bisection.Of(fabric.Graph, fabric.Terminals);
        Assert.True(found.IsExact);
        Assert.Equal(carried, found.AtMost.Gigabits, 1e-9);
    }

    /// <summary>Hosts alike stand in a bundle; each in a node of its own they make the same fabric, of which every division is
    /// tried.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Bundles_ChangeNothing(int seed)
    {
        var draws = new Random(seed);
        int[] hosts = [.. Enumerable.Range(0, 4).Select(_ => draws.Next(1, 4))];
        (int, int, int)[] links =
            [(0, 1, draws.Next(1, 4)), (1, 2, draws.Next(1, 4)), (2, 3, draws.Next(1, 4)), (3, 0, draws.Next(1, 4)), (0, 2, 1)];
        var bundled = Bundled(hosts, links, rate: 1);
        var apart = Bundled(hosts, links, rate: 1, isApart: true);
        var (one, other) = (Bisection.Of(bundled.Graph, bundled.Terminals), Bisection.Of(apart.Graph, apart.Terminals));
        Assert.True(one.IsExact && other.IsExact);
        Assert.Equal(other.AtMost.Gigabits, one.AtMost.Gigabits, 1e-9);
    }

    /// <summary>Switches with hosts, and links between them.</summary>
    private static (FabricGraph Graph, ImmutableArray<Terminal> Terminals) Bundled(
        int[] hosts, (int A, int B, int Count)[] links, int rate, bool isApart = false)
    {
        var one = BitRate.FromGigabits(rate);
        List<FabricNode> nodes = [.. hosts.Select(_ => FabricNode.Switch(0))];
        List<FabricLink> cables = [.. links.Select(l => new FabricLink(l.A, l.B, one, l.Count))];
        var terminals = new List<Terminal>();
        for (var at = 0; at < hosts.Length; at++)
        {
            for (var part = 0; part < (isApart ? hosts[at] : 1); part++)
            {
                var members = isApart ? 1 : hosts[at];
                cables.Add(new FabricLink(at, nodes.Count, one, members));
                terminals.Add(new Terminal(nodes.Count, members, one));
                nodes.Add(FabricNode.Hosts(1, members));
            }
        }
        return (new FabricGraph([.. nodes], [.. cables]), [.. terminals]);
    }

    [Fact]
    public void LargeIrregularFabrics_HaveBoundsThatHold()
    {
        var fabric = KnownFabric.RandomRegular(90, 4, 5);
        var found = Bisection.Of(fabric.Graph, fabric.Terminals);
        Assert.True(found.AtLeast <= found.AtMost);
        Assert.True(found.AtLeast.Gigabits > 0);
        // Any division will do as an upper bound: the first half of the switches, by the links it cuts.
        var first = fabric.Terminals.Take(45).Select(t => t.Node).ToHashSet();
        Assert.True(found.AtMost.Gigabits <= LeastCut(fabric, first) + 1e-9);
    }

    /// <summary>Twenty leaves of which each takes four times what it passes on: half of the uplinks, though hosts could send
    /// more.</summary>
    [Fact]
    public void OversubscribedLeaves_AreBoundByTheirUplinks()
    {
        var fabric = KnownFabric.LeafSpine(20, 4, 16);
        var found = Bisection.Of(fabric.Graph, fabric.Terminals);
        Assert.True(found.IsExact, $"{found.AtLeast} to {found.AtMost}");
        Assert.Equal(10 * 4, found.AtMost.Gigabits, 1e-9);
    }

    private static KnownFabric Named(string graph)
    {
        var (kind, size) = (graph.Split(' ')[0], graph.Split(' ')[1]);
        if (kind == "torus")
        {
            var (a, b) = (int.Parse(size.Split('x')[0], null), int.Parse(size.Split('x')[1], null));
            return Of(a * b, Enumerable.Range(0, a * b).SelectMany(s => new[]
            {
                (s, (((s / b) + 1) % a * b) + (s % b)), (s, (s / b * b) + (((s % b) + 1) % b)),
            }));
        }
        var n = int.Parse(size, null);
        if (kind == "ring") return Of(n, Enumerable.Range(0, n).Select(s => (s, (s + 1) % n)));
        return Of(1 << n, Enumerable.Range(0, 1 << n).SelectMany(s => Enumerable.Range(0, n).Where(d => ((s >> d) & 1) == 0)
            .Select(d => (s, s | (1 << d)))));
    }

    private static KnownFabric Of(int switches, IEnumerable<(int, int)> links) => KnownFabric.Of(
        Enumerable.Repeat(1, switches), links.Select(l => (l.Item1, l.Item2, 1)), Enumerable.Range(0, switches).Select(s => (s, 1, 1)));

    /// <summary>The least cut between two sets of bundles by the simplest augmenting paths there are, written apart from the
    /// engine.</summary>
    private static double LeastCut(KnownFabric fabric, HashSet<int> side)
    {
        var n = fabric.Graph.Nodes.Length;
        var room = new double[n + 2, n + 2];
        foreach (var link in fabric.Graph.Links)
        {
            room[link.A, link.B] += link.Gigabits;
            room[link.B, link.A] += link.Gigabits;
        }
        foreach (var terminal in fabric.Terminals)
        {
            if (side.Contains(terminal.Node)) room[n, terminal.Node] = terminal.Gigabits;
            else room[terminal.Node, n + 1] = terminal.Gigabits;
        }
        for (var value = 0.0; ;)
        {
            var from = Enumerable.Repeat(-1, n + 2).ToArray();
            from[n] = n;
            var queue = new Queue<int>([n]);
            while (queue.TryDequeue(out var node))
            {
                for (var far = 0; far < n + 2; far++)
                {
                    if (from[far] >= 0 || room[node, far] <= 1e-12) continue;
                    from[far] = node;
                    queue.Enqueue(far);
                }
            }
            if (from[n + 1] < 0) return value;
            var least = double.MaxValue;
            for (var node = n + 1; node != n; node = from[node]) least = Math.Min(least, room[from[node], node]);
            for (var node = n + 1; node != n; node = from[node])
            {
                room[from[node], node] -= least;
                room[node, from[node]] += least;
            }
            value += least;
        }
    }
}
