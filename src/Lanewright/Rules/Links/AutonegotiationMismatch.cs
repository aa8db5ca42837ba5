using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Auto-negotiation at one end only, or where there is none.</summary>
internal sealed class AutonegotiationMismatch() : CheckRule("LW2503", nameof(AutonegotiationMismatch), CheckNames.Autonegotiation)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}{AtEnd(check)}";
}
