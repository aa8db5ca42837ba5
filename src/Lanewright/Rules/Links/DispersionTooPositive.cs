using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>More positive dispersion than the receiver tolerates.</summary>
internal sealed class DispersionTooPositive() : CheckRule("LW2406", nameof(DispersionTooPositive), CheckNames.DispersionPositive)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"dispersion reaches {Value(check)} and {solution.TypeName} tolerates {Limit(check)}; shorten the fibre";
}
