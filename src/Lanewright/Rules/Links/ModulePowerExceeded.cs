using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;

namespace Lanewright.Rules.Links;

/// <summary>A module that draws more than its cage may give.</summary>
internal sealed class ModulePowerExceeded() : CheckRule("LW2103", nameof(ModulePowerExceeded), CheckNames.ModulePower)
{
    /// <inheritdoc/>
    protected override string Message(Plan plan, LinkClass link, Solution solution, Check check) =>
        Message(solution, check) + (BetterPorts.Cure(plan, link, solution, check) is { } ports
            ? $"; move it to a port with a higher limit ({ports}) or choose a cooler module"
            : "; no port of the device gives as much: choose a cooler module");

    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the module draws {Value(check)} and the cage gives {Limit(check)}{AtEnd(check)}";
}
