using Lanewright.Engineering.Power;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>Modules that together draw more than their device can spare.</summary>
internal sealed class BoxPowerExceeded() : Rule("LW2105", nameof(BoxPowerExceeded))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var power = ModulePower.Of(judgement.Plan, judgement.Design, judgement.Lines);
        foreach (var group in judgement.Plan.Devices.Groups)
        {
            // A group may have lost all its devices to another finding.
            if (group.Model.ModuleBudget is not { } budget || group.Count == 0) continue;
            var (device, watts) = power.MostIn(group);
            if (!Rounding.IsAbove(watts.Value, budget.Value)) continue;
            judgement.Add(this, group.Span,
                $"the modules of {judgement.Plan.Devices.Name(device)} draw {watts} and {group.Model.Name} can spare {budget}; "
                + "use copper or cooler modules on some ports, or populate fewer",
                group.Name, group.Count);
        }
    }
}
