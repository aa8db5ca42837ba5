using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What one half of the hosts can send to the other at once, in one direction, at the worst division into halves.</summary>
/// <param name="AtLeast">Proven lower bound.</param>
/// <param name="AtMost">Proven upper bound.</param>
/// <param name="Proof">How the bounds were found.</param>
public sealed record Bisection(BitRate AtLeast, BitRate AtMost, BisectionProof Proof)
{
    /// <summary>Bundles up to which every division into halves is tried.</summary>
    public const int MostEnumerated = 12;

    /// <summary>Bundles up to which an exact search is begun.</summary>
    private const int MostSearched = 64;

    /// <summary>Bounds closer than this are one value: the shares behind the lower bound are rounded.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Whether both bounds are the value.</summary>
    public bool IsExact => AtLeast == AtMost;

    /// <summary>Computes the bisection of the terminals, each of which sends and takes at most its rate. For up to
    /// <see cref="MostEnumerated"/> bundles by a largest flow for every division; beyond, between a division that was found and what the
    /// worst case of all traffic lets through at any division, and where these differ by an exact search as far as it comes. What flows is
    /// concave in how many hosts of each bundle stand on a side, so that the least has one bundle divided at most.</summary>
    public static Bisection Of(FabricGraph graph, ImmutableArray<Terminal> terminals)
    {
        var ends = HoseEnds.Of(graph, terminals);
        int[] members = [.. ends.Nodes.Select(n => graph.Nodes[n].Members)];
        if (members.Sum() < 2) return new Bisection(default, default, BisectionProof.Enumerated);
        if (members.Length <= MostEnumerated) return Exactly(Enumerated(graph, terminals, ends, members), BisectionProof.Enumerated);
        var isWhole = members.All(m => m == 1);
        if (new HalfSizes(members).Half < members.Sum() / 2 && Halved(graph, terminals, ends, members) is { } halved)
        {
            (graph, terminals) = (halved.Graph, halved.Terminals);
            ends = HoseEnds.Of(graph, terminals);
            members = [.. ends.Nodes.Select(n => graph.Nodes[n].Members)];
        }
        return Bounded(graph, terminals, ends, members, isWhole);
    }

    private static Bisection Bounded(
        FabricGraph graph, ImmutableArray<Terminal> terminals, HoseEnds ends, int[] members, bool isWhole)
    {
        var cannotSend = graph.Arcs.DirectLinks.Length > 0 || HopCounts.Of(graph) is not { PairsApart: 0 };
        var atLeast = cannotSend ? 0 : BisectionFloor.Of(graph, terminals, ends, members, new HalfSizes(members).Half);
        var divisions = new Divisions(graph, ends, members);
        var atMost = divisions.Least(atLeast * (1 + Rounding));
        if (atMost <= atLeast * (1 + Rounding)) return Exactly(atMost, BisectionProof.BoundsMeet);
        if (members.Length <= MostSearched)
        {
            (atMost, var isProven) =
                BisectionSearch.Of(graph, ends, members, divisions.From(0), atMost, atLeast * (1 + Rounding));
            // The search divides no bundle: where one could be, it proves nothing.
            if (isProven && (isWhole || atMost <= atLeast * (1 + Rounding))) return Exactly(atMost, BisectionProof.Searched);
        }
        return new Bisection(BitRate.FromBitsPerSecond((long)atLeast), BitRate.FromBitsPerSecond(atMost), BisectionProof.Bounds);
    }

    private static Bisection Exactly(long bits, BisectionProof proof) =>
        new(BitRate.FromBitsPerSecond(bits), BitRate.FromBitsPerSecond(bits), proof);

    private static long Enumerated(FabricGraph graph, ImmutableArray<Terminal> terminals, HoseEnds ends, int[] members)
    {
        var least = WithWhole(graph, ends, members, members.Sum() / 2);
        for (var divided = 0; divided < members.Length; divided++)
            if (DividedBundle.IsPossible(graph, terminals, ends.Nodes[divided]))
                least = Math.Min(least, WithOneDivided(graph, terminals, ends.Nodes[divided], members, divided));
        // Where no bundle may be divided, halves are as equal as bundles allow.
        return least < long.MaxValue ? least : WithWhole(graph, ends, members, new HalfSizes(members).Half);
    }

    /// <summary>The least flow from so many hosts in whole bundles to the others; the largest number there is where no bundles make so
    /// many.</summary>
    private static long WithWhole(FabricGraph graph, HoseEnds ends, int[] members, int half)
    {
        var none = CutFlow.Of(graph, ends);
        return Sides(members, members.Length - 1)
            .Where(s => s.Hosts == half || s.Hosts == members.Sum() - half)
            .Select(s => CutFlow.Across(none, s.Side)).DefaultIfEmpty(long.MaxValue).Min();
    }

    /// <summary>The least flow where a bundle stands on both sides: as many of it on the first as the others leave room for.</summary>
    private static long WithOneDivided(FabricGraph graph, ImmutableArray<Terminal> terminals, int node, int[] members, int divided)
    {
        var least = long.MaxValue;
        var flows = new Dictionary<int, CutFlow>();
        int[] others = [.. members.Select((m, i) => i == divided ? 0 : m)];
        foreach (var (side, hosts) in Sides(others, members.Length))
        {
            var stay = (members.Sum() / 2) - hosts;
            if (stay <= 0 || stay >= members[divided] || side.Contains(divided)) continue;
            if (!flows.TryGetValue(stay, out var none))
            {
                var apart = DividedBundle.Of(graph, terminals, node, stay);
                flows[stay] = none = CutFlow.Of(apart.Graph, HoseEnds.Of(apart.Graph, apart.Terminals));
            }
            least = Math.Min(least, CutFlow.Across(none, side.Append(divided)));
        }
        return least;
    }

    /// <summary>Every choice among the first bundles with its hosts. Without the last, a division stands for its mirror image, which
    /// carries the same.</summary>
    private static IEnumerable<(List<int> Side, int Hosts)> Sides(int[] members, int among)
    {
        for (var chosen = 0; chosen < 1 << among; chosen++)
        {
            var side = Enumerable.Range(0, among).Where(i => ((chosen >> i) & 1) != 0).ToList();
            yield return (side, side.Sum(i => members[i]));
        }
    }

    /// <summary>The fabric with one bundle in two, so that whole bundles make halves.</summary>
    private static DividedBundle? Halved(FabricGraph graph, ImmutableArray<Terminal> terminals, HoseEnds ends, int[] members)
    {
        var half = members.Sum() / 2;
        for (var divided = 0; divided < members.Length; divided++)
        {
            if (!DividedBundle.IsPossible(graph, terminals, ends.Nodes[divided])) continue;
            var others = new HalfSizes([.. members.Where((_, i) => i != divided)]);
            for (var stay = 1; stay < members[divided]; stay++)
                if (others.CanMake(0, half - stay)) return DividedBundle.Of(graph, terminals, ends.Nodes[divided], stay);
        }
        return null;
    }
}
