using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module of the catalogue that is said to make a code and cannot, or has to and is not said to.</summary>
internal sealed class FecInModuleContradicts() : CheckRule("LW2111", nameof(FecInModuleContradicts), CheckNames.ModuleFec)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; correct 'fec-in-module' or the applications";
}
