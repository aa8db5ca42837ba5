using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>A demand that asks a link for more than it may carry.</summary>
internal sealed class LinkOverloaded() : Rule("LW3106", nameof(LinkOverloaded))
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var said = new Dictionary<string, Quantities.Share>(StringComparer.Ordinal);
        foreach (var study in judgement.Load.Demands.Where(s => s.IsOverloaded).OrderBy(s => s.Demand.With.Length))
        {
            said[study.Demand.Name] = study.MaxUtilisation;
            if (FabricWords.IsSaid(study, said, study.MaxUtilisation)) continue;
            var limit = judgement.Plan.Policy.MostUtilisation;
            var map = study.Fabric.Map;
            var full = FabricWords.Percent(study.MaxUtilisation);
            var where = study.WorstCase?.Worst is { } worst
                ? $"the worst traffic its hosts may send fills {FabricWords.LinkName(map, worst.Link, worst.FromA)} to {full}"
                : $"{FabricWords.LinkName(map, study.Busiest(1)[0])} is {full} full";
            judgement.Add(this, study.Demand.Span,
                $"'{study.Demand.Name}': {where}, and {FabricWords.Percent(limit)} are allowed; add links or switches there, ask for "
                + "less, or keep more of the traffic below",
                study.Demand.Name, Math.Max(1, study.OverloadedLinks), Severity.Error,
                new Evidence("utilisation", study.MaxUtilisation.Percent, limit.Percent, "%", null));
        }
    }
}
