using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>An aisle in which nobody can work at racks.</summary>
internal sealed class AisleNarrow() : Rule("LW4311", nameof(AisleNarrow), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var standards = judgement.Plan.Standards;
        var (front, rear) = (standards.Facility("aisle", "front-least"), standards.Facility("aisle", "rear-least"));
        foreach (var aisle in Aisle.Of(judgement.Plan).Where(a => Rounding.IsBelow(a.Clear.Metres, front.Value)))
        {
            var isNarrow = Rounding.IsBelow(aisle.Clear.Metres, rear.Value);
            var least = isNarrow ? rear : front;
            judgement.Add(this, aisle.Near.Hall.Span,
                $"{Numerals.Shown(aisle.Clear.Metres, "m")} are clear between rows {aisle.Near.Row} and {aisle.Far.Row} of "
                + $"{aisle.Near.Hall.Name}, and {Numerals.Shown(least.Value, "m")} is the least "
                + (isNarrow ? "behind racks" : "in front of racks, so no front may stand to it")
                + "; move the rows apart. Ways out of a building are for its fire code and those licensed for it",
                $"{aisle.Near.Hall.Name}/{aisle.Far.Row}", 1, isNarrow ? Kind.Severity : Severity.Advice,
                new Evidence("aisle", aisle.Clear.Metres, least.Value, "m", least.Source));
        }
    }
}
