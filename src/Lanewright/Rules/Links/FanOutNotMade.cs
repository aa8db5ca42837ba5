using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A split that no cable in the catalogue is made for.</summary>
internal sealed class FanOutNotMade() : CheckRule("LW2303", nameof(FanOutNotMade), CheckNames.FanOut)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; split one end only, take a cable with as many legs as the cage has parts, or go through a panel";
}
