using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A copper assembly that loses more than its type allows.</summary>
internal sealed class CopperLossExceeded() : CheckRule("LW2501", nameof(CopperLossExceeded), CheckNames.CopperLoss)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the assembly loses {Value(check)} ({check.Note}) and {solution.TypeName} allows {Limit(check)}; "
        + "take a shorter or thicker one, or active copper";
}
