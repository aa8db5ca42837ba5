using System.Collections.Immutable;
using CsCheck;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Tests.Load.Support;

/// <summary>Small fabrics of any shape: parallel links, two rates, bundles of hosts on one or two switches, parts without a
/// path.</summary>
internal static class RandomFabrics
{
    public static readonly Gen<KnownFabric> Any = Gen.Select(
        Gen.Int[2, 6],
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], Gen.Int[1, 2], Gen.Int[1, 2], (a, b, rate, count) => (a, b, rate, count)).Array[2, 10],
        Gen.Select(
            Gen.Int[0, 5], Gen.Int[0, 5], Gen.Int[1, 3], Gen.Int[1, 2], Gen.Int[1, 2],
            (a, b, members, each, rate) => (a, b, members, each, rate)).Array[2, 5],
        Make);

    /// <summary>Demand of the fabric's hosts: all to all, a shift, or flows one by one.</summary>
    public static TrafficMatrix Traffic(KnownFabric fabric, int choice) => choice switch
    {
        0 => fabric.AllToAll,
        1 => TrafficMatrix.Shift(fabric.Terminals, 1),
        2 => TrafficMatrix.Incast([.. fabric.Terminals.Skip(1)], fabric.Terminals[0].Node),
        3 => TrafficMatrix.Spread([.. fabric.Terminals.Take(2)], [.. fabric.Terminals.Skip(1)]) + Traffic(fabric, 1),
        _ => TrafficMatrix.Of(fabric.Terminals.Select((t, i) =>
            new Flow(t.Node, fabric.Terminals[((i * i) + 1) % fabric.Terminals.Length].Node, BitRate.FromGigabits(i + 1)))),
    };

    /// <summary>The same fabric with every bundle taken apart: each host a node of its own.</summary>
    public static (KnownFabric Fabric, int[][] HostsOf) OneByOne(KnownFabric fabric)
    {
        var nodes = fabric.Graph.Nodes.Where(n => !n.IsTerminal).ToList();
        var switches = nodes.Count;
        var hostsOf = new int[fabric.Graph.Nodes.Length][];
        var terminals = new List<Terminal>();
        foreach (var terminal in fabric.Terminals)
        {
            hostsOf[terminal.Node] = [.. Enumerable.Range(nodes.Count, terminal.Members)];
            nodes.AddRange(Enumerable.Repeat(FabricNode.Hosts(0, 1), terminal.Members));
            terminals.AddRange(hostsOf[terminal.Node].Select(h => new Terminal(h, 1, terminal.Rate)));
        }
        var links = fabric.Graph.Links.SelectMany(l => l.A < switches
            ? [l]
            : hostsOf[l.A].Select(h => l with { A = h, Count = l.Count / fabric.Graph.Nodes[l.A].Members }));
        return (new KnownFabric(new FabricGraph([.. nodes], [.. links]), [.. terminals]), hostsOf);
    }

    private static KnownFabric Make(
        int switches, (int A, int B, int Rate, int Count)[] inside, (int A, int B, int Members, int Each, int Rate)[] hosts)
    {
        var nodes = Enumerable.Range(0, switches).Select(i => FabricNode.Switch(i % 2)).ToList();
        var links = new List<FabricLink>();
        foreach (var (a, b, rate, count) in inside)
            if (a % switches != b % switches) links.Add(new FabricLink(a % switches, b % switches, BitRate.FromGigabits(rate), count));
        var terminals = ImmutableArray.CreateBuilder<Terminal>();
        foreach (var (a, b, members, each, rate) in hosts)
        {
            var node = nodes.Count;
            nodes.Add(FabricNode.Hosts(0, members));
            terminals.Add(new Terminal(node, members, BitRate.FromGigabits(rate)));
            foreach (var at in new[] { a % switches, b % switches }.Distinct())
                links.Add(new FabricLink(node, at, BitRate.FromGigabits(rate), members * each));
        }
        return new KnownFabric(new FabricGraph([.. nodes], [.. links]), terminals.ToImmutable());
    }
}
