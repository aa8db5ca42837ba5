using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Angled and flat ends that would mate.</summary>
internal sealed class PolishDiffers() : CheckRule("LW2302", nameof(PolishDiffers), CheckNames.Polish)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; use a cord with the polish of each module";
}
