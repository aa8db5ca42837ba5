using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Rules.Power;

/// <summary>Hosts that draw from one feed alone.</summary>
internal sealed class HostsOnOneFeed() : Rule("LW4412", nameof(HostsOnOneFeed), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var group in judgement.Plan.Devices.Groups.Where(g => g.Model.Kind == DeviceKind.Host && g.Feeds.Length == 1))
        {
            var who = group.Count == 1 ? "it is" : $"all {Numerals.Grouped(group.Count)} are";
            judgement.Add(this, group.Span,
                $"'{group.Name}' draws from feed {group.Feeds[0]} alone, and when that is lost {who} dark; name a second feed for the "
                + "second supply, or know that it is so",
                group.Name, group.Count);
        }
    }
}
