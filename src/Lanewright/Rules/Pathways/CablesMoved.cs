using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Rules.Pathways;

/// <summary>Cables that go a longer way because a pathway on the shortest one is full or bears no more.</summary>
internal sealed class CablesMoved() : Rule("LW4105", nameof(CablesMoved), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var book = judgement.Pathways.Value;
        foreach (var full in book.Detours.Moves.GroupBy(m => (book.Fills[m.Full].Pathway, m.IsForLoad)))
        {
            var ((pathway, isForLoad), more) = (full.Key, full.Sum(m => m.MoreMetres));
            var most = book.Fills[full.First().Full].Most(judgement.Plan.Standards);
            judgement.Add(this, pathway.Span,
                $"'{pathway.FullName}' {(isForLoad ? "cannot bear" : "has no room for")} {Numerals.Grouped(full.Count())} of the cables "
                + $"whose shortest way it is; they go other ways, {Numerals.Shown(more, "m")} longer in all, and cables.csv, patches.csv "
                + "and trunks.csv name them under 'moved-off'; "
                + $"{(isForLoad ? "set its supports closer" : "make it wider")} where that costs less",
                pathway.Name, full.Count(), Kind.Severity,
                isForLoad
                    ? new Evidence("weight", null, pathway.LoadRating, "kg/m", Citation.OfPlan)
                    : new Evidence("fill", null, most.Value, "", most.Source));
        }
    }
}
