using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>A type whose standard was a draft when its values were taken.</summary>
internal sealed class DraftInUse() : CheckRule("LW2210", nameof(DraftInUse), CheckNames.Draft, Severity.Warning)
{
    /// <inheritdoc/>
    protected override bool Speaks(Check check, Solution solution) => check.IsConditional && solution.Verdict != Verdict.Fail;

    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{solution.TypeName}: {check.Note}; check the published limits before ordering";
}
