using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules.Space;

namespace Lanewright.Rules.Power;

/// <summary>Racks that hang on one feed.</summary>
internal sealed class RackOnOneFeed() : Rule("LW4404", nameof(RackOnOneFeed), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Power.IsEmpty) return;
        var feeds = judgement.Plan.Power.SelectMany(f => f.Racks).CountBy(r => r).ToDictionary(r => r.Key, r => r.Value);
        foreach (var row in judgement.Racks.Value.Racks.GroupBy(r => (r.Rack.Hall, r.Rack.Row)))
        {
            var single = row.Where(r => feeds.GetValueOrDefault(r.Rack.Index) == 1).ToList();
            if (single.Count == 0) continue;
            judgement.Add(this, RackPlaces.SpanOf(judgement, single[0]),
                $"rack {single[0].Rack.Name}"
                + (single.Count > 1 ? $" and {Numerals.Whole(single.Count - 1)} more of its row hang" : " hangs") + " on one "
                + "feed, and its breaker takes all that stands there; lead a second feed there, or know that it is so",
                single[0].Rack.Name, single.Count);
        }
    }
}
