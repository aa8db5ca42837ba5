using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A module or cable that asks for lanes the port does not have.</summary>
internal sealed class HostInterfaceMissing() : CheckRule("LW2107", nameof(HostInterfaceMissing), CheckNames.HostInterface)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; the lanes of port and module must be equal in number, rate and modulation";
}
