using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;

namespace Lanewright.Model.Binding;

/// <summary>Gives out ports, in an order that depends on names and never on the order of the text.</summary>
internal sealed class PortAllotment
{
    private const byte Lost = 255;

    private readonly DeviceTable devices;
    private readonly FindingSink findings;
    private readonly int[] offset;
    private readonly byte[] ways;
    private readonly byte[] used;
    private readonly int[] demandOf;
    private readonly int[] cursor;
    private readonly int[] cursorOf;
    private readonly Dictionary<(int Group, int Cage), List<(int Demand, HashSet<int>? Devices)>> reserved = [];
    private readonly Dictionary<int, Quantities.BitRate> rateOfDemand = [];
    private readonly HashSet<(int Demand, string Code)> reported = [];

    public PortAllotment(DeviceTable devices, FindingSink findings)
    {
        this.devices = devices;
        this.findings = findings;
        offset = new int[devices.Count + 1];
        for (var i = 0; i < devices.Count; i++) offset[i + 1] = offset[i] + devices.Group(i).Layout.Slots.Length;
        ways = new byte[offset[^1]];
        used = new byte[offset[^1]];
        demandOf = new int[offset[^1]];
        cursor = new int[devices.Count];
        cursorOf = new int[devices.Count];
        Array.Fill(demandOf, -1);
        Array.Fill(cursorOf, -1);
    }

    /// <summary>Makes a side known before its first port is taken.</summary>
    public void Begin(EndDemand demand) => rateOfDemand[demand.Id] = demand.Mode.Rate;

    /// <summary>Keeps the cages a side names from being given to others.</summary>
    public void Reserve(LinkEnd end, int demand)
    {
        if (end.Ports is not { } ports) return;
        foreach (var group in end.Groups)
        {
            var named = end.Devices.Where(d => devices.Group(d).Index == group.Index).ToHashSet();
            var entry = (Demand: demand, Devices: named.Count == group.Count ? null : named);
            foreach (var number in ports.Numbers)
            {
                if (number > group.Layout.Slots.Length)
                {
                    findings.Add(ModelFindings.PortUnknown, end.Span,
                        $"{group.Name} has no port {number}: {group.Model.Name} with its cards has {group.Layout.Slots.Length}");
                    break;
                }
                var key = (group.Index, number - 1);
                if (!reserved.TryGetValue(key, out var entries)) reserved[key] = entries = [];
                entries.Add(entry);
            }
        }
    }

    /// <summary>Whether so many cages of a device could still be opened in a mode by a side.</summary>
    public bool HasFreeCages(int device, PortMode mode, int least, LinkEnd end, int demand)
    {
        var group = devices.Group(device);
        var free = 0;
        for (var cage = 0; free < least && cage < group.Layout.Slots.Length; cage++)
        {
            var model = group.Layout.Slots[cage].Cage;
            if (!model.Modes.Contains(mode) || ways[offset[device] + cage] != 0) continue;
            if (end.Ports is { } ports ? !ports.Numbers.Contains(cage + 1) : IsReservedByOther(device, group, cage, demand)) continue;
            if (model.NeighbourLost.Contains(mode) && !(IsOdd(group, cage) && IsNeighbourFree(device, group, cage, demand))) continue;
            free++;
        }
        return free >= least;
    }

    /// <summary>The next port of a device for a side, or null when none is left.</summary>
    public PortPlace? Take(int device, EndDemand demand)
    {
        if (cursorOf[device] != demand.Id)
        {
            cursorOf[device] = demand.Id;
            cursor[device] = 0;
        }
        var group = devices.Group(device);
        var suitable = demand.SuitableCages(group);
        for (; cursor[device] < suitable.Length; cursor[device]++)
        {
            var cage = cursor[device];
            if (!suitable[cage]) continue;
            var at = offset[device] + cage;
            if (ways[at] == 0 && CanOpen(device, group, cage, demand)) Open(device, group, cage, demand);
            if (demandOf[at] == demand.Id && used[at] < ways[at]) return new PortPlace((short)cage, used[at]++, ways[at]);
        }
        return null;
    }

    /// <summary>Whether a side has been told already why it gets no port.</summary>
    public bool IsExplained(EndDemand demand) => reported.Contains((demand.Id, PortFindings.NeighbourPortLost.Code));

