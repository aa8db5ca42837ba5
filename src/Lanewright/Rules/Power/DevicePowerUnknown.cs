using Lanewright.Engineering.Space;
using Lanewright.Findings;

namespace Lanewright.Rules.Power;

/// <summary>Models of which nobody states what they draw, where breakers, racks or cooling have a limit.</summary>
internal sealed class DevicePowerUnknown() : Rule("LW4413", nameof(DevicePowerUnknown), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var devices = judgement.Plan.Devices;
        var fed = judgement.Plan.Power.SelectMany(f => f.Racks).ToHashSet();
        var open =
            from rack in judgement.Racks.Value.Racks
            where rack.Rack.Type.PowerLimit is not null || rack.Rack.Hall.Cooling is not null || fed.Contains(rack.Rack.Index)
            from device in rack.Devices
            let @group = devices.Group(device)
            where !RackBook.IsPowerKnown(@group)
            group (rack.Rack, @group) by @group.Model.Name;
        foreach (var model in open)
        {
            var (rack, placed) = model.First();
            judgement.Add(this, placed.Span,
                $"what {model.Key} draws at the most is not stated, so whether breakers, cooling and {rack.Name} take it is unproven; "
                + "state 'maximum' in the catalogue",
                model.Key, model.LongCount(), Kind.Severity,
                new Evidence("power", null, rack.Type.PowerLimit?.Value, "W", null));
        }
    }
}
