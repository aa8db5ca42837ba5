using Lanewright.Engineering.Pathways;
using Lanewright.Findings;
using Lanewright.Model.Plant;

namespace Lanewright.Rules.Pathways;

/// <summary>Trunks of two sides that join the same racks and lie in one stretch, which has no side.</summary>
internal sealed class TrunkSidesShareStretch() : Rule("LW4122", nameof(TrunkSidesShareStretch), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var (plan, book) = (judgement.Plan, judgement.Pathways.Value);
        if (book.Net is null) return;
        var byRacks = plan.Trunks.Where(t => t.Side.Length > 0).GroupBy(t => Racks(t.From, t.To)).Where(g => g.Key.One != g.Key.Other);
        foreach (var group in byRacks)
        {
            var trunks = group.ToList();
            var shared =
                from first in trunks
                from second in trunks
                where first.Index < second.Index && first.Side != second.Side
                let common = Stretches(first).Intersect(Stretches(second)).Order().Select(s => book.Fills[s]).ToList()
                where common.Count > 0
                select (first, second, common);
            foreach (var (first, second, common) in shared)
                judgement.Add(this, second.Span,
                    $"trunks '{first.Name}' of side '{first.Side}' and '{second.Name}' of side '{second.Side}' both lie in "
                    + $"'{common[0].Pathway.FullName}' {Places.Of(common[0])}, which has no side: what cuts it takes both; give it a side "
                    + "and lay another, or lay one around it",
                    $"{first.Name}/{second.Name}", common.Count);
        }

        (int One, int Other) Racks(int from, int to)
        {
            var (a, b) = (plan.Devices.RackIndex(from), plan.Devices.RackIndex(to));
            return (Math.Min(a, b), Math.Max(a, b));
        }

        IEnumerable<int> Stretches(TrunkGroup trunk) =>
            Enumerable.Range(0, trunk.Count).SelectMany(n => book.StretchesOf(new CableKey(CableKind.Trunk, trunk.Index, n))).Distinct();
    }
}
