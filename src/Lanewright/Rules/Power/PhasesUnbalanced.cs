using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>Strips of three phases that are loaded unevenly and well.</summary>
internal sealed class PhasesUnbalanced() : Rule("LW4410", nameof(PhasesUnbalanced), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Power.All(f => f.Phases == 1)) return;
        var most = judgement.Plan.Standards.Facility("power", "unbalance").As(Share.FromPercent);
        foreach (var feed in judgement.Strips.Where(s => s.Feed.Phases > 1).GroupBy(s => s.Feed))
        {
            // One small device on a large strip is uneven and harms nobody.
            var uneven = feed.Where(s => s.Unbalance > most.Value && s.Highest > s.Limit * 0.5).ToList();
            if (uneven.MaxBy(s => s.Unbalance) is not { } worst) continue;
            judgement.Add(this, feed.Key.Span,
                $"the fullest phase of '{feed.Key.Name}' in rack {worst.Rack.Name} carries {worst.Highest}, "
                + $"{Numerals.Shown(Math.Round(worst.Unbalance.Percent), "%")} above the mean of the three; "
                + (worst.IsBestOrder ? "even with the best order of outlets" : "with the best order of outlets that was found")
                + " devices this large do not share evenly: mix large and small ones, or take strips of one phase. A licensed "
                + "electrician decides under the local code",
                feed.Key.Name, uneven.Count, Kind.Severity,
                new Evidence("unbalance", worst.Unbalance.Percent, most.Value.Percent, "%", most.Source));
        }
    }
}
