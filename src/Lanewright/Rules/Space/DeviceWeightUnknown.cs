using Lanewright.Engineering.Space;
using Lanewright.Findings;

namespace Lanewright.Rules.Space;

/// <summary>Models of which nobody states what they weigh, in racks or on floors that have a limit.</summary>
internal sealed class DeviceWeightUnknown() : Rule("LW4312", nameof(DeviceWeightUnknown), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var devices = judgement.Plan.Devices;
        var open =
            from rack in judgement.Racks.Value.Racks
            where rack.Rack.Type.WeightLimit is not null || rack.Rack.Hall.FloorLoad is not null
            from device in rack.Devices
            let @group = devices.Group(device)
            where !RackBook.IsWeightKnown(@group)
            group (rack.Rack, @group) by @group.Model.Name;
        foreach (var model in open)
        {
            var (rack, placed) = model.First();
            judgement.Add(this, placed.Span,
                $"what {model.Key} weighs is not stated, so whether {rack.Name} and its floor bear what stands there is unproven; state "
                + "'weight' in the catalogue",
                model.Key, model.LongCount(), Kind.Severity,
                new Evidence("weight", null, rack.Type.WeightLimit?.Kilograms, "kg", null));
        }
    }
}
