using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules.Space;

namespace Lanewright.Rules.Power;

/// <summary>Racks with devices in a hall with feeds, and none of them leads there.</summary>
internal sealed class RackUnfed() : Rule("LW4403", nameof(RackUnfed), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Power.IsEmpty) return;
        var fed = judgement.Plan.Power.SelectMany(f => f.Racks).ToHashSet();
        foreach (var row in judgement.Racks.Value.Racks.GroupBy(r => (r.Rack.Hall, r.Rack.Row)))
        {
            var dark = row.Where(r => !fed.Contains(r.Rack.Index) && r.Maximum.Value > 0).ToList();
            if (dark.Count == 0 || row.Key.Hall is null) continue;
            // A hall without any feed is not planned yet; one with some has a gap.
            if (!judgement.Plan.Building.Racks.Any(r => r.Hall == row.Key.Hall && fed.Contains(r.Index))) continue;
            judgement.Add(this, RackPlaces.SpanOf(judgement, dark[0]),
                $"{RackPlaces.WithMore(dark[0].Rack.Name, dark.Count)} draws {Numerals.Shown(dark[0].Maximum.Value, "W")} and no feed "
                + "of the plan leads to it; add it to the racks of its feeds",
                dark[0].Rack.Name, dark.Count);
        }
    }
}
