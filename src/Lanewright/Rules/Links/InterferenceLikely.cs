using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>Reflections that may close the eye by interference.</summary>
internal sealed class InterferenceLikely() : CheckRule("LW2413", nameof(InterferenceLikely), CheckNames.Interference, Severity.Warning)
{
    /// <inheritdoc/>
    protected override bool Speaks(Check check, Solution solution) => check.Verdict == Verdict.Fail;

    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"reflections may cost up to {Value(check)} by interference, a loose upper bound; angled connections end the doubt";
}
