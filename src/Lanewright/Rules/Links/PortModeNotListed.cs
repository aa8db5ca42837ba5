using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A cage run in a way its platform does not list.</summary>
internal sealed class PortModeNotListed() : CheckRule("LW2106", nameof(PortModeNotListed), CheckNames.PortMode)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; choose a listed mode or another model";
}
