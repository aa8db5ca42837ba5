using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Links to several switches that all leave one cage.</summary>
internal sealed class PairInOneModule() : SharedEndRule("LW3110", nameof(PairInOneModule), FailureKind.Module, Severity.Warning)
{
    /// <inheritdoc/>
    protected override string Message(Judgement judgement, SharedEnd end, string who)
    {
        var slots = judgement.Plan.Devices.Group(end.Device).Layout.Slots;
        return $"{who}: all {end.Links} links up leave port {slots[end.Shared].Label}, and one module takes all of them; split two cages, "
            + "and lead half of each way";
    }
}
