using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module of the catalogue whose electrical lanes no module turns into its media lanes.</summary>
internal sealed class GearboxMissing() : CheckRule("LW2110", nameof(GearboxMissing), CheckNames.Gearbox)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; correct the module's applications or take another module";
}
