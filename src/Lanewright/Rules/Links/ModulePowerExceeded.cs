using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module that draws more than its cage may give.</summary>
internal sealed class ModulePowerExceeded() : CheckRule("LW2103", nameof(ModulePowerExceeded), CheckNames.ModulePower)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the module draws {Value(check)} and the cage gives {Limit(check)}{AtEnd(check)}; "
        + "move it to a port with a higher limit or choose a cooler module";
}
