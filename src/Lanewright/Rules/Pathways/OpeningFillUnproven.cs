using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>An opening in a wall whose fill the fire-stopping system may not allow.</summary>
internal sealed class OpeningFillUnproven() : Rule("LW4117", nameof(OpeningFillUnproven), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var least = judgement.Plan.Standards.Facility("opening", "least-fill");
        foreach (var fill in judgement.Pathways.Value.Fills
            .Where(f => f.Pathway.Route is not null && Rounding.IsAbove(f.Fill.Value, least.Value)))
            judgement.Add(this, fill.Pathway.Span,
                $"'{fill.Pathway.FullName}' leaves one hall and enters another "
                + $"{Numerals.Shown(fill.Fill.Percent, "%")} full; where it passes "
                + "a rated wall or floor the listed fire-stopping system has a fill of its own, "
                + $"{Numerals.Shown(least.Value * 100, "%")} in one that was read: ask for its sheet, and have openings closed again after "
                + "each change by those licensed for it, under local code",
                fill.Pathway.Name, 1, Kind.Severity, new Evidence("fill", fill.Fill.Value, least.Value, "", least.Source));
    }
}
