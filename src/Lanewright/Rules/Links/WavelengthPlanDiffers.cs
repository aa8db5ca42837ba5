using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Ends that send light where the other does not look.</summary>
internal sealed class WavelengthPlanDiffers() : CheckRule("LW2205", nameof(WavelengthPlanDiffers), CheckNames.WavelengthPlan)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; take modules of one wavelength plan";
}
