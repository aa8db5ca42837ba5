using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A channel that sends too much light back.</summary>
internal sealed class ReturnLossTooLow() : CheckRule("LW2412", nameof(ReturnLossTooLow), CheckNames.ReturnLoss)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the return loss of the channel is {Value(check)} and {solution.TypeName} asks for {Limit(check)}; "
        + "use fewer connections, better polish or angled ones";
}
