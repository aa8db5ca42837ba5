using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;

namespace Lanewright.Deliverables;

/// <summary>One leg of a cable, followed.</summary>
/// <param name="Link">Identifier of its link.</param>
/// <param name="Number">Which of the legs, from 1.</param>
/// <param name="Path">Its way.</param>
/// <param name="IsPortless">Whether a trunk on the way has no port left for it.</param>
public sealed record TracedLeg(string Link, int Number, CablePath Path, bool IsPortless)
{
    /// <summary>What the link comes to.</summary>
    public Verdict Verdict => IsPortless ? Verdict.Fail : Path.Solution.Verdict;

    /// <summary>What decides against it, in words.</summary>
    public ImmutableArray<string> Reasons =>
    [
        .. IsPortless ? new[] { "the trunks have no port left for it" } : [],
        .. Path.Solution.Checks.Where(c => c.Verdict != Verdict.Pass && c.Verdict == Path.Solution.Verdict && !c.IsAdvice)
            .Select(LostBy.Describe).Distinct(),
    ];
}
