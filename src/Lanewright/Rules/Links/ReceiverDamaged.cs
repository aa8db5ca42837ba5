using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A receiver that gets more light than it survives.</summary>
internal sealed class ReceiverDamaged() : CheckRule("LW2410", nameof(ReceiverDamaged), CheckNames.Damage)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the receiver may get {Value(check)} and is damaged above {Limit(check)}; "
        + $"never light this link without at least {Gap(check)} more attenuation before the receiver";
}
