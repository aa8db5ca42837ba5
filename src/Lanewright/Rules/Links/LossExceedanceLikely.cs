using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Links;

/// <summary>Links of a set of which, by the statistics of their connectors, at least one is expected to exceed its loss limit.</summary>
internal sealed class LossExceedanceLikely() : Rule("LW2415", nameof(LossExceedanceLikely), Severity.Warning)
{
    /// <summary>Half a link or more is one link to be expected.</summary>
    private const double ExpectedLinks = 0.5;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        // Links alike may be chosen in parts, by cage or by stock: the sum over the statement decides.
        // What fails anyway has no chance to be reckoned.
        var chances =
            from choice in judgement.Design.Choices
            from share in choice.Shares
            where share.Solution.Verdict != Verdict.Fail
            select (choice, Count: share.Links,
                Chance: LossExceedance.Of(judgement.Plan.Policy, judgement.Plan.Standards, share.Solution) ?? 0);
        foreach (var set in chances.Where(c => c.Chance > 0).GroupBy(c => c.choice.Class.Statement))
        {
            var expected = set.Sum(c => c.Chance * c.Count);
            if (expected < ExpectedLinks) continue;
            var worst = set.MaxBy(c => c.Chance);
            var links = set.Sum(c => (long)c.Count);
            judgement.Add(this, worst.choice,
                $"each link exceeds its loss limit with a chance of up to {Numerals.Shown(worst.Chance * 100, "%")}, so about "
                + $"{Numerals.Plain(Math.Round(expected, 1))} of {Numerals.Whole(links)} will; use a better grade or fewer connections",
                links: links);
        }
    }
}
