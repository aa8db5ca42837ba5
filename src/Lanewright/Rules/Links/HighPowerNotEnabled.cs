using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module that stays dark because the platform leaves it in low power.</summary>
internal sealed class HighPowerNotEnabled() : CheckRule("LW2104", nameof(HighPowerNotEnabled), CheckNames.HighPower)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; choose a module of a lower class or a platform that enables high power";
}
