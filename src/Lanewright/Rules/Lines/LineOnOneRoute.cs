using Lanewright.Engineering.Lines;
using Lanewright.Findings;
using Lanewright.Engineering.Lines.Routes;
using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>A line whose one cut takes all of it.</summary>
internal sealed class LineOnOneRoute() : LineRule("LW5130", nameof(LineOnOneRoute), Severity.Advice)
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        if (line.Statement.Routes > 1 || line.Routes is not [{ Carries: true }]) return;
        Say(judgement, line, $"it has one route, and any cut takes all {line.Capacity} of it; cuts and sites take it about "
            + $"{Numerals.Plain(Math.Round(RouteAvailability.MinutesDown(line.Availability)))} minutes a year at the rates of the policy; "
            + "'routes: 2' asks for a second one");
    }
}
