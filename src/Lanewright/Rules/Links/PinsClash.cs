using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Ends of array connectors that both have alignment pins, or both have none.</summary>
internal sealed class PinsClash() : CheckRule("LW2304", nameof(PinsClash), CheckNames.Pins)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}: one side of a mating has pins; use a cord without pins at the modules";
}
