using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A receiver that gets more light than it can read.</summary>
internal sealed class ReceiverOverloaded() : CheckRule("LW2409", nameof(ReceiverOverloaded), CheckNames.Overload)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        (check.Unit is CheckUnits.Average or CheckUnits.Amplitude
            ? $"the receiver may get {Value(check)} and works up to {Limit(check)} ({check.Note}); "
            : $"the way may lose as little as {Value(check)} ({check.Note}); ")
        + "add an attenuator or take a type for short links";
}
