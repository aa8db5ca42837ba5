using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>A line that is cut for more of the time than it may be.</summary>
internal sealed class LineUnavailable() : LineRule("LW5129", nameof(LineUnavailable))
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Statement.AvailabilityLeast is not { } least || line.Routes.IsEmpty || line.Availability >= least) return;
        Say(judgement, line, $"cuts and sites leave it {LineWords.Percent(line.Availability)} of the time, and {least} are "
            + "wanted; add a second route, or have cuts repaired faster, or feed and cool its sites better",
            new Evidence("availability", LineWords.CutOff(line.Availability), least.Percent, "%", judgement.Plan.Policy.FibreCuts.Source));
    }
}
