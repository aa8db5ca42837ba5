using Lanewright.Engineering.Power;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>A strip that carries more than its breaker may for long, with all feeds up.</summary>
internal sealed class BreakerOverloaded() : Rule("LW4401", nameof(BreakerOverloaded))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Power.IsEmpty) return;
        foreach (var feed in judgement.Strips.GroupBy(s => s.Feed))
        {
            var over = feed.Where(s => Rounding.IsAbove(s.Highest.Value, s.Limit.Value)).ToList();
            if (over.Count == 0) continue;
            var worst = over.MaxBy(s => s.Highest) ?? over[0];
            // A breaker that does while all feeds are up and trips with one lost is no cure.
            var least = BreakerRule.Least(worst.AfterLoss, default, judgement.Plan.Policy.BreakerShare.Value);
            var afterLoss = worst.Lost is null ? "" : $" for the {worst.AfterLoss} it carries when '{worst.Lost.Name}' is lost";
            var more = over.Count > 1 ? $" (and {Numerals.Whole(over.Count - 1)} more)" : "";
            judgement.Add(this, feed.Key.Span,
                $"the strip of '{feed.Key.Name}' in rack {worst.Rack.Name}{more} carries {worst.Highest} with all feeds up and "
                + $"may carry {worst.Limit} "
                + $"without end (breaker {feed.Key.Breaker}); it would take a breaker of {least}{afterLoss}, another feed, or fewer "
                + "devices. A licensed electrician decides under the local code",
                feed.Key.Name, over.Count, Kind.Severity,
                new Evidence("current", worst.Highest.Value, worst.Limit.Value, "A", judgement.Plan.Policy.BreakerShare.Source));
        }
    }
}
