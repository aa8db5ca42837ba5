using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>Hosts that have two ways out and lose both by one failure.</summary>
internal sealed class HostsCutByOneFailure() : Rule("LW3109", nameof(HostsCutByOneFailure), Severity.Warning)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var network in judgement.Load.Demands.GroupBy(d => d.Fabric.Map.Network))
        {
            if (network.FirstOrDefault(s => s.Sweep is not null) is not { Sweep: { } sweep } study) continue;
            // A tray over a row holds everything of the row, and a way to a hall all of the hall: whether that is accepted,
            // 'lanewright load' lays before the reader.
            var cutting = sweep.Classes.Where(c => c.MembersCut > 0 && c.Kind is not (FailureKind.Tray or FailureKind.Route));
            foreach (var kind in cutting.GroupBy(c => c.Kind).OrderBy(g => g.Key))
                Judge(judgement, study, kind);
        }
    }

    private void Judge(Judgement judgement, DemandStudy study, IEnumerable<FailureClass> classes)
    {
        var (worst, hosts, units) = ((FailureUnit?)null, new List<int>(), 0L);
        foreach (var failure in classes)
        {
            var unit = study.Fabric.Failures[failure.Units[0]];
            var cut = CutHosts.WithTwoWays(study.Fabric.Map, unit.Outage);
            if (cut.Count == 0) continue;
            units += failure.Size;
            if (cut.Count > hosts.Count) (worst, hosts) = (unit, cut);
        }
        if (worst is null) return;
        judgement.Add(this, study.Demand.Span,
            $"when {FabricWords.Failure(worst)} fails, "
            + $"{FabricWords.WithMore(judgement.Plan.Devices.Name(hosts[0]), hosts.Count)} have links to two switches "
            + "and reach nobody; join those switches to the rest of the network over two things that do not fail together",
            study.Demand.Name, units);
    }
}
