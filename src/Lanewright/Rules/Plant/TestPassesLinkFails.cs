using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks that may pass the cabling test and still lose more than the application allows.</summary>
internal sealed class TestPassesLinkFails() : Rule("LW4208", nameof(TestPassesLinkFails), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var (choice, solution) in judgement.Judged())
        {
            var loss = solution.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss);
            if (solution.Through is not { } way || loss?.Limit is not { } most) continue;
            var loosest = judgement.Plant.Value.Trunks[way.Trunk.Index].LoosestTest;
            if (loosest?.Limit is not { } limit || limit.Value <= most) continue;
            judgement.Add(this, choice,
                $"'{way.Trunk.Name}' passes the cabling test of edition {loosest.Edition} with up to {Numerals.Shown(limit.Value, "dB")}, "
                + $"and {solution.TypeName} allows {Numerals.Shown(most, "dB")} from module to module; have it tested against the lower "
                + "figure");
        }
    }
}
