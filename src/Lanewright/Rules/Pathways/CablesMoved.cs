using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Cables that go a longer way because a pathway on the shortest one is full.</summary>
internal sealed class CablesMoved() : Rule("LW4105", nameof(CablesMoved), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var book = judgement.Pathways.Value;
        foreach (var full in book.Detours.Moves.GroupBy(m => book.Fills[m.Full].Pathway))
        {
            var more = full.Sum(m => m.MoreMetres);
            var most = book.Fills[full.First().Full].Most(judgement.Plan.Standards);
            judgement.Add(this, full.Key.Span,
                $"'{full.Key.FullName}' has no room for {Numerals.Grouped(full.Count())} of the cables whose shortest way it is; they "
                + $"go other ways, {Numerals.Shown(more, "m")} longer in all, and cables.csv, patches.csv and trunks.csv name them under "
                + "'moved-off'; make it wider where that costs less",
                full.Key.Name, full.Count(), Kind.Severity, new Evidence("fill", null, most.Value, "", most.Source));
        }
    }
}
