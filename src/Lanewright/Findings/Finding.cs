using System.Collections.Immutable;
using Lanewright.Text;

namespace Lanewright.Findings;

/// <summary>One judgement about the plan.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Severity">How much it weighs here.</param>
/// <param name="Span">The place in the plan to look at.</param>
/// <param name="Message">What is wrong and what to do, in one sentence or two.</param>
public sealed record Finding(FindingKind Kind, Severity Severity, SourceSpan Span, string Message)
{
    /// <summary>The things concerned, by the names the plan gives them.</summary>
    public string Subject { get; init; } = "";

    /// <summary>How many links or things share this finding; a thousand links alike are judged once.</summary>
    public long Count { get; init; } = 1;

    /// <summary>What the judgement rests on.</summary>
    public Evidence? Evidence { get; init; }

    /// <summary>Other places that have to do with it.</summary>
    public ImmutableArray<RelatedPlace> Related { get; init; } = [];
}
