using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Links on ways of their own that cross one another somewhere between their racks.</summary>
internal sealed class PairMeetsAtCrossing() : Rule("LW4107", nameof(PairMeetsAtCrossing), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var (book, plan) = (judgement.Pathways.Value, judgement.Plan);
        if (book.Net is not { } net) return;
        foreach (var set in book.Pairs.Where(p => !p.Crossings.IsEmpty).GroupBy(p => plan.Links.Statement(p.One)))
        {
            var first = set.First();
            var statement = plan.Statements[set.Key];
            judgement.Add(this, statement.Span,
                $"the two ways from rack {plan.Building.Racks[first.Rack].Name} have no stretch in common and meet at "
                + $"{Places.Of(net.Points[first.Crossings[0]])}, for {Numerals.Grouped(set.Count())} pairs of links; what falls or burns "
                + "there takes both: part the trays in height or lead one around",
                statement.Name, set.Count());
        }
    }
}
