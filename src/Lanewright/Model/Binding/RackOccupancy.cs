using Lanewright.Findings;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;

namespace Lanewright.Model.Binding;

/// <summary>Reports devices that stand in one another or outside their racks.</summary>
internal static class RackOccupancy
{
    /// <summary>Checks every rack once; a group is reported once.</summary>
    public static void Check(DeviceTable devices, Building building, FindingSink findings)
    {
        var taken = new int[building.Racks.Length][];
        var reported = new HashSet<(int, int)>();
        for (var device = 0; device < devices.Count; device++)
        {
            if (devices.Rack(device) is not { } rack) continue;
            var group = devices.Group(device);
            if (group.IsFaulty) continue;
            var from = devices.Unit(device);
            var to = from + group.Model.Units - 1;
            if (to > rack.Type.Units)
            {
                if (reported.Add((group.Index, -1)))
                    findings.Add(ModelFindings.RackUnitOutside, group.Span,
                        $"{devices.Name(device)} needs units {from} to {to} of {rack.Name}, which has {rack.Type.Units}");
                to = rack.Type.Units;
            }
            var units = taken[rack.Index] ??= NewRack(rack.Type.Units);
            for (var unit = from; unit <= to; unit++)
            {
                if (units[unit] >= 0)
                {
                    Report(devices, rack, unit, units[unit], device, reported, findings);
                    break;
                }
                units[unit] = device;
            }
        }
    }

    private static int[] NewRack(int units)
    {
        var rack = new int[units + 1];
        Array.Fill(rack, -1);
        return rack;
    }

    private static void Report(
        DeviceTable devices, Rack rack, int unit, int first, int second, HashSet<(int, int)> reported, FindingSink findings)
    {
        var pair = (devices.Group(first).Index, devices.Group(second).Index);
        if (!reported.Add(pair)) return;
        findings.Add(new Finding(ModelFindings.RackUnitTaken, Severity.Error, devices.Group(second).Span,
            $"unit {unit} of {rack.Name} is wanted by {devices.Name(first)} and by {devices.Name(second)}; "
            + "change 'unit' or 'step' of one of them")
        {
            Related = [new RelatedPlace(devices.Group(first).Span, $"{devices.Name(first)} is placed here")],
        });
    }
}
