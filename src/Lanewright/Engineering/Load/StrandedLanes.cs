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
        var groups = plan.Devices.Groups.Select(g => new StrandedLanes(g, 0, 0, 0, -1, -1, 0, 0, -1)).ToArray();
        var used = new Dictionary<(int Device, int Cage), (int Lanes, int Ways)>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            Note(plan, design, link, isFrom: true, used);
            Note(plan, design, link, isFrom: false, used);
        }
        foreach (var ((device, cage), (lanes, _)) in used.OrderBy(u => u.Key))
        {
            var group = plan.Devices.Group(device);
            var all = group.Layout.Slots[cage].Cage.Lanes;
            if (lanes <= 0 || lanes >= all) continue;
            var known = groups[group.Index];
            groups[group.Index] = known with
            {
                Cages = known.Cages + 1,
                IdleLanes = known.IdleLanes + all - lanes,
                AllLanes = known.AllLanes + all,
                Device = known.Device < 0 ? device : known.Device,
                Cage = known.Device < 0 ? cage : known.Cage,
            };
        }
        foreach (var group in plan.Devices.Groups.Where(IsSwitch)) groups[group.Index] = WithDark(groups[group.Index], used);
        return [.. groups.Where(g => g.Cages > 0 || g.DarkCages > 0)];
    }

    private static bool IsSwitch(DeviceGroup group) => group.Model.Kind != DeviceKind.Host;

    /// <summary>Lanes in use for each cage of a switch; 0 where it is not known how a link is made.</summary>
    private static void Note(
        Plan plan, LinkDesign design, int link, bool isFrom, Dictionary<(int Device, int Cage), (int Lanes, int Ways)> used)
    {
        var device = isFrom ? plan.Links.FromDevice(link) : plan.Links.ToDevice(link);
        var port = isFrom ? plan.Links.FromPort(link) : plan.Links.ToPort(link);
        var group = plan.Devices.Group(device);
        if (!IsSwitch(group) || group.Layout.Slots[port.Cage].Cage.FormFactor.Name == Socket) return;
        var lanes = design.SolutionOf(link) is { } solution
            ? LanesPerPort(solution, design.Choices[design.ClassOf(link)].Class, isFrom, port.Ways) * port.Ways
            : 0;
        used[(device, port.Cage)] = (Math.Max(lanes, used.GetValueOrDefault((device, port.Cage)).Lanes), port.Ways);
    }

    private static int LanesPerPort(Solution solution, LinkClass link, bool isFrom, int ways)
    {
        if ((isFrom ? solution.FromApplication : solution.ToApplication) is { } application) return application.Host.Lanes;
        if (solution.Cable is not AssemblyModel cable) return 0;
        var lanes = cable.Type?.Lanes ?? Math.Max(cable.Shows(isNear: true).Lanes, cable.Shows(isNear: false).Lanes);
        return link.Shape == FanShape.Straight ? Math.Max(1, lanes / ways) : lanes;
    }

    /// <summary>Where all ports of the silicon are taken, what is left of its cages can never be used.</summary>
    private static StrandedLanes WithDark(
        StrandedLanes known, Dictionary<(int Device, int Cage), (int Lanes, int Ways)> used)
    {
        foreach (var ceiling in known.Group.Layout.Ceilings)
        {
            for (var device = known.Group.First; device < known.Group.First + known.Group.Count; device++)
            {
                var (ports, dark) = (0, 0);
                for (var cage = ceiling.Start; cage < ceiling.Start + ceiling.Count; cage++)
                {
                    if (known.Group.Layout.Slots[cage].Cage.FormFactor.Name == Socket) continue;
                    if (used.TryGetValue((device, cage), out var use)) ports += use.Ways;
                    else dark++;
                }
                if (ports >= ceiling.Most && dark > known.DarkCages)
                    known = known with { DarkCages = dark, Ports = ceiling.Most, DarkDevice = device };
            }
        }
        return known;
    }
}
