using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Closed forms for leaves and spines whose links are not spread equally, intact or after losses.</summary>
public static class UnequalSpread
{
    /// <summary>How many times its even share the busiest link between spines and the receiving leaf carries, when the sending leaf divides
    /// equally over its own links. 1 when both spread alike.</summary>
    /// <param name="sending">Links of the sending leaf to each spine.</param>
    /// <param name="receiving">Links of the receiving leaf to each spine; the same spines.</param>
    /// <returns>Null when no spine joins the two.</returns>
    public static Share? Worst(ImmutableArray<int> sending, ImmutableArray<int> receiving) => throw new NotSupportedException();

    /// <summary>Mean share of the spines that still join a pair of leaves when so many links, drawn at random, are lost.</summary>
    public static Share MeanPairShare(int leaves, int spines, int lost) => throw new NotSupportedException();

    /// <summary>The share of its spines that the worst leaf keeps when the lost links fall as badly as they can.</summary>
    public static Share WorstLeafShare(int spines, int lost) => throw new NotSupportedException();
}
