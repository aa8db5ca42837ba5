using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A duct too long to be pulled through at once.</summary>
internal sealed class DuctRunLong() : Rule("LW4112", nameof(DuctRunLong), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var most = judgement.Plan.Standards.Facility("duct", "run-most");
        foreach (var duct in judgement.Plan.Building.Pathways.Where(p => p.IsDuct))
        {
            var run = duct.Length.Metres / (duct.PullPoints + 1);
            if (run <= most.Value) continue;
            judgement.Add(this, duct.Span,
                $"'{duct.FullName}' runs {Numerals.Shown(run, "m")} between places to pull from, and "
                + $"{Numerals.Shown(most.Value, "m")} is the most; put pull boxes in and say how many under 'pull-points'",
                duct.Name, 1, Kind.Severity, new Evidence("run", run, most.Value, "m", most.Source));
        }
    }
}
