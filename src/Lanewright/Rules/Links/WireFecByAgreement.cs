using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>Two types that ask for different codes and work when both ports are set alike.</summary>
internal sealed class WireFecByAgreement() : CheckRule("LW2207", nameof(WireFecByAgreement), CheckNames.WireFec, Severity.Warning)
{
    /// <inheritdoc/>
    protected override bool Speaks(Check check, Solution solution) => check.IsConditional && solution.Verdict != Verdict.Fail;

    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; both ports have to be set by hand, and one type runs outside its standard";
}
