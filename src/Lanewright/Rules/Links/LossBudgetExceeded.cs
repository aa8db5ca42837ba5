using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A channel that loses more light than its type allows.</summary>
internal sealed class LossBudgetExceeded() : CheckRule("LW2401", nameof(LossBudgetExceeded), CheckNames.ChannelLoss)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the channel loses {Value(check)} and {solution.TypeName} allows {Limit(check)}, {Gap(check)} too much ({check.Note}); "
        + "shorten it, use fewer or better connections, or take a type with a larger budget";
}
