using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model;

namespace Lanewright.Engineering.Choice;

/// <summary>Puts ways to make a link in order, best first: what passes before what cannot be proved before what fails; then what the
/// policy prefers, the price, the power and the name.</summary>
internal sealed class Ranking(Policy policy)
{
    /// <summary>The ways in order.</summary>
    /// <param name="solutions">The ways.</param>
    /// <param name="priceOf">What a link costs, in hundredths.</param>
    public ImmutableArray<Solution> Order(IEnumerable<Solution> solutions, Func<Solution, decimal> priceOf) =>
        [.. solutions
            .OrderBy(s => s.Verdict)
            .ThenBy(s => s.Verdict == Verdict.Fail ? Shortfall(s) : 0)
            .ThenBy(s => s.Verdict == Verdict.Fail ? Failures(s) : 0)
            .ThenBy(MediumRank)
            .ThenBy(FormFactorRank)
            .ThenBy(priceOf)
            .ThenBy(s => s.Power)
            .ThenBy(s => s.Length)
            .ThenBy(s => s.Name, StringComparer.Ordinal)];

    /// <summary>How many comparisons fail.</summary>
    public static int Failures(Solution solution) => solution.Checks.Count(c => c.Verdict == Verdict.Fail && !c.IsAdvice);

    /// <summary>By how large a part of their limits the failing comparisons miss them, a word counting as a whole limit. A cable
    /// two thousand times too short is further off than a module that misses five limits by a half.</summary>
    public static double Shortfall(Solution solution) => solution.Checks
        .Where(c => c.Verdict == Verdict.Fail && !c.IsAdvice)
        .Sum(c => c.Margin is { } margin && c.Limit is { } limit && limit != 0 ? Math.Abs(margin / limit) : 1);

    private int MediumRank(Solution solution) => RankIn(policy.PreferredMedia, solution.MediumName);

    private int FormFactorRank(Solution solution) => policy.PreferredFormFactors.IsEmpty || solution.FromModule is null
        ? 0
        : RankIn(policy.PreferredFormFactors, solution.FromModule.FormFactor.Name);

    private static int RankIn(ImmutableArray<string> preferred, string name)
    {
        var rank = preferred.IndexOf(name);
        return rank < 0 ? preferred.Length : rank;
    }
}
