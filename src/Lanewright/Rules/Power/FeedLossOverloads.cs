using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>A strip that carries too much when another feed of its rack is lost.</summary>
internal sealed class FeedLossOverloads() : Rule("LW4402", nameof(FeedLossOverloads))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Power.IsEmpty) return;
        foreach (var feed in judgement.Strips.GroupBy(s => s.Feed))
        {
            // What is too much with all feeds up has been said.
            var over = feed.Where(s => Rounding.IsAbove(s.AfterLoss.Value, s.Limit.Value)
                && !Rounding.IsAbove(s.Highest.Value, s.Limit.Value)).ToList();
            if (over.MaxBy(s => s.AfterLoss) is not { Lost: { } lost } worst) continue;
            judgement.Add(this, feed.Key.Span,
                $"when '{lost.Name}' is lost, the strip of '{feed.Key.Name}' in rack {worst.Rack.Name}{More(over.Count)} carries "
                + $"{worst.AfterLoss} and may carry {worst.Limit} without end, so that it trips as well and the rack is dark; "
                + "keep each side below half of that, or "
                + "feed the rack "
                + "more. A licensed electrician decides under the local code",
                feed.Key.Name, over.Count, Kind.Severity,
                new Evidence("current after loss", worst.AfterLoss.Value, worst.Limit.Value, "A",
                    judgement.Plan.Policy.BreakerShare.Source));
        }
    }

    private static string More(int count) => count > 1 ? $" (and {Numerals.Whole(count - 1)} more)" : "";
}
