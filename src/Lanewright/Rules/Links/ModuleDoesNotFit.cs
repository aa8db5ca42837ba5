using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module whose body does not go into the cage.</summary>
internal sealed class ModuleDoesNotFit() : CheckRule("LW2101", nameof(ModuleDoesNotFit), CheckNames.ModuleFit)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; choose a module or cable made for this cage";
}
