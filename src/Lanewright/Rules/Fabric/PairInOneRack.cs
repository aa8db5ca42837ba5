using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Links to several switches that all stand in one rack.</summary>
internal sealed class PairInOneRack() : SharedEndRule("LW3111", nameof(PairInOneRack), FailureKind.Rack, Severity.Warning)
{
    /// <inheritdoc/>
    protected override string Message(Judgement judgement, SharedEnd end, string who) =>
        $"{who}: the switches that all {end.Links} links up lead to stand in one rack, {judgement.Plan.Building.Racks[end.Shared].Name}; "
        + "put them into two racks, so that water, smoke or a tripped strip takes one of them only";
}
