using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Links to several switches that all draw from one feed.</summary>
internal sealed class PairOnOneFeed() : SharedEndRule("LW3112", nameof(PairOnOneFeed), FailureKind.Feed, Severity.Warning)
{
    /// <inheritdoc/>
    protected override string Message(Judgement judgement, SharedEnd end, string who) =>
        $"{who}: the switches that all {end.Links} links up lead to draw from feed {end.Feed} alone; give each two feeds, or half of them "
        + "another one";
}
