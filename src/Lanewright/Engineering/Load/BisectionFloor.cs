using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>What every division into halves can carry: if no traffic of hosts that keep to some rates fills a link more than u times, the
/// weaker half of any division gets its rates through, over u. Any rates up to those of the hosts prove something, and lower rates behind
/// a narrow switch prove more.</summary>
internal static class BisectionFloor
{
    /// <summary>How often rates are lowered.</summary>
    private const int Rounds = 12;

    /// <summary>Bundles up to which the worst traffic is solved and not only bounded.</summary>
    private const int MostSolved = 128;

    /// <summary>A lower bound in bits per second.</summary>
    public static double Of(FabricGraph graph, ImmutableArray<Terminal> terminals, HoseEnds ends, int[] members, int half)
    {
        var crossings = new HoseCrossings(graph, terminals, SplitRule.PerHop);
        var share = ends.Nodes.ToDictionary(n => n, _ => 1.0);
        var best = 0.0;
        for (var round = 0; round < Rounds; round++)
        {
            var trimmed = ends.Trimmed(n => share[n]);
            var (fullest, senders, receivers) = Fullest(crossings, trimmed);
            best = Math.Max(best, LeastOfHalf(trimmed, members, half) / Math.Max(1, fullest));
            if (fullest <= 1) break;
            var fewer = senders.Count <= receivers.Count ? senders : receivers;
            // What is alike is lowered together, so that what stands for a class goes on standing for it.
            var alike = fewer.Select(crossings.Orbits.OfVertex).ToHashSet();
            foreach (var node in ends.Nodes.Where(n => alike.Contains(crossings.Orbits.OfVertex(n)))) share[node] /= fullest;
        }
        return best;
    }

    private static (double Fullest, List<int> Senders, List<int> Receivers) Fullest(HoseCrossings crossings, HoseEnds ends)
    {
        if (ends.Nodes.Length > MostSolved)
        {
            var (atMost, senders, receivers) = crossings.FullestBound(ends);
            return (atMost, [.. senders], [.. receivers]);
        }
        var worst = crossings.SolveFullest(ends).OfType<LinkWorstCase>().MaxBy(w => w.AtMost);
        return worst is null
            ? (0, [], [])
            : (worst.AtMost.Value, [.. worst.Matrix.Select(f => f.From).Distinct()], [.. worst.Matrix.Select(f => f.To).Distinct()]);
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
}
