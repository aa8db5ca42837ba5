using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Closed forms for leaves and spines whose links are not spread equally, intact or after losses.</summary>
public static class UnequalSpread
{
    /// <summary>How many times its even share the busiest link between spines and the receiving leaf carries, when the sending leaf
    /// divides equally over those of its own links behind which the receiving leaf lies. 1 when both spread alike.</summary>
    /// <param name="sending">Links of the sending leaf to each spine.</param>
    /// <param name="receiving">Links of the receiving leaf to each spine; the same spines in the same order.</param>
    /// <returns>Null when no spine joins the two.</returns>
    public static Share? Worst(ImmutableArray<int> sending, ImmutableArray<int> receiving)
    {
        if (sending.Length != receiving.Length) throw new ArgumentException("the same spines are meant", nameof(receiving));
        var joined = Enumerable.Range(0, sending.Length).Where(s => sending[s] > 0 && receiving[s] > 0).ToList();
        if (joined.Count == 0) return null;
        double used = joined.Sum(s => sending[s]);
        return Share.From(joined.Max(s => sending[s] / used * receiving.Sum() / receiving[s]));
    }

    /// <summary>Mean share of the spines that still join a pair of leaves when so many links, drawn at random, are lost: of all sets of
    /// lost links, those that spare both links of a given way. One link joins each leaf and spine.</summary>
    public static Share MeanPairShare(int leaves, int spines, int lost)
    {
        var links = leaves * spines;
        if (lost > links - 2) return Share.From(0);
        // C(n-2,k)/C(n,k), with everything cancelled that can be.
        return Share.From((links - lost) / (double)links * (links - lost - 1) / (links - 1));
    }

    /// <summary>The share of its spines that the worst leaf keeps when the lost links fall as badly as they can.</summary>
    public static Share WorstLeafShare(int spines, int lost) => Share.From(Math.Max(0, spines - lost) / (double)spines);
}
