using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A tray that is fuller than planned for when new.</summary>
internal sealed class PathwayBeyondPlan() : Rule("LW4102", nameof(PathwayBeyondPlan), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty) return;
        var standards = judgement.Plan.Standards;
        foreach (var pathway in judgement.Pathways.Value.Fills.GroupBy(f => f.Pathway))
        {
            var fullest = pathway.MaxBy(f => f.Fill) ?? pathway.First();
            var planned = fullest.Planned(standards);
            if (!Rounding.IsAbove(fullest.Fill.Value, planned.Value)) continue;
            if (Rounding.IsAbove(fullest.Fill.Value, fullest.Most(standards).Value)) continue;
            judgement.Add(this, pathway.Key.Span,
                $"'{pathway.Key.FullName}' is {Numerals.Shown(fullest.Fill.Percent, "%")} full when new, and "
                + $"{Numerals.Shown(planned.Value * 100, "%")} is planned for, so that as much again can "
                + "follow; make it wider while it is cheap",
                pathway.Key.FullName, 1, Kind.Severity, new Evidence("fill", fullest.Fill.Value, planned.Value, "", planned.Source));
        }
    }
}
