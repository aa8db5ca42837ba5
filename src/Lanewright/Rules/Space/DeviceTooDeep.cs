using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>Devices that are deeper than their rack.</summary>
internal sealed class DeviceTooDeep() : Rule("LW4303", nameof(DeviceTooDeep), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var group in judgement.Plan.Devices.Groups)
        {
            if (group.Model.Depth.Metres <= 0 || group.Count == 0) continue;
            var shallow = Enumerable.Range(group.First, group.Count)
                .Select(judgement.Plan.Devices.Rack)
                .FirstOrDefault(r => r is not null && Rounding.IsAbove(group.Model.Depth.Millimetres, r.Type.DeviceDepth.Millimetres));
            if (shallow is null) continue;
            judgement.Add(this, group.Span,
                $"{group.Model.Name} is {Numerals.Shown(group.Model.Depth.Millimetres, "mm")} deep and rack {shallow.Name} leaves "
                + $"{Numerals.Shown(shallow.Type.DeviceDepth.Millimetres, "mm")} behind its front posts; take deeper racks, or move "
                + "the posts and "
                + "look at what is left for plugs in front",
                group.Name, group.Count, Kind.Severity,
                new Evidence("depth", group.Model.Depth.Millimetres, shallow.Type.DeviceDepth.Millimetres, "mm", null));
        }
    }
}
