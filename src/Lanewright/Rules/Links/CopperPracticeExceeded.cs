using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Passive copper longer than the project allows.</summary>
internal sealed class CopperPracticeExceeded() : CheckRule("LW2502", nameof(CopperPracticeExceeded), CheckNames.CopperPractice)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"passive copper of {Value(check)} is over the limit of {Limit(check)} at this rate; "
        + "take active copper or optics, or raise copper-limits in the policy";
}
