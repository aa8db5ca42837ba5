using System.Collections.Immutable;
using Lanewright.Quantities;
using MathNet.Numerics.Distributions;

namespace Lanewright.Engineering.Load;

/// <summary>What two failures at once do: all pairs by class where that is few enough, else a seeded sample with its interval.</summary>
/// <param name="PairCount">Pairs there are.</param>
/// <param name="Evaluated">Pairs or classes of pairs that were computed.</param>
/// <param name="IsExact">Whether every pair was judged; otherwise the shares are estimates from a sample.</param>
/// <param name="WorstUtilisation">The fullest link of any pair seen.</param>
/// <param name="WorstPair">The units of that pair, as indexes; empty without a pair.</param>
/// <param name="Overloading">The share of pairs with a link above full.</param>
/// <param name="Cutting">The share of pairs that cut hosts off or take them down.</param>
public sealed record FailurePairs(
    long PairCount,
    long Evaluated,
    bool IsExact,
    Share WorstUtilisation,
    ImmutableArray<int> WorstPair,
    ShareInterval Overloading,
    ShareInterval Cutting)
{
    /// <summary>Above full, but for the rounding of sums.</summary>
    private const double Full = 1 + 1e-9;

    /// <summary>What lies outside a 95 % interval on each side.</summary>
    private const double Outside = 0.025;

    /// <summary>Judges pairs of units.</summary>
    /// <param name="graph">The fabric, whole.</param>
    /// <param name="traffic">What it carries.</param>
    /// <param name="rule">How traffic divides; not the ideal split.</param>
    /// <param name="units">What may fail.</param>
    /// <param name="mostEvaluations">How many pairs may be computed, 1 or more; more classes of pairs than this are sampled.</param>
    /// <param name="seed">Fixes the sample.</param>
    /// <exception cref="ArgumentException">The rule is the ideal split.</exception>
    public static FailurePairs Of(
        FabricGraph graph, TrafficMatrix traffic, SplitRule rule, ImmutableArray<FailureUnit> units, int mostEvaluations, ulong seed)
    {
        if (rule == SplitRule.Ideal) throw new ArgumentException("pairs are judged on shortest paths", nameof(rule));
        ArgumentOutOfRangeException.ThrowIfLessThan(mostEvaluations, 1);
        var all = (long)units.Length * (units.Length - 1) / 2;
        if (all == 0) return new FailurePairs(0, 0, true, default, [], default, default);
        var classes = PairClasses.Of(graph, traffic, units);
        var isExact = classes is not null && classes.Count <= mostEvaluations;
        var pairs = isExact && classes is not null ? classes : Sample(units.Length, mostEvaluations, seed);
        var trial = new OutageTrial(graph, traffic, rule);
        var effects = new OutageEffect?[pairs.Count];
        Parallel.For(0, pairs.Count, i => effects[i] = trial.Of(units[pairs[i].One].Outage.With(units[pairs[i].Two].Outage)));
        var (overloading, cutting, worst) = (0L, 0L, -1);
        for (var i = 0; i < pairs.Count; i++)
        {
            if (effects[i] is not { } effect) continue;
            if (effect.MaxUtilisation.Value > Full) overloading += pairs[i].Pairs;
            if (effect.MembersCut + effect.MembersDown > 0) cutting += pairs[i].Pairs;
            if (worst < 0 || effect.MaxUtilisation > (effects[worst]?.MaxUtilisation ?? default)) worst = i;
        }
        var judged = pairs.Sum(p => p.Pairs);
        return new FailurePairs(
            all, pairs.Count, isExact, effects[worst]?.MaxUtilisation ?? default, [pairs[worst].One, pairs[worst].Two],
            IntervalOf(overloading, judged, isExact), IntervalOf(cutting, judged, isExact));
    }

    /// <summary>Pairs drawn with replacement; a pair that is drawn again counts again and is computed once.</summary>
    private static List<(int One, int Two, long Pairs)> Sample(int units, int draws, ulong seed)
    {
        var random = new SeededDraws(seed);
        var drawn = new SortedDictionary<(int, int), long>();
        for (var i = 0; i < draws; i++)
        {
            var one = (int)random.Below(units);
            var two = (int)random.Below(units - 1);
            if (two >= one) two++;
            var pair = (Math.Min(one, two), Math.Max(one, two));
            drawn[pair] = drawn.GetValueOrDefault(pair) + 1;
        }
        return [.. drawn.Select(d => (d.Key.Item1, d.Key.Item2, d.Value))];
    }

    /// <summary>Clopper-Pearson bounds, which hold whatever the true share is.</summary>
    private static ShareInterval IntervalOf(long hits, long trials, bool isExact)
    {
        var share = Share.From(hits / (double)trials);
        if (isExact) return new ShareInterval(share, share, share);
        var lower = hits == 0 ? 0 : Beta.InvCDF(hits, trials - hits + 1, Outside);
        var upper = hits == trials ? 1 : Beta.InvCDF(hits + 1, trials - hits, 1 - Outside);
        return new ShareInterval(Share.From(lower), share, Share.From(upper));
    }
}
