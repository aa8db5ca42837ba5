using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model.Demands;
using Lanewright.Quantities;

namespace Lanewright.Rules.Fabric;

/// <summary>Parallel links of which those left carry too much when one of them breaks.</summary>
internal sealed class ParallelLinkBreaks() : Rule("LW3102", nameof(ParallelLinkBreaks), Severity.Advice)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        // Weighted splits send less to where less is left.
        if (judgement.Plan.Policy.Split != TrafficSplit.PerHop) return;
        foreach (var network in judgement.Load.Networks)
        {
            var studies = judgement.Load.Demands.Where(d => d.Fabric.Map.Network == network).ToList();
            foreach (var set in ParallelLinks.Of(network).GroupBy(p => network.Statement(p.FirstLink).Index))
            {
                if (studies.Count == 0) Advise(judgement, network, [.. set]);
                else Warn(judgement, network, [.. set], studies);
            }
        }
    }

    private void Advise(Judgement judgement, PlanNetwork network, List<ParallelLinks> sets) =>
        Add(judgement, network, sets[0], sets.Count,
            $"when one of the {sets[0].Count} links breaks, other switches still send as much that way and the links left carry its share "
            + "as well; let the links go down together, weigh the split by paths, or link each switch to more of those above",
            Severity.Advice, null);

    /// <summary>What 'load' computes for the very failure decides.</summary>
    private void Warn(Judgement judgement, PlanNetwork network, List<ParallelLinks> sets, List<DemandStudy> studies)
    {
        var limit = judgement.Plan.Policy.MostUtilisation;
        var (worst, by, full, over) = ((ParallelLinks?)null, studies[0], default(Share), 0);
        foreach (var study in studies.Where(s => s.Sweep is not null))
        {
            var after = BrokenLinks(study);
            var here = 0;
            foreach (var set in sets)
            {
                if (!after.TryGetValue(study.Fabric.Map.LinkOf(set.FirstLink), out var found)) continue;
                if (found.Value <= limit.Value + FabricWords.Rounding || found <= study.Intact) continue;
                here++;
                if (worst is null || found.Value > full.Value + FabricWords.Rounding) (worst, by, full) = (set, study, found);
            }
            over = Math.Max(over, here);
        }
        if (worst is null) return;
        var all = by.AfterLosing(Outage.OfLink(by.Fabric.Map.LinkOf(worst.FirstLink), worst.Count));
        var together = all is { } gone && gone.Value <= limit.Value + FabricWords.Rounding ? "let the links go down together, " : "";
        Add(judgement, network, worst, over,
            $"when one of the {worst.Count} links breaks, other switches still send as much that way and under '{by.Demand.Name}' "
            + $"the links left are {FabricWords.Percent(full)} full; {together}weigh the split by paths, or keep more room",
            Severity.Warning, new Evidence("utilisation after one link", full.Percent, limit.Percent, "%", null));
    }

    /// <summary>How full what is left of a link is when one of its parallel links breaks, where nothing else is fuller then.</summary>
    private static Dictionary<int, Share> BrokenLinks(DemandStudy study)
    {
        var links = new Dictionary<int, Share>();
        foreach (var failure in study.Failures.Where(f => f.Kind == FailureKind.Link))
        {
            var units = failure.Units.Select(u => study.Fabric.Failures[u].Outage).Where(o => o.Links.Length == 1).ToList();
            if (units.Count == 0 || units[0].Links[0].Link != failure.BusiestLink) continue;
            // The first of a class stands for all: what is fullest after it lies, in each of the others, at the same place.
            foreach (var outage in units) links[outage.Links[0].Link] = failure.MaxUtilisation;
        }
        return links;
    }

    private void Add(
        Judgement judgement, PlanNetwork network, ParallelLinks worst, int count, string message, Severity severity, Evidence? evidence)
    {
        var devices = judgement.Plan.Devices;
        var more = count > 1 ? $" and {Numerals.Whole(count - 1)} more such" : "";
        judgement.Add(this, network.Statement(worst.FirstLink).Span,
            $"{devices.Name(worst.Device)} to {devices.Name(worst.Upper)}{more}: {message}",
            network.Statement(worst.FirstLink).Name, count, severity, evidence);
    }
}
