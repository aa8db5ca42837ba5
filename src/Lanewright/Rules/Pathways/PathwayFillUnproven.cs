using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A tray or duct with cables in it whose diameter nobody states.</summary>
internal sealed class PathwayFillUnproven() : Rule("LW4119", nameof(PathwayFillUnproven), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var standards = judgement.Plan.Standards;
        foreach (var pathway in judgement.Pathways.Value.Fills.Where(f => f.Unknown > 0).GroupBy(f => f.Pathway))
        {
            var worst = pathway.MaxBy(f => f.Unknown) ?? pathway.First();
            var cables = judgement.Pathways.Value.Contents(worst.Segment)
                .Where(c => c.Cable.Diameter.Metres <= 0).Select(c => c.Cable.Name);
            var bears = pathway.Any(f => f.Unweighed > 0) && pathway.Key.LoadRating is not null ? ", and what it has to bear, are" : " is";
            var most = worst.Most(standards);
            judgement.Add(this, pathway.Key.Span,
                $"{Numerals.Grouped(worst.Unknown)} of the {Numerals.Grouped(worst.Cables)} cables in '{pathway.Key.FullName}' are of "
                + $"unknown diameter, so its fill{bears} unproven; state 'diameter' of {string.Join(", ", cables)} in a catalogue "
                + "of your own",
                pathway.Key.Name, worst.Unknown, Kind.Severity, new Evidence("fill", null, most.Value, "", most.Source));
        }
    }
}
