using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;

namespace Lanewright.Rules.Links;

/// <summary>A link longer than the plain reach of its type.</summary>
internal sealed class EngineeredReachUsed() : CheckRule("LW2404", nameof(EngineeredReachUsed), CheckNames.Reach, Severity.Warning)
{
    /// <inheritdoc/>
    protected override bool Speaks(Check check, Solution solution) => check.IsConditional && solution.Verdict != Verdict.Fail;

    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note} ({solution.TypeName}, {Value(check)} of {Limit(check)}); measure the channel before the modules are ordered";
}
