using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Ends with different numbers of optical lanes.</summary>
internal sealed class MediaLanesDiffer() : CheckRule("LW2202", nameof(MediaLanesDiffer), CheckNames.MediaLanes)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; equal rates over unequal lanes never link";
}
