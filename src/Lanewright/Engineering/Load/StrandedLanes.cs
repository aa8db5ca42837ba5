using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;

namespace Lanewright.Engineering.Load;

/// <summary>Lanes of a group's cages that are paid for and carry nothing: cages whose links use fewer lanes than they have, and cages that
/// stay dark because the silicon has no port left for them.</summary>
/// <param name="Group">The group.</param>
/// <param name="Cages">Cages in use with idle lanes, over all its devices.</param>
/// <param name="IdleLanes">Their idle lanes.</param>
/// <param name="AllLanes">All their lanes.</param>
/// <param name="Device">A device with such a cage; -1 where there is none.</param>
/// <param name="Cage">That cage.</param>
/// <param name="DarkCages">Cages of the device with most of them that no port of the silicon is left for.</param>
/// <param name="Ports">Ports the silicon has there.</param>
/// <param name="DarkDevice">That device; -1 where there is none.</param>
public sealed record StrandedLanes(
    DeviceGroup Group, int Cages, int IdleLanes, int AllLanes, int Device, int Cage, int DarkCages, int Ports, int DarkDevice)
{
    private const string Socket = "RJ45";

    /// <summary>All groups of switches with stranded lanes, in order.</summary>
    public static ImmutableArray<StrandedLanes> Of(Plan plan, LinkDesign design)
    {
        var used = new CagesInUse(plan);
        for (var link = 0; link < plan.Links.Count; link++)
        {
            Note(plan, design, link, isFrom: true, used);
            Note(plan, design, link, isFrom: false, used);
        }
        return [.. plan.Devices.Groups.Where(IsSwitch).Select(g => Of(g, used)).Where(s => s.Cages > 0 || s.DarkCages > 0)];
    }

    private static StrandedLanes Of(DeviceGroup group, CagesInUse used)
    {
        var found = new StrandedLanes(group, 0, 0, 0, -1, -1, 0, 0, -1);
        var (cages, idle, total) = (0, 0, 0);
        for (var device = group.First; device < group.First + group.Count; device++)
        {
            for (var cage = 0; cage < group.Layout.Slots.Length; cage++)
            {
                var (lanes, all) = (used.Lanes(device, cage), group.Layout.Slots[cage].Cage.Lanes);
                if (lanes <= 0 || lanes >= all) continue;
                if (cages++ == 0) found = found with { Device = device, Cage = cage };
                (idle, total) = (idle + all - lanes, total + all);
            }
            foreach (var ceiling in group.Layout.Ceilings) found = WithDark(found, device, ceiling, used);
        }
        return found with { Cages = cages, IdleLanes = idle, AllLanes = total };
    }

    private static bool IsSwitch(DeviceGroup group) => group.Model.Kind is not (DeviceKind.Host or DeviceKind.Panel);

    private static void Note(Plan plan, LinkDesign design, int link, bool isFrom, CagesInUse used)
    {
        var device = isFrom ? plan.Links.FromDevice(link) : plan.Links.ToDevice(link);
        var port = isFrom ? plan.Links.FromPort(link) : plan.Links.ToPort(link);
        // All parts of a split cage are of one mode, and one of them tells what the cage is used for.
        if (used.Ways(device, port.Cage) > 0) return;
        var group = plan.Devices.Group(device);
        if (!IsSwitch(group) || group.Layout.Slots[port.Cage].Cage.FormFactor.Name == Socket) return;
        var lanes = design.SolutionOf(link) is { } solution
            ? LanesPerPort(solution, design.Choices[design.ClassOf(link)].Class, isFrom, port.Ways) * port.Ways
            : 0;
        used.Note(device, port.Cage, lanes, port.Ways);
    }

    private static int LanesPerPort(Solution solution, LinkClass link, bool isFrom, int ways)
    {
        if ((isFrom ? solution.FromApplication : solution.ToApplication) is { } application) return application.Host.Lanes;
        if (solution.Cable is not AssemblyModel cable) return 0;
        var lanes = cable.Type?.Lanes ?? Math.Max(cable.Shows(isNear: true).Lanes, cable.Shows(isNear: false).Lanes);
        return link.Shape == FanShape.Straight ? Math.Max(1, lanes / ways) : lanes;
    }

    /// <summary>Where all ports of the silicon are taken, what is left of its cages can never be used.</summary>
    private static StrandedLanes WithDark(StrandedLanes known, int device, PortCeiling ceiling, CagesInUse used)
    {
        var (ports, dark) = (0, 0);
        for (var cage = ceiling.Start; cage < ceiling.Start + ceiling.Count; cage++)
        {
            if (known.Group.Layout.Slots[cage].Cage.FormFactor.Name == Socket) continue;
            ports += used.Ways(device, cage);
            if (used.Ways(device, cage) == 0) dark++;
        }
        return ports >= ceiling.Most && dark > known.DarkCages
            ? known with { DarkCages = dark, Ports = ceiling.Most, DarkDevice = device }
            : known;
    }
}
