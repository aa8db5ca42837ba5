using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Lines;
using Lanewright.Model.Links;

namespace Lanewright.Model.Binding;

/// <summary>Gives the modules of lines their ports: a whole cage each.</summary>
/// <param name="allotment">Where ports come from.</param>
/// <param name="firstId">Numbers of demands from here on are free.</param>
internal sealed class LinePortExpander(PortAllotment allotment, int firstId)
{
    /// <summary>Keeps the cages that lines name from being given to others.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="nameOf">Takes the name of what asks, by its number.</param>
    public void Reserve(ImmutableArray<LineStatement> lines, Dictionary<int, string> nameOf)
    {
        foreach (var line in lines)
        {
            if (line.FromEnd is not { } from || line.ToEnd is not { } to) continue;
            allotment.Reserve(from, Id(line, isFrom: true));
            allotment.Reserve(to, Id(line, isFrom: false));
            nameOf[Id(line, isFrom: true)] = nameOf[Id(line, isFrom: false)] = line.Name;
        }
    }

    /// <summary>The ports of all channels that get two. Channels of all routes, one route after the other, are dealt to the devices of a
    /// side in equal runs.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="reportShort">Told of a side, of ports missing by device, and of ports wanted by device.</param>
    public ImmutableArray<LinePort> Expand(
        ImmutableArray<LineStatement> lines, Action<EndDemand, Dictionary<int, int>, Dictionary<int, int>> reportShort)
    {
        var ports = ImmutableArray.CreateBuilder<LinePort>();
        foreach (var line in lines)
        {
            if (line.FromEnd is not { } near || line.ToEnd is not { } far) continue;
            var (from, to) = (Demand(line, near, far, isFrom: true), Demand(line, far, near, isFrom: false));
            var (shortFrom, shortTo) = (new Dictionary<int, int>(), new Dictionary<int, int>());
            var (wantedFrom, wantedTo) = (new Dictionary<int, int>(), new Dictionary<int, int>());
            var all = line.Routes * line.Channels;
            for (var k = 0; k < all; k++)
            {
                var a = near.Devices[(int)((long)k * near.Devices.Length / all)];
                var b = far.Devices[(int)((long)k * far.Devices.Length / all)];
                Count(wantedFrom, a);
                Count(wantedTo, b);
                var (portA, portB) = (allotment.Take(a, from), allotment.Take(b, to));
                if (portA is null) Count(shortFrom, a);
                if (portB is null) Count(shortTo, b);
                if (portA is { } here && portB is { } there)
                    ports.Add(new LinePort(line.Index, k / line.Channels, k % line.Channels, a, here, b, there));
            }
            reportShort(from, shortFrom, wantedFrom);
            reportShort(to, shortTo, wantedTo);
        }
        return ports.ToImmutable();
    }

    private int Id(LineStatement line, bool isFrom) => firstId + (2 * line.Index) + (isFrom ? 0 : 1);

    private EndDemand Demand(LineStatement line, LinkEnd end, LinkEnd far, bool isFrom)
    {
        var mode = new PortMode(1, line.Rate);
        var isListed = end.Groups.Any(g => g.Layout.Slots.Any(s => s.Cage.Modes.Contains(mode)));
        var demand = new EndDemand(Id(line, isFrom), line.Name, end, mode, isListed, LinkExpander.FormFactorsOf(far, line.Rate));
        allotment.Begin(demand);
        return demand;
    }

    private static void Count(Dictionary<int, int> counts, int device) => counts[device] = counts.GetValueOrDefault(device) + 1;
}
