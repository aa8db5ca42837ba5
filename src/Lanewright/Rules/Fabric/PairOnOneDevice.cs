using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Several links of a device that all end on one switch.</summary>
internal sealed class PairOnOneDevice() : SharedEndRule("LW3103", nameof(PairOnOneDevice), FailureKind.Switch, Severity.Advice)
{
    /// <inheritdoc/>
    protected override string Message(Judgement judgement, SharedEnd end, string who) =>
        $"{who}: all {end.Links} links up end on {judgement.Plan.Devices.Name(end.Shared)}, and its failure takes all of them; "
        + "lead them to two switches, or take them for bandwidth alone";
}
