using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What two failures at once do: all pairs by class where that is few enough, else a seeded sample with its interval.</summary>
/// <param name="PairCount">Pairs there are.</param>
/// <param name="Evaluated">Pairs or classes of pairs that were computed.</param>
/// <param name="IsExact">Whether every pair was judged; otherwise the shares are estimates from a sample.</param>
/// <param name="WorstUtilisation">The fullest link of any pair seen.</param>
/// <param name="WorstPair">The units of that pair, as indexes; empty without a pair.</param>
/// <param name="Overloading">The share of pairs with a link above full.</param>
/// <param name="Cutting">The share of pairs that cut off hosts.</param>
public sealed record FailurePairs(
    long PairCount,
    long Evaluated,
    bool IsExact,
    Share WorstUtilisation,
    ImmutableArray<int> WorstPair,
    ShareInterval Overloading,
    ShareInterval Cutting)
{
    /// <summary>Judges pairs of units.</summary>
    /// <param name="graph">The fabric, whole.</param>
    /// <param name="traffic">What it carries.</param>
    /// <param name="rule">How traffic divides; not the ideal split.</param>
    /// <param name="units">What may fail.</param>
    /// <param name="mostEvaluations">How many pairs may be computed; more classes of pairs than this are sampled.</param>
    /// <param name="seed">Fixes the sample.</param>
    public static FailurePairs Of(
        FabricGraph graph, TrafficMatrix traffic, SplitRule rule, ImmutableArray<FailureUnit> units, int mostEvaluations, ulong seed) =>
        throw new NotSupportedException();
}
