using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>Power that modules and cable ends draw from each device.</summary>
public sealed class ModulePower
{
    private readonly double[] watts;

    private ModulePower(int devices)
    {
        watts = new double[devices];
    }

    /// <summary>What the modules of a device draw together.</summary>
    public Watts Of(int device) => Watts.From(watts[device]);

    /// <summary>The power of a whole design.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">How its links are made.</param>
    /// <param name="lines">Its lines, whose modules and amplifiers draw power too; worked out where the plan says where they sit.</param>
    public static ModulePower Of(Plan plan, LinkDesign design, Lazy<LineBook> lines)
    {
        var power = new ModulePower(plan.Devices.Count);
        var links = plan.Links;
        for (var link = 0; link < links.Count; link++)
        {
            if (design.SolutionOf(link) is not { } solution) continue;
            var (from, to) = EndsOf(solution);
            // The first part of a split cage stands for what sits in it.
            if (links.FromPort(link).Part == 0) power.watts[links.FromDevice(link)] += from;
            if (links.ToPort(link).Part == 0) power.watts[links.ToDevice(link)] += to;
        }
        power.AddLines(plan, lines);
        return power;
    }

    private void AddLines(Plan plan, Lazy<LineBook> lines)
    {
        if (plan.Lines.All(l => l.FromEnd is null && l.FromShelves.IsEmpty && l.ToShelves.IsEmpty)) return;
        foreach (var port in plan.LinePorts)
        {
            if (lines.Value.RouteOf(port) is not { Terminals: var terminals }) continue;
            watts[port.FromDevice] += terminals.From?.Power.Value ?? 0;
            watts[port.ToDevice] += terminals.To?.Power.Value ?? 0;
        }
        foreach (var (shelf, (_, drawn)) in LineShelves.Of(plan, lines.Value)) watts[shelf] += drawn.Value;
    }

    /// <summary>The device of a group that gives its modules the most; none, and no power, of a group whose places are unknown.</summary>
    public (int Device, Watts Power) MostIn(DeviceGroup group)
    {
        if (group.Count == 0) return (-1, default);
        var device = group.First;
        for (var i = group.First; i < group.First + group.Count; i++)
            if (watts[i] > watts[device]) device = i;
        return (device, Watts.From(watts[device]));
    }

    private static (double From, double To) EndsOf(Solution solution)
    {
        if (solution.Cable is not AssemblyModel cable) return (solution.FromModule?.Power.Value ?? 0, solution.ToModule?.Power.Value ?? 0);
        return solution.IsTurned ? (cable.FarPower.Value, cable.NearPower.Value) : (cable.NearPower.Value, cable.FarPower.Value);
    }
}
