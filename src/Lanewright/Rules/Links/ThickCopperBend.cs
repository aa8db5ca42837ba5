using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>Thick copper with less than the usual room to bend.</summary>
internal sealed class ThickCopperBend() : CheckRule("LW2602", nameof(ThickCopperBend), CheckNames.ThickCopperBend, Severity.Advice)
{
    /// <inheritdoc/>
    protected override bool Speaks(Check check, Solution solution) => check.Verdict == Verdict.Fail;

    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"installers give thick copper {Limit(check)} from port to door and the rack has {Value(check)}{AtEnd(check)}; "
        + "plan side exits or thinner cable";
}
