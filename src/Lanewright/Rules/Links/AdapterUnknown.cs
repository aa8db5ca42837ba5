using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module in an adapter on a platform that does not know adapters.</summary>
internal sealed class AdapterUnknown() : CheckRule("LW2102", nameof(AdapterUnknown), CheckNames.Adapter)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; use a port that takes the module itself, or a platform that lists adapters";
}
