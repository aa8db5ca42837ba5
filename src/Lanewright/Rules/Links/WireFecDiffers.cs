using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Ends that put different codes on the wire.</summary>
internal sealed class WireFecDiffers() : CheckRule("LW2206", nameof(WireFecDiffers), CheckNames.WireFec)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; take modules that end their codes in the same place";
}
