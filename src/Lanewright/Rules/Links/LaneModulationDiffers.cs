using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Ends whose lanes are modulated differently.</summary>
internal sealed class LaneModulationDiffers() : CheckRule("LW2204", nameof(LaneModulationDiffers), CheckNames.LaneModulation)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; two levels and four levels never understand each other";
}
