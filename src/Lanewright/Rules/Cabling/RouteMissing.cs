using Lanewright.Quantities;

namespace Lanewright.Rules.Cabling;

/// <summary>Links between halls that no routes join, not even one after the other.</summary>
internal sealed class RouteMissing() : Rule("LW1402", nameof(RouteMissing))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var plan = judgement.Plan;
        foreach (var (statement, link) in judgement.Design.UnmeasuredLinks)
        {
            if (plan.Devices.Rack(plan.Links.FromDevice(link)) is not { } from) continue;
            if (plan.Devices.Rack(plan.Links.ToDevice(link)) is not { } to) continue;
            // The route that is missed may be one that could not be read, which has been reported.
            if (plan.Building.HasFaultyRoutes) continue;
            judgement.Add(this, plan.Statements[statement].Span,
                $"'{plan.Statements[statement].Name}' runs from {from.Hall.FullName} to {to.Hall.FullName} "
                + "and no route joins the two; add one under 'routes'",
                Numerals.Whole(statement));
        }
    }
}
