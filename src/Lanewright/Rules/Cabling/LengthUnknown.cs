using Lanewright.Quantities;

namespace Lanewright.Rules.Cabling;

/// <summary>Links whose length is neither stated nor follows from where their ends stand.</summary>
internal sealed class LengthUnknown() : Rule("LW1401", nameof(LengthUnknown))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var plan = judgement.Plan;
        foreach (var (statement, link) in judgement.Design.UnmeasuredLinks)
        {
            var from = plan.Links.FromDevice(link);
            var to = plan.Links.ToDevice(link);
            if (plan.Devices.Rack(from) is not null && plan.Devices.Rack(to) is not null) continue;
            var unplaced = plan.Devices.Rack(from) is null ? from : to;
            judgement.Add(this, plan.Statements[statement].Span,
                $"'{plan.Statements[statement].Name}' has no length and {plan.Devices.Name(unplaced)} has no place; "
                + "give the link a length or its groups racks",
                Numerals.Whole(statement));
        }
    }
}
