using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What is left of the racks of a hall while switches are stacked in them, above hosts and around what stands there.</summary>
/// <param name="demand">What is wanted.</param>
/// <param name="mostInRack">Switches that one rack may hold.</param>
internal sealed class RackRooms(FabricDemand demand, int mostInRack)
{
    private readonly Dictionary<int, Room> rooms = [];

    /// <summary>Whether no switch was put into a rack yet.</summary>
    public bool HoldsNone(Rack rack) => Of(rack).Loads.Count == 0;

    /// <summary>Switches whose height a rack has room for.</summary>
    public int InUnits(Rack rack, SwitchBuild build)
    {
        var room = Of(rack);
        var units = Math.Max(1, build.Units);
        return demand.Hall.Limits is { } limits
            ? limits.UnitsDown(rack, units, room.Ceiling, room.Floor).Count()
            : Math.Max(0, room.Ceiling - room.Floor + 1) / units;
    }

    /// <summary>Switches that a rack still takes. What one without switches takes is the same in every design.</summary>
    public int InOne(SwitchBuild build, Rack rack) => HoldsNone(rack)
        ? demand.IntoEmpty((rack.Index, build, mostInRack), () => Count(build, rack))
        : Count(build, rack);

    private int Count(SwitchBuild build, Rack rack)
    {
        var room = Of(rack);
        var most = Math.Min(mostInRack - room.Loads.Count, InUnits(rack, build));
        if (demand.Wanted.RackPower is { } power && build.Maximum > 0)
            most = (int)Math.Min(most, Rounding.Whole((power.Value - room.Loads.Sum(l => l.Watts)) / build.Maximum));
        if (demand.Wanted.RackWeight is { } mass && build.Weight > 0)
            most = (int)Math.Min(most, Rounding.Whole((mass.Kilograms - room.Loads.Sum(l => l.Kilograms)) / build.Weight));
        if (demand.Hall.Limits is { } limits)
            while (most > 0 && LimitOf(limits, rack, build, most).Length > 0) most--;
        return most;
    }

    /// <summary>What of the rack's limits so many more switches break; empty when none.</summary>
    public string LimitOf(HallLimits limits, Rack rack, SwitchBuild build, int switches)
    {
        var room = Of(rack);
        if (room.Loads.Count == 0) return limits.OfStack(rack, room.Hosts, room.Kind, HostLoad(room), build, switches);
        return limits.Fault(rack,
        [
            .. Enumerable.Repeat(HostLoad(room), room.Hosts), .. room.Loads,
            .. Enumerable.Repeat(build.Load, switches),
        ]);
    }

    /// <summary>Takes the topmost units that are free for so many switches; their places from the lowest up.</summary>
    public ImmutableArray<FabricPlace> Take(Rack rack, SwitchBuild build, int switches)
    {
        if (switches == 0) return [];
        var room = Of(rack);
        var units = Math.Max(1, build.Units);
        var from = demand.Hall.Limits is { } limits
            ? limits.UnitsDown(rack, units, room.Ceiling, room.Floor)
            : Enumerable.Range(1, switches).Select(i => room.Ceiling - (i * units) + 1);
        ImmutableArray<FabricPlace> places = [.. from.Take(switches).Reverse().Select(u => new FabricPlace(rack, u))];
        room.Ceiling = places[0].Unit - 1;
        for (var i = 0; i < switches; i++) room.Loads.Add(build.Load);
        return places;
    }

    private RackLoad HostLoad(Room room) => room.Kind < 0 ? default : demand.Hosts[room.Kind].Load;

    private Room Of(Rack rack)
    {
        if (rooms.TryGetValue(rack.Index, out var found)) return found;
        return rooms[rack.Index] = demand.IndexAmongHosts(rack) is not (var index and >= 0)
            ? new Room { Ceiling = rack.Type.Units, Kind = -1 }
            : WithHosts(rack, index);
    }

    private Room WithHosts(Rack rack, int index)
    {
        var kind = demand.KindIn(index);
        var host = demand.Hosts[kind];
        var units = demand.Hall.HostUnits(index, host);
        return new Room
        {
            Ceiling = rack.Type.Units,
            // A rack is kept free for as many hosts as are wanted in one, also where fewer stand in it.
            Floor = units.IsEmpty ? 1 : units[^1] + Math.Max(1, host.Model.Units),
            Kind = kind,
            Hosts = demand.HostsIn(kind, index),
        };
    }

    private sealed class Room
    {
        /// <summary>The highest unit that is free.</summary>
        public int Ceiling { get; set; }

        /// <summary>The lowest.</summary>
        public int Floor { get; init; } = 1;

        /// <summary>The kind of host below; -1 for none.</summary>
        public int Kind { get; init; }

        /// <summary>Hosts in it after the last year.</summary>
        public int Hosts { get; init; }

        /// <summary>The switches in it.</summary>
        public List<RackLoad> Loads { get; } = [];
    }
}
