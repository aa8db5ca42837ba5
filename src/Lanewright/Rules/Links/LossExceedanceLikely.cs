using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Links;

/// <summary>Links alike of which, by the statistics of their connectors, at least one is expected to exceed its loss limit.</summary>
internal sealed class LossExceedanceLikely() : Rule("LW2415", nameof(LossExceedanceLikely), Severity.Warning)
{
    /// <summary>Half a link or more is one link to be expected.</summary>
    private const double ExpectedLinks = 0.5;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var (choice, solution) in judgement.Judged())
        {
            if (LossExceedance.Of(judgement.Plan.Policy, judgement.Plan.Standards, solution) is not { } chance) continue;
            var expected = chance * choice.Class.Count;
            if (expected < ExpectedLinks) continue;
            judgement.Add(this, choice,
                $"each link exceeds its loss limit with a chance of {Numerals.Plain(chance * 100)} %, so about {Numerals.Plain(Math.Round(expected, 1))} of {choice.Class.Count} will; use a better grade or fewer connections");
        }
    }
}
