using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A code that is fixed at a port where auto-negotiation agrees on one.</summary>
internal sealed class CodeForcedUnderNegotiation() : CheckRule("LW2505", nameof(CodeForcedUnderNegotiation), CheckNames.NegotiatedCode)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; leave the code to negotiation, or switch negotiation off at both ends and fix the code at both";
}
