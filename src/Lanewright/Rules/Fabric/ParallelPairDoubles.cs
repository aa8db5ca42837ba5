using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model.Demands;

namespace Lanewright.Rules.Fabric;

/// <summary>Two parallel links of which one carries what both did when the other breaks.</summary>
internal sealed class ParallelPairDoubles() : Rule("LW3102", nameof(ParallelPairDoubles), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (!judgement.IsWhole) return;
        // Weighted splits send less to where less is left.
        if (judgement.Plan.Policy.Split != TrafficSplit.PerHop) return;
        foreach (var network in judgement.Load.Networks)
            foreach (var set in ParallelPair.Of(network).GroupBy(p => network.Statement(p.FirstLink).Index))
                Judge(judgement, network, [.. set]);
    }

    private void Judge(Judgement judgement, PlanNetwork network, List<ParallelPair> pairs)
    {
        var devices = judgement.Plan.Devices;
        var studies = judgement.Load.Demands.Where(d => d.Fabric.Map.Network == network).ToList();
        var (worst, doubled) = (pairs[0], 0.0);
        foreach (var pair in pairs)
        {
            foreach (var study in studies)
            {
                var full = study.Utilisation(study.Fabric.Map.LinkOf(pair.FirstLink)).Value * 2;
                if (full > doubled) (worst, doubled) = (pair, full);
            }
        }
        var limit = judgement.Plan.Policy.MostUtilisation;
        if (studies.Count > 0 && doubled <= limit.Value) return;
        var load = studies.Count > 0 ? $", {FabricWords.Percent(Quantities.Share.From(doubled))} of what it can" : "";
        judgement.Add(this, network.Statement(worst.FirstLink).Span,
            $"{devices.Name(worst.Device)} to {devices.Name(worst.Upper)}{(pairs.Count > 1 ? $" and {pairs.Count - 1} more pairs" : "")}: "
            + $"when one of the two links breaks, other switches still send as much that way and the other link carries double{load}; "
            + "let the pair go down together, weigh the split by paths, or link each switch to twice as many above",
            network.Statement(worst.FirstLink).Name, pairs.Count, studies.Count > 0 ? Severity.Warning : Severity.Advice);
    }
}
