using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module that draws more than its own power class allows.</summary>
internal sealed class PowerClassExceeded() : CheckRule("LW2112", nameof(PowerClassExceeded), CheckNames.PowerClass)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the module is declared to draw {Value(check)}, and its power class ends at {Limit(check)}{AtEnd(check)}; "
        + "correct the class or the power in the catalogue, by the data sheet";
}
