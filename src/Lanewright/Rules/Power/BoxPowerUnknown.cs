using Lanewright.Engineering.Power;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>Models whose power for modules nobody stated, so that what their modules draw together is not judged.</summary>
internal sealed class BoxPowerUnknown() : Rule("LW2113", nameof(BoxPowerUnknown), Severity.Advice)
{
    /// <summary>What passive cables draw in a whole box is no load to speak of.</summary>
    private static readonly Watts Negligible = Watts.From(5);

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var power = ModulePower.Of(judgement.Plan, judgement.Design, judgement.Lines);
        var unstated = judgement.Plan.Devices.Groups.Where(g => g.Model.ModuleBudget is null && g.Count > 0);
        foreach (var ofModel in unstated.GroupBy(g => g.Model.Name))
        {
            var (group, most) = ofModel.Select(g => (Group: g, Most: power.MostIn(g))).MaxBy(g => g.Most.Power);
            if (most.Power <= Negligible) continue;
            judgement.Add(this, group.Span,
                $"{ofModel.Key} does not say what power it can spare for modules, so nobody judged the {most.Power} in "
                + $"{judgement.Plan.Devices.Name(most.Device)}; state 'module-budget' in the catalogue",
                ofModel.Key, ofModel.Sum(g => (long)g.Count));
        }
    }
}
