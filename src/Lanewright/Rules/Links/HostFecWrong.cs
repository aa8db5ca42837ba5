using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A port set to a code the link does not run, or without the code it needs.</summary>
internal sealed class HostFecWrong() : CheckRule("LW2208", nameof(HostFecWrong), CheckNames.HostFec)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{NoteAtEnd(check)}; set the port to what the link needs";
}