    /// <summary>The first cage a side names that another side holds, with the number of that side; null when none is held.</summary>
    public (string Label, int Holder)? Held(int device, EndDemand demand)
    {
        var slots = devices.Group(device).Layout.Slots;
        foreach (var number in demand.End.Ports?.Numbers ?? [])
        {
            if (number > slots.Length) break;
            var at = offset[device] + number - 1;
            if (ways[at] is not (0 or Lost) && demandOf[at] != demand.Id) return (slots[number - 1].Label, demandOf[at]);
        }
        return null;
    }

    /// <summary>Parts in use and parts opened, over a stretch of a device's cages.</summary>
    public (int Used, int Opened) Ports(int device, PortCeiling stretch)
    {
        var inUse = 0;
        var opened = 0;
        for (var at = offset[device] + stretch.Start; at < offset[device] + stretch.Start + stretch.Count; at++)
        {
            if (ways[at] is 0 or Lost) continue;
            inUse += used[at];
            opened += ways[at];
        }
        return (inUse, opened);
    }

    private bool CanOpen(int device, DeviceGroup group, int cage, EndDemand demand)
    {
        var isNamed = demand.End.Ports is not null;
        var model = group.Layout.Slots[cage].Cage;
        if (!isNamed && IsReservedByOther(device, group, cage, demand.Id)) return false;
        if (RateClash(device, group, cage, demand) is { } other)
        {
            if (!isNamed) return false;
            Report(PortFindings.PortRatesMixed, demand,
                $"port {group.Layout.Slots[cage].Label} of {devices.Name(device)} shares one rate with its block of {model.RateGroup}, "
                + $"and port {group.Layout.Slots[other].Label} runs at another rate; name a port of another block");
        }
        if (!model.NeighbourLost.Contains(demand.Mode)) return true;
        var isOdd = IsOdd(group, cage);
        if (isOdd && IsNeighbourFree(device, group, cage, demand.Id)) return true;
        if (isNamed)
            Report(PortFindings.NeighbourPortLost, demand,
                $"{demand.Mode} on port {group.Layout.Slots[cage].Label} of {devices.Name(device)} costs the next port, and "
                + (isOdd
                    ? "other links hold or name that one; split another port, or move those links"
                    : "only odd ports can be split so; name an odd port"));
        return false;
    }

    private static bool IsOdd(DeviceGroup group, int cage) => group.Layout.NumberInBank(cage) % 2 == 1;

    /// <summary>Whether the next cage of the row is neither in use nor kept for another side; the last of a row has none to
    /// lose.</summary>
    private bool IsNeighbourFree(int device, DeviceGroup group, int cage, int demand)
    {
        var slot = group.Layout.Slots[cage];
        return cage + 1 >= slot.BankStart + slot.BankCount
            || (ways[offset[device] + cage + 1] == 0 && !IsReservedByOther(device, group, cage + 1, demand));
    }

    private void Open(int device, DeviceGroup group, int cage, EndDemand demand)
    {
        var at = offset[device] + cage;
        ways[at] = (byte)demand.Mode.Ways;
        demandOf[at] = demand.Id;
        var slot = group.Layout.Slots[cage];
        if (slot.Cage.NeighbourLost.Contains(demand.Mode) && cage + 1 < slot.BankStart + slot.BankCount) ways[at + 1] = Lost;
    }

    private int? RateClash(int device, DeviceGroup group, int cage, EndDemand demand)
    {
        var slot = group.Layout.Slots[cage];
        if (slot.Cage.RateGroup <= 1) return null;
        var first = slot.BankStart + ((cage - slot.BankStart) / slot.Cage.RateGroup * slot.Cage.RateGroup);
        var end = Math.Min(first + slot.Cage.RateGroup, slot.BankStart + slot.BankCount);
        for (var other = first; other < end; other++)
        {
            var at = offset[device] + other;
            if (ways[at] is not (0 or Lost) && rateOfDemand.GetValueOrDefault(demandOf[at]) != demand.Mode.Rate) return other;
        }
        return null;
    }

    /// <summary>Whether sides have named a cage of this very device, and this side is none of them.</summary>
    private bool IsReservedByOther(int device, DeviceGroup group, int cage, int demand)
    {
        if (!reserved.TryGetValue((group.Index, cage), out var entries)) return false;
        var isNamed = false;
        foreach (var entry in entries)
        {
            if (entry.Devices?.Contains(device) == false) continue;
            if (entry.Demand == demand) return false;
            isNamed = true;
        }
        return isNamed;
    }

    private void Report(FindingKind kind, EndDemand demand, string message)
    {
        if (reported.Add((demand.Id, kind.Code))) findings.Add(kind, demand.End.Span, message);
    }
}
