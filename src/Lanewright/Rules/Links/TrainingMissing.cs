using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Copper at high lane rates without link training.</summary>
internal sealed class TrainingMissing() : CheckRule("LW2504", nameof(TrainingMissing), CheckNames.Training)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        check.Note;
}
