using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Exits that a route leads on from, and no pathway of the hall near them.</summary>
internal sealed class ExitFarFromPathway() : Rule("LW4121", nameof(ExitFarFromPathway), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Pathways.Value.Net is not { } net) return;
        var most = judgement.Plan.Standards.Facility("tray", "reach");
        var exits = judgement.Plan.Building.Routes
            .SelectMany(r => new[] { (Hall: r.From, Exit: r.FromExit), (Hall: r.To, Exit: r.ToExit) }).Distinct();
        foreach (var (hall, exit) in exits)
        {
            if (net.OffPathway(hall, exit) is not { } off || !Rounding.IsAbove(off, most.Value)) continue;
            var name = exit.Name.Length > 0 ? $"exit '{exit.Name}' of {hall.PlainName}" : $"the exit of {hall.PlainName}";
            judgement.Add(this, hall.Span,
                $"{name} is {Numerals.Shown(off, "m")} away from the nearest pathway, and cables hang in the open between; "
                + $"{Numerals.Shown(most.Value, "m")} is the most without support: lead a tray to the exit, or put the place of the exit "
                + "right",
                hall.FullName, 1, Kind.Severity, new Evidence("distance", off, most.Value, "m", most.Source));
        }
    }
}
