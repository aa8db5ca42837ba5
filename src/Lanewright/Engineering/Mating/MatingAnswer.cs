using System.Collections.Immutable;

namespace Lanewright.Engineering.Mating;

/// <summary>What came of holding two ends together.</summary>
/// <param name="Conditions">What has to be seen to.</param>
/// <param name="Reasons">Why they never work; empty when they do.</param>
public sealed record MatingAnswer(ImmutableArray<string> Conditions, ImmutableArray<MatingReason> Reasons)
{
    /// <summary>The verdict.</summary>
    public MatingVerdict Verdict =>
        !Reasons.IsEmpty ? MatingVerdict.Never : Conditions.IsEmpty ? MatingVerdict.Works : MatingVerdict.Conditional;
}
