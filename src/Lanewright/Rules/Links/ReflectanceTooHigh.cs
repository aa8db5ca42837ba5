using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>Connections that reflect more than their number allows.</summary>
internal sealed class ReflectanceTooHigh() : CheckRule("LW2411", nameof(ReflectanceTooHigh), CheckNames.Reflectance)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        check.Margin is null
            ? $"{check.Note}; use fewer connections or angled ones"
            : $"each connection reflects {Value(check)} and {solution.TypeName} allows {Limit(check)} here; "
                + "use fewer connections, better polish or angled ones";
}
