using System.Collections.Immutable;
using System.Numerics;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What one half of the hosts can send to the other at once, in one direction, at the worst division into halves. Bundles are
/// not divided; halves are as equal in hosts as bundles allow.</summary>
/// <param name="AtLeast">Proven lower bound.</param>
/// <param name="AtMost">Proven upper bound.</param>
/// <param name="Proof">How the bounds were found.</param>
public sealed record Bisection(BitRate AtLeast, BitRate AtMost, BisectionProof Proof)
{
    /// <summary>Bundles up to which every division into halves is tried.</summary>
    public const int MostEnumerated = 12;

    /// <summary>Bounds closer than this are one value: the shares behind the lower bound are rounded.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Whether both bounds are the value.</summary>
    public bool IsExact => AtLeast == AtMost;

    /// <summary>Computes the bisection of the terminals, each of which sends and takes at most its rate. For up to
    /// <see cref="MostEnumerated"/> bundles by a largest flow for every division; beyond, between a division that was found and what the
    /// worst case of all traffic lets through at any division.</summary>
    public static Bisection Of(FabricGraph graph, ImmutableArray<Terminal> terminals)
    {
        var ends = HoseEnds.Of(graph, terminals);
        int[] members = [.. ends.Nodes.Select(n => graph.Nodes[n].Members)];
        if (members.Length < 2) return new Bisection(default, default, BisectionProof.Enumerated);
        if (members.Length <= MostEnumerated) return Enumerated(graph, ends, members);
        var half = LargestHalf(members);
        var worst = HoseWorstCase.Of(graph, terminals, SplitRule.PerHop).Worst;
        var cannotSend = graph.Arcs.DirectLinks.Length > 0 || HasPairApart(graph);
        var atLeast = cannotSend || worst is null ? 0 : LeastOfHalf(ends, members, half) / Math.Max(1, worst.AtMost.Value);
        var atMost = long.MaxValue;
        foreach (var order in Orders(graph, ends.Nodes))
        {
            atMost = Math.Min(atMost, Across(graph, ends, Division(order.Select(i => members[i]).ToArray(), half).Select(i => order[i])));
            if (atMost <= atLeast * (1 + Rounding))
                return new Bisection(BitRate.FromBitsPerSecond(atMost), BitRate.FromBitsPerSecond(atMost), BisectionProof.BoundsMeet);
        }
        return new Bisection(BitRate.FromBitsPerSecond((long)atLeast), BitRate.FromBitsPerSecond(atMost), BisectionProof.Bounds);
    }

    private static Bisection Enumerated(FabricGraph graph, HoseEnds ends, int[] members)
    {
        var half = LargestHalf(members);
        var least = long.MaxValue;
        // The last bundle always stands on the other side, as a division and its mirror image carry the same.
        for (var chosen = 1; chosen < 1 << (members.Length - 1); chosen++)
        {
            var side = Enumerable.Range(0, members.Length).Where(i => ((chosen >> i) & 1) != 0).ToList();
            var hosts = side.Sum(i => members[i]);
            if (hosts == half || hosts == members.Sum() - half) least = Math.Min(least, Across(graph, ends, side));
        }
        return new Bisection(BitRate.FromBitsPerSecond(least), BitRate.FromBitsPerSecond(least), BisectionProof.Enumerated);
    }

    private static long Across(FabricGraph graph, HoseEnds ends, IEnumerable<int> side)
    {
        var chosen = side.Select(i => ends.Nodes[i]).ToHashSet();
        var sending = ends.Nodes.Where(chosen.Contains).ToDictionary(n => n, ends.RateOf);
        var taking = ends.Nodes.Where(n => !chosen.Contains(n)).ToDictionary(n => n, ends.RateOf);
        // With unlike rates the two directions differ.
        return Math.Min(MaxFlow.Of(graph, sending, taking), MaxFlow.Of(graph, taking, sending));
    }

    /// <summary>The most hosts, up to half of all, that whole bundles can make.</summary>
    private static int LargestHalf(int[] members)
    {
        var reachable = members.Aggregate(BigInteger.One, (sums, m) => sums | (sums << m));
        var half = members.Sum() / 2;
        while (((reachable >> half) & BigInteger.One).IsZero) half--;
        return half;
    }

    /// <summary>Bundles that make so many hosts, as many of the first as will do.</summary>
    private static List<int> Division(int[] members, int half)
    {
        // From the last to the first: which sums the bundles from there on can make.
        var sums = new BigInteger[members.Length + 1];
        sums[members.Length] = BigInteger.One;
        for (var i = members.Length - 1; i >= 0; i--) sums[i] = sums[i + 1] | (sums[i + 1] << members[i]);
        var chosen = new List<int>();
        var left = half;
        for (var i = 0; i < members.Length; i++)
        {
            if (members[i] > left || ((sums[i + 1] >> (left - members[i])) & BigInteger.One).IsZero) continue;
            left -= members[i];
            chosen.Add(i);
        }
        return chosen;
    }

    /// <summary>What the weaker side of any division can send, in bits per second: so many hosts at the lowest rates there are.</summary>
    private static double LeastOfHalf(HoseEnds ends, int[] members, int half)
    {
        var rate = 0.0;
        var left = half;
        foreach (var i in Enumerable.Range(0, members.Length).OrderBy(i => ends.RateOf(ends.Nodes[i]) / (double)members[i]))
        {
            var taken = Math.Min(left, members[i]);
            rate += ends.RateOf(ends.Nodes[i]) / (double)members[i] * taken;
            left -= taken;
        }
        return rate;
    }

    private static bool HasPairApart(FabricGraph graph) => HopCounts.Of(graph) is not { PairsApart: 0 };

    /// <summary>Orders whose first half is likely to be poorly joined to the second: as numbered, and by distance from the first
    /// bundle.</summary>
    private static IEnumerable<int[]> Orders(FabricGraph graph, int[] nodes)
    {
        int[] asNumbered = [.. Enumerable.Range(0, nodes.Length)];
        yield return asNumbered;
        var distances = new FlowDistances(graph).To(nodes[0], null);
        yield return [.. asNumbered.OrderBy(i => distances[nodes[i]]).ThenBy(i => i)];
        yield return [.. asNumbered.OrderBy(i => i % 2).ThenBy(i => i)];
    }
}
