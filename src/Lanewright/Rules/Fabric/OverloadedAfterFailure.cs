using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Fabric;

/// <summary>A demand that fits while all works and overloads a link once one thing fails.</summary>
internal sealed class OverloadedAfterFailure() : Rule("LW3108", nameof(OverloadedAfterFailure), Severity.Warning)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var limit = judgement.Plan.Policy.MostUtilisation;
        var said = new Dictionary<string, Share>(StringComparer.Ordinal);
        foreach (var study in judgement.Load.Demands.Where(s => !s.IsOverloaded).OrderBy(s => s.Demand.With.Length))
        {
            if (study.Sweep is not { } sweep) continue;
            var bad = sweep.Classes
                .Where(c => c.Kind is not (FailureKind.Tray or FailureKind.Route)
                    && study.After(c).Value > limit.Value + FabricWords.Rounding)
                .ToList();
            if (bad.Count == 0) continue;
            var worst = bad.OrderByDescending(c => c.MaxUtilisation).ThenBy(c => c.Units[0]).First();
            // What runs at the same time and was reported by itself is the cause, unless this makes it worse.
            said[study.Demand.Name] = worst.MaxUtilisation;
            if (FabricWords.IsSaid(study, said, worst.MaxUtilisation)) continue;
            var map = study.Fabric.Map;
            var unit = study.Fabric.Failures[worst.Units[0]];
            judgement.Add(this, study.Demand.Span,
                $"'{study.Demand.Name}' fits while all works, and when {FabricWords.Failure(unit)} fails, "
                + $"{FabricWords.LinkName(map, worst.BusiestLink)} would be {FabricWords.Percent(worst.MaxUtilisation)} full; "
                + $"{FabricWords.Count(bad.Sum(c => (long)c.Size), "single failure")} of {study.Fabric.Failures.Length} do so; keep more "
                + "room, or accept it by a higher 'most-utilisation'",
                study.Demand.Name, bad.Sum(c => (long)c.Size), Severity.Warning,
                new Evidence("utilisation after one failure", worst.MaxUtilisation.Percent, limit.Percent, "%", null));
        }
    }
}
