using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A transmitter too weak for the receiver of another type at the far end.</summary>
internal sealed class PowerBudgetExceeded() : CheckRule("LW2402", nameof(PowerBudgetExceeded), CheckNames.PowerBudget)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the channel loses {Value(check)} and {check.Note} allows {Limit(check)}; use equal types at both ends or a better channel";
}
