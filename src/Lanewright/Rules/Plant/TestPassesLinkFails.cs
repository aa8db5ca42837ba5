using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks that may pass the cabling test and still lose more than the application allows.</summary>
internal sealed class TestPassesLinkFails() : Rule("LW4208", nameof(TestPassesLinkFails), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        // One set of links says it once, however many classes its lengths make.
        foreach (var (choice, solution) in judgement.Judged.DistinctBy(j => j.Choice.Class.Statement.Index))
        {
            var loss = solution.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss);
            if (solution.Through is not { } way || loss?.Limit is not { } most) continue;
            var tests = way.Legs.Select(l => judgement.Plant.Value.Trunks[l.Trunk.Index].LoosestTest).ToList();
            if (tests.Exists(t => t?.Limit is null)) continue;
            var path = CablePath.Of(judgement.Plan, judgement.Design, judgement.Plant.Value, choice.Class.FirstLink, "");
            if (path?.AllowedForTrunks is not { } left) continue;
            var sum = tests.Sum(t => t?.Limit?.Value ?? 0);
            if (!Rounding.IsAbove(sum, left)) continue;
            var editions = string.Join(" and ", tests.Select(t => t?.Title).Distinct());
            judgement.Add(this, choice,
                $"'{way.Name}' {(tests.Count > 1 ? "pass" : "passes")} the cabling test ({editions}) with up to "
                + $"{Numerals.Shown(sum, "dB")}, and {solution.TypeName} allows {Numerals.Shown(most, "dB")} from module to module, "
                + $"of which cords and reserves take {Numerals.Shown(most - left, "dB")}; "
                + $"have the trunks tested against {Numerals.Shown(left, "dB")}"
                + (tests.Count > 1 ? " together" : ""));
        }
    }
}
