using System.Collections.Immutable;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Fabric;

/// <summary>Trays whose loss cuts hosts off, other than those that stand under the tray.</summary>
internal sealed class HostsCutByOneTray() : Rule("LW3116", nameof(HostsCutByOneTray), Severity.Warning)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty) return;
        foreach (var network in judgement.Load.Demands.GroupBy(d => d.Fabric.Map.Network))
            if (network.Where(s => s.Sweep is not null).MaxBy(MostLost) is { } study) Judge(judgement, study);
    }

    /// <summary>Which hosts are cut off is the same for all demands; the one that loses most tells what it means.</summary>
    private static double MostLost(DemandStudy study) => Trays(study).Select(t => t.LostGigabits).FirstOrDefault();

    private static IEnumerable<FailureClass> Trays(DemandStudy study) =>
        study.Failures.Where(f => f.Kind == FailureKind.Tray && f.HostsLost > 0);

    private void Judge(Judgement judgement, DemandStudy study)
    {
        var trays = Trays(study).ToList();
        if (trays.Count == 0) return;
        var hosts = HostsUp(study);
        var worst = study.Fabric.Failures[trays[0].Units[0]];
        var tray = judgement.Plan.Building.Pathways.First(p => p.FullName == worst.Name);
        var under = hosts.Count(h => judgement.Plan.Devices.Rack(h) is { } rack && judgement.Pathways.Value.OverRack(rack) == tray);
        var cut = trays[0].HostsLost;
        var lost = trays[0].LostGigabits;
        // What stands under a tray has no other way out: that is accepted more often than the loss of the rest of the hall.
        var isOwn = cut <= under;
        var more = trays.Sum(t => t.Size) - 1;
        judgement.Add(this, tray.Span,
            $"when tray {worst.Name} is lost, {FabricWords.Count(cut, "host")} of {Numerals.Grouped(hosts.Length)} are cut off"
            + (lost > 0 ? $" and {Numerals.Shown(lost, "Gb/s")} of '{study.Demand.Name}' are lost" : "")
            + (more > 0 ? $"; {FabricWords.Count(more, "more tray")} cut off as many or fewer" : "")
            + "; lead half of the cables another way, spread the switches over trays, or accept it: 'lanewright load' lists all",
            worst.Name, trays.Sum(t => (long)t.Size), isOwn ? Severity.Advice : Severity.Warning,
            new Evidence("hosts cut off", cut, 0, "", null));
    }

    private static ImmutableArray<int> HostsUp(DemandStudy study)
    {
        var map = study.Fabric.Map;
        return [.. Enumerable.Range(0, map.Plan.Devices.Count).Where(d => map.NodeOf(d) >= 0 && !map.Network.IsSwitch(d))];
    }
}
