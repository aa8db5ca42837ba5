using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Links;

/// <summary>A fibre link inside its limit, with less in hand than the policy wants.</summary>
internal sealed class LossMarginThin() : Rule("LW2414", nameof(LossMarginThin), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var wanted = judgement.Plan.Policy.LeastMargin.Value;
        foreach (var (choice, solution) in judgement.Judged)
        {
            var loss = solution.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss);
            if (loss is not { Verdict: Verdict.Pass, Margin: { } margin } || margin >= Math.Max(wanted, 0)) continue;
            judgement.Add(this, choice,
                $"{Numerals.Shown(margin, "dB")} of loss margin are left and the policy wants {judgement.Plan.Policy.LeastMargin}; "
                + "clean and measure, or choose a type with a larger budget",
                loss);
        }
    }
}
