using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Ducts in line that are too long to be pulled through at once.</summary>
internal sealed class DuctRunLong() : Rule("LW4112", nameof(DuctRunLong), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var most = judgement.Plan.Standards.Facility("duct", "run-most");
        foreach (var run in judgement.Pathways.Value.DuctRuns)
        {
            if (!Rounding.IsAbove(run.Metres, most.Value)) continue;
            judgement.Add(this, run.Ducts[0].Span,
                $"{Places.Of(run)} {Numerals.Shown(run.Metres, "m")} between places to pull from, and "
                + $"{Numerals.Shown(most.Value, "m")} is the most; put pull boxes in and say how many under 'pull-points'",
                run.Ducts[0].FullName, 1, Kind.Severity, new Evidence("run", run.Metres, most.Value, "m", most.Source));
        }
    }
}
