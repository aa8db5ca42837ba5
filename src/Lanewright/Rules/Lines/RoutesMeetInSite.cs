using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>Two routes through one site between the ends.</summary>
internal sealed class RoutesMeetInSite() : LineRule("LW5126", nameof(RoutesMeetInSite), Severity.Warning)
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Routes is not [var first, var second]) return;
        var met = first.Sites[1..^1].Intersect(second.Sites[1..^1]).Select(s => s.Name).ToList();
        if (met.Count == 0) return;
        Say(judgement, line, $"both routes come by {string.Join(" and ", met)}: what takes the site takes the line; keep apart what "
            + "feeds and cools the two, or lead one past it");
    }
}
