using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Polarisation modes that arrive too far apart.</summary>
internal sealed class GroupDelayExceeded() : CheckRule("LW2408", nameof(GroupDelayExceeded), CheckNames.Dgd)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the delay between polarisation modes reaches {Value(check)} and {solution.TypeName} tolerates {Limit(check)}; "
        + "use fibre with less polarisation mode dispersion";
}
