using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Links to several switches whose cables all lie in one tray.</summary>
internal sealed class PairInOneTray() : Rule("LW3115", nameof(PairInOneTray), Severity.Advice)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty) return;
        var devices = judgement.Plan.Devices;
        foreach (var network in judgement.Load.Networks)
        {
            foreach (var group in SharedTray.Of(network, judgement.Pathways.Value).GroupBy(s => devices.Group(s.Device)))
            {
                var first = group.First();
                judgement.Add(this, network.Statement(network.UpLinks(first.Device)[0]).Span,
                    $"{FabricWords.WithMore(devices.Name(first.Device), group.Count())}: the cables of all {first.Links} links up lie in "
                    + $"{first.Tray.FullName}; a fire or a fall there takes them all: lead half of them another "
                    + "way, or look at what 'lanewright load' says of it and accept it",
                    group.Key.Name, group.Count());
            }
        }
    }
}
