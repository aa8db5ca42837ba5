using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Ends whose lanes run at different symbol rates.</summary>
internal sealed class LaneBaudDiffers() : CheckRule("LW2203", nameof(LaneBaudDiffers), CheckNames.LaneBaud)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; the same name for a speed is no proof that the lanes are the same";
}
