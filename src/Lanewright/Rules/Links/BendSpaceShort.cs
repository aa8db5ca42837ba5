using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A plug and bend that do not fit behind the door.</summary>
internal sealed class BendSpaceShort() : CheckRule("LW2601", nameof(BendSpaceShort), CheckNames.BendSpace)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"plug and bend need {Limit(check)} in front of the ports and the rack has {Value(check)}{AtEnd(check)}; "
        + "use a rack with more front space, a thinner cable or optics";
}
