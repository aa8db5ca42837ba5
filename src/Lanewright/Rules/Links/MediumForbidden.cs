using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A medium the policy forbids.</summary>
internal sealed class MediumForbidden() : CheckRule("LW2605", nameof(MediumForbidden), CheckNames.Forbidden)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; take it off the list or choose another medium";
}
