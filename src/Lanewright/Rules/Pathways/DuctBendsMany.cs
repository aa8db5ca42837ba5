using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Ducts in line that turn too often for cables to be pulled through at once.</summary>
internal sealed class DuctBendsMany() : Rule("LW4120", nameof(DuctBendsMany), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var most = judgement.Plan.Standards.Facility("duct", "turn-most");
        foreach (var run in judgement.Pathways.Value.DuctRuns.Where(r => r.Degrees > most.Value + Rounding))
            judgement.Add(this, run.Ducts[0].Span,
                $"{Places.Of(run)} through {Numerals.Whole((long)Math.Round(run.Degrees))} degrees of bends between places to pull from, "
                + $"and {Numerals.Whole((long)most.Value)} are the most: two bends of 90; put a pull box in and say so under 'pull-points'",
                run.Ducts[0].FullName, 1, Kind.Severity, new Evidence("turn", run.Degrees, most.Value, "degrees", most.Source));
    }

    private const double Rounding = 1e-6;
}
