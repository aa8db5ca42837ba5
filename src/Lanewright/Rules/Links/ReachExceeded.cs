using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A link longer than its type or cable reaches.</summary>
internal sealed class ReachExceeded() : CheckRule("LW2403", nameof(ReachExceeded), CheckNames.Reach)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        check.Note.Length > 0
            ? $"the link is {Value(check)} long and {check.Note}; shorten it or take a cable that is made longer"
            : $"the link is {Value(check)} long and {solution.TypeName} reaches {Limit(check)} over {solution.MediumName}; "
                + "shorten it or take a type that reaches further";
}
