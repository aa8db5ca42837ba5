using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A split of lanes that travel on one fibre.</summary>
internal sealed class LanesShareFibre() : CheckRule("LW2108", nameof(LanesShareFibre), CheckNames.SharedFibre)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; split a parallel type such as DR4 or SR8 instead";
}
