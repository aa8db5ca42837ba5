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
        var shared = book.Detours.Pairs.Where(p => !p.Shared.IsEmpty);
        foreach (var set in shared.GroupBy(p => (plan.Links.Statement(p.One), Pathway: book.Fills[p.Shared[0]].Pathway)))
        {
            var first = set.First();
            var statement = plan.Statements[set.Key.Item1];
            judgement.Add(this, statement.Span,
                $"{FarEnds(judgement, first)} are to go ways of their own, and every way between leads through "
                + $"'{set.Key.Pathway.FullName}' {Places.Of(book.Fills[first.Shared[0]])}: without that stretch no two ways are left; "
                + "lay a second way around it, or take 'apart-from' back",
                statement.Name, set.Count(), Kind.Severity, new Evidence("ways without a stretch in common", 1, 2, "", null));
        }
    }

    private static string FarEnds(Judgement judgement, ApartPair pair)
    {
        var plan = judgement.Plan;
        return $"the cables of {plan.Devices.Name(plan.Links.FromDevice(pair.One))} to {plan.Devices.Name(plan.Links.ToDevice(pair.One))} "
            + $"and {plan.Devices.Name(plan.Links.FromDevice(pair.Other))} to {plan.Devices.Name(plan.Links.ToDevice(pair.Other))}";
    }
}
