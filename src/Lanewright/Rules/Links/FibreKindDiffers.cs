using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Single mode at one end and multimode at the other.</summary>
internal sealed class FibreKindDiffers() : CheckRule("LW2201", nameof(FibreKindDiffers), CheckNames.FibreKind)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; use the same family of fibre throughout";
}
