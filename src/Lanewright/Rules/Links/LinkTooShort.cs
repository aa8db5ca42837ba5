using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A link shorter than its type allows.</summary>
internal sealed class LinkTooShort() : CheckRule("LW2405", nameof(LinkTooShort), CheckNames.MinimumLength)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"the link is {Value(check)} long and {solution.TypeName} needs {Limit(check)}; use a longer cord";
}
