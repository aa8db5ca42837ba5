using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A type whose standard was a draft, against the policy.</summary>
internal sealed class DraftNotAllowed() : CheckRule("LW2209", nameof(DraftNotAllowed), CheckNames.Draft)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        $"{check.Note}; name the type in the link, or allow drafts in the policy";
}
