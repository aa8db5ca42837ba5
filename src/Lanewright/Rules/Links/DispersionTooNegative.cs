using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>More negative dispersion than the receiver tolerates.</summary>
internal sealed class DispersionTooNegative() : CheckRule("LW2407", nameof(DispersionTooNegative), CheckNames.DispersionNegative)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"dispersion falls to {Value(check)} and {solution.TypeName} tolerates {Limit(check)}; shorten the fibre";
}
