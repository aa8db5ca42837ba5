using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A cable shorter than the way it has to go.</summary>
internal sealed class CableShorterThanWay() : CheckRule("LW2603", nameof(CableShorterThanWay), CheckNames.FixedLength)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the cable is {Value(check)} long and its way needs one of {Limit(check)}; order it longer or move the ends";
}
