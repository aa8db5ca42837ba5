using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A line whose wanted availability is reckoned with sites of which nobody says how much of the time they work.</summary>
internal sealed class SitesTakenAsUp() : LineRule("LW5139", nameof(SitesTakenAsUp), Severity.Advice)
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Statement.AvailabilityLeast is null || judgement.Plan.Policy.SiteAvailability is not null) return;
        var silent = line.Routes.SelectMany(r => r.Sites).Where(s => s.Availability is null).Select(s => s.Name).Distinct().ToList();
        if (silent.Count == 0) return;
        Say(judgement, line, $"its availability counts cuts of fibre alone, as if {string.Join(", ", silent)} were always up: power, "
            + "cooling and entries take more from a line than fibre does; state 'site-availability' in the policy, or 'availability' of "
            + "each site");
    }
}
