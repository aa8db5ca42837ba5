using System.Collections.Immutable;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Rules.Fabric;

/// <summary>Trays, and ways between halls, whose loss cuts hosts off.</summary>
internal sealed class HostsCutByOneTray() : Rule("LW3116", nameof(HostsCutByOneTray), Severity.Warning)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty && judgement.Plan.Building.Routes.IsEmpty) return;
        foreach (var network in judgement.Load.Demands.GroupBy(d => d.Fabric.Map.Network))
        {
            var studies = network.Where(s => s.Sweep is not null).ToList();
            if (studies.MaxBy(s => MostLost(Cutting(s, FailureKind.Tray))) is { } trays) Judge(judgement, trays);
            if (studies.MaxBy(s => MostLost(Cutting(s, FailureKind.Route))) is { } ways) JudgeWays(judgement, ways);
        }
    }

    /// <summary>Which hosts are cut off is the same for all demands; the one that loses most tells what it means.</summary>
    private static double MostLost(IEnumerable<FailureClass> failures) => failures.Select(t => t.LostGigabits).FirstOrDefault();

    private static IEnumerable<FailureClass> Cutting(DemandStudy study, FailureKind kind) =>
        study.Failures.Where(f => f.Kind == kind && f.HostsLost > 0);

    private void JudgeWays(Judgement judgement, DemandStudy study)
    {
        var ways = Cutting(study, FailureKind.Route).ToList();
        if (ways.Count == 0) return;
        var worst = study.Fabric.Failures[ways[0].Units[0]];
        var route = judgement.Plan.Building.Routes.First(r => r.Name == worst.Name);
        var hosts = HostsUp(study);
        int In(Hall hall) => hosts.Count(h => judgement.Plan.Devices.Rack(h)?.Hall == hall);
        // A hall with one way loses its own hosts and no others: that is accepted more often.
        var isOwn = ways[0].HostsLost <= Math.Max(In(route.From), In(route.To));
        Tell(judgement, study, ways, route.Span, isOwn, ($"the way from {worst.Name}", "more way",
            "give the hall a second way that shares no duct with the first"));
    }

    private void Judge(Judgement judgement, DemandStudy study)
    {
        var trays = Cutting(study, FailureKind.Tray).ToList();
        if (trays.Count == 0) return;
        var worst = study.Fabric.Failures[trays[0].Units[0]];
        var tray = judgement.Plan.Building.Pathways.First(p => p.FullName == worst.Name);
        var under = HostsUp(study).Count(h =>
            judgement.Plan.Devices.Rack(h) is { } rack && judgement.Pathways.Value.OverRack(rack) == tray);
        // What stands under a tray has no other way out: that is accepted more often than the loss of the rest of the hall.
        Tell(judgement, study, trays, tray.Span, trays[0].HostsLost <= under, ($"tray {worst.Name}", "more tray",
            "lead half of the cables another way, spread the switches over trays"));
    }

    private void Tell(
        Judgement judgement, DemandStudy study, List<FailureClass> failures, SourceSpan span, bool isOwn,
        (string Lost, string Others, string Cure) words)
    {
        var (cut, lost, more) = (failures[0].HostsLost, failures[0].LostGigabits, failures.Sum(t => t.Size) - 1);
        judgement.Add(this, span,
            $"when {words.Lost} is lost, {FabricWords.Count(cut, "host")} of {Numerals.Grouped(HostsUp(study).Length)} are cut off"
            + (lost > 0 ? $" and {Numerals.Shown(lost, "Gb/s")} of '{study.Demand.Name}' are lost" : "")
            + (more > 0 ? $"; {FabricWords.Count(more, words.Others)} cut off as many or fewer" : "")
            + $"; {words.Cure}, or accept it: 'lanewright load' lists all",
            study.Fabric.Failures[failures[0].Units[0]].Name, failures.Sum(t => (long)t.Size),
            isOwn ? Severity.Advice : Severity.Warning, new Evidence("hosts cut off", cut, 0, "", null));
    }

    private static ImmutableArray<int> HostsUp(DemandStudy study)
    {
        var map = study.Fabric.Map;
        return [.. Enumerable.Range(0, map.Plan.Devices.Count).Where(d => map.NodeOf(d) >= 0 && !map.Network.IsSwitch(d))];
    }
}
