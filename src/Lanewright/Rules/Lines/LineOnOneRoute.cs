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
        var silent = judgement.Plan.Policy.SiteAvailability is null
            ? line.Routes[0].Sites.Where(s => s.Availability is null).Select(s => s.Name).ToList()
            : [];
        var counted = silent.Count == line.Routes[0].Sites.Length ? "cuts of fibre" : "cuts and sites";
        var taken = silent.Count > 0 ? $", {string.Join(", ", silent)} taken as always up" : "";
        Say(judgement, line, $"it has one route, and any cut takes all {line.Capacity} of it; {counted} take it about "
            + $"{Numerals.Plain(Math.Round(RouteAvailability.MinutesDown(line.Availability)))} minutes a year at the rates of the "
            + $"policy{taken}; 'routes: 2' asks for a second one");
    }
}
