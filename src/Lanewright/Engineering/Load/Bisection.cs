using System.Collections.Immutable;
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

    /// <summary>Bundles up to which an exact search is begun.</summary>
    private const int MostSearched = 64;

    /// <summary>Bounds closer than this are one value: the shares behind the lower bound are rounded.</summary>
    private const double Rounding = 1e-9;

    /// <summary>Whether both bounds are the value.</summary>
    public bool IsExact => AtLeast == AtMost;

    /// <summary>Computes the bisection of the terminals, each of which sends and takes at most its rate. For up to
    /// <see cref="MostEnumerated"/> bundles by a largest flow for every division; beyond, between a division that was found and what the
    /// worst case of all traffic lets through at any division, and where these differ by an exact search as far as it comes.</summary>
    public static Bisection Of(FabricGraph graph, ImmutableArray<Terminal> terminals)
    {
        var ends = HoseEnds.Of(graph, terminals);
        int[] members = [.. ends.Nodes.Select(n => graph.Nodes[n].Members)];
        if (members.Length < 2) return new Bisection(default, default, BisectionProof.Enumerated);
        var half = new HalfSizes(members).Half;
        if (members.Length <= MostEnumerated) return Exactly(Enumerated(graph, ends, members, half), BisectionProof.Enumerated);
        var cannotSend = graph.Arcs.DirectLinks.Length > 0 || HopCounts.Of(graph) is not { PairsApart: 0 };
        var atLeast = cannotSend ? 0 : BisectionFloor.Of(graph, terminals, ends, members, half);
        var divisions = new Divisions(graph, ends, members);
        var atMost = divisions.Least(atLeast * (1 + Rounding));
        if (atMost <= atLeast * (1 + Rounding)) return Exactly(atMost, BisectionProof.BoundsMeet);
        if (members.Length <= MostSearched)
        {
            (atMost, var isProven) =
                BisectionSearch.Of(graph, ends, members, divisions.From(0), atMost, atLeast * (1 + Rounding));
            if (isProven) return Exactly(atMost, BisectionProof.Searched);
        }
        return new Bisection(BitRate.FromBitsPerSecond((long)atLeast), BitRate.FromBitsPerSecond(atMost), BisectionProof.Bounds);
    }

    private static Bisection Exactly(long bits, BisectionProof proof) =>
        new(BitRate.FromBitsPerSecond(bits), BitRate.FromBitsPerSecond(bits), proof);

    private static long Enumerated(FabricGraph graph, HoseEnds ends, int[] members, int half)
    {
        var none = CutFlow.Of(graph, ends);
        var least = long.MaxValue;
        // The last bundle always stands on the other side, as a division and its mirror image carry the same.
        for (var chosen = 1; chosen < 1 << (members.Length - 1); chosen++)
        {
            var side = Enumerable.Range(0, members.Length).Where(i => ((chosen >> i) & 1) != 0).ToList();
            var hosts = side.Sum(i => members[i]);
            if (hosts == half || hosts == members.Sum() - half) least = Math.Min(least, CutFlow.Across(none, side));
        }
        return least;
    }
}
