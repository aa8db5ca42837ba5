using Lanewright.Engineering.Pathways;
using Lanewright.Findings;

namespace Lanewright.Rules.Pathways;

/// <summary>Links that are to go ways of their own and cannot, because all ways lead through one stretch.</summary>
internal sealed class PairSharesStretch() : Rule("LW4106", nameof(PairSharesStretch))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var (book, plan) = (judgement.Pathways.Value, judgement.Plan);
        var together = book.Pairs.Where(p => p.IsTogether);
        foreach (var set in together.GroupBy(p => (plan.Links.Statement(p.One), What: Common(book, p), p.IsProven, p.IsPatched)))
        {
            var first = set.First();
            var statement = plan.Statements[set.Key.Item1];
            var (what, where) = (set.Key.What, first.Shared.IsEmpty ? "" : " " + Places.Of(book.Fills[first.Shared[0]]));
            judgement.Add(this, statement.Span,
                $"{FarEnds(judgement, first)} are to go ways of their own, and "
                + (first.IsPatched
                    ? $"both go through '{what}'{where} with their cords and trunks, which are laid each by itself: give the sets, or the "
                        + "trunks, pathways of two sides"
                    : first.IsProven && AreOfOneSide(plan, first)
                    ? $"every way between leads through '{what}'{where}: without it no two ways are left; lay a second way around it"
                    : first.IsProven
                    ? $"their sides have no two ways apart: both go through '{what}'{where}; lay one around it"
                    : $"both go through '{what}'{where}: no way round it was found for the one while the other keeps its way; lay one, "
                        + "make room on another")
                + ", or take 'apart-from' back",
                statement.Name, set.Count(), Kind.Severity, new Evidence("ways without a stretch in common", 1, 2, "", null));
        }
    }

    private static bool AreOfOneSide(Model.Plan plan, ApartPair pair) =>
        plan.Statements[plan.Links.Statement(pair.One)].Side == plan.Statements[plan.Links.Statement(pair.Other)].Side;

    private static string Common(PathwayBook book, ApartPair pair) =>
        pair.Shared.IsEmpty ? pair.Route?.Name ?? "" : book.Fills[pair.Shared[0]].Pathway.FullName;

    private static string FarEnds(Judgement judgement, ApartPair pair)
    {
        var plan = judgement.Plan;
        return $"the cables of {plan.Devices.Name(plan.Links.FromDevice(pair.One))} to {plan.Devices.Name(plan.Links.ToDevice(pair.One))} "
            + $"and {plan.Devices.Name(plan.Links.FromDevice(pair.Other))} to {plan.Devices.Name(plan.Links.ToDevice(pair.Other))}";
    }
}
