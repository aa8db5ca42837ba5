using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Stacks switches in racks: from the top, rack after rack, within what each takes.</summary>
/// <param name="demand">What is wanted.</param>
/// <param name="mostInRack">Switches that one rack may hold.</param>
/// <param name="isSpread">Whether a tier stands in two racks at least.</param>
internal sealed class RackStacker(FabricDemand demand, int mostInRack, bool isSpread)
{
    private const int LeastRacks = 2;

    private readonly List<Rack> free = [.. demand.Hall.SpineRacks];
    private readonly List<Rack> open = [.. demand.Hall.LeafRacks];
    private readonly RackRooms rooms = new(demand, mostInRack);

    /// <summary>Places of leaves: at the top of the racks of their hosts, or in racks of their own.</summary>
    /// <param name="kind">The kind of host they serve.</param>
    /// <param name="leaf">What each is and how it stands.</param>
    /// <param name="rackOf">For each leaf the index of the rack of the hosts in its middle, block by block and port by port.</param>
    /// <param name="fault">What is in the way.</param>
    public FabricPlace[]? ForLeaves(int kind, LeafChoice leaf, int[] rackOf, out string fault)
    {
        fault = "";
        if (leaf.IsApart) return Apart(kind, leaf.Build, rackOf, out fault);
        var standing = new Dictionary<int, ImmutableArray<FabricPlace>>();
        foreach (var (rack, count) in rackOf.CountBy(r => r))
        {
            fault = AboveHosts(rack, leaf.Build, count);
            if (fault.Length > 0) return null;
            standing[rack] = rooms.Take(demand.Hall.HostRacks[rack], leaf.Build, count);
        }
        var nth = new Dictionary<int, int>();
        return [.. rackOf.Select(r => standing[r][nth[r] = nth.GetValueOrDefault(r, -1) + 1])];
    }

    /// <summary>What is in the way of a stack above the hosts of a rack; empty when there is room.</summary>
    private string AboveHosts(int index, SwitchBuild build, int switches)
    {
        var rack = demand.Hall.HostRacks[index];
        var host = demand.Hosts[demand.KindIn(index)];
        if (rooms.InUnits(rack, build) < switches)
        {
            var units = (host.Demand.PerRack * host.Model.Units) + (switches * build.Units);
            return $"{switches} x {build.Name} above {host.Demand.PerRack} hosts take {units} units of a rack, which has {rack.Type.Units}";
        }
        return demand.Hall.Limits is { } limits && rooms.LimitOf(limits, rack, build, switches) is { Length: > 0 } broken
            ? $"with {switches} x {build.Name} above its hosts, {broken}"
            : "";
    }

    /// <summary>Leaves in racks of their own, the nearest that are left to the hosts of the first in each. Those of every other port of a
    /// host stand in other racks, so that no rack takes all its links.</summary>
    private FabricPlace[]? Apart(int kind, SwitchBuild build, int[] rackOf, out string fault)
    {
        fault = "";
        var (ports, sets) = (demand.Hosts[kind].Demand.Ports, isSpread ? LeastRacks : 1);
        var places = new FabricPlace[rackOf.Length];
        // A rack that is taken leaves the list, so that the others stay as they are found here.
        var refusal = DropFull(open, build);
        for (var set = 0; set < sets; set++)
        {
            var leaves = Enumerable.Range(0, rackOf.Length).Where(i => i % ports % sets == set).ToArray();
            for (var at = 0; at < leaves.Length;)
            {
                var near = demand.Hall.HostRacks[rackOf[leaves[at]]];
                if (open.MinBy(r => (Math.Round(demand.Hall.Across(r, near).Metres, 4), r.Index)) is not { } rack)
                {
                    fault = refusal.Length > 0 ? refusal
                        : $"the racks of the hosts are full, and those kept for upper tiers do not take {rackOf.Length} x {build.Name}";
                    return null;
                }
                refusal = "";
                var here = Math.Min(rooms.InOne(build, rack), leaves.Length - at);
                var taken = Take(rack, build, here);
                for (var i = 0; i < here; i++) places[leaves[at + i]] = taken[i];
                at += here;
            }
        }
        return places;
    }

    /// <summary>Strikes racks that take no such switch off a list; what is in the way in the first of them that holds none yet.</summary>
    private string DropFull(List<Rack> racks, SwitchBuild build)
    {
        var refusal = "";
        foreach (var rack in racks.Where(r => rooms.InOne(build, r) <= 0).ToList())
        {
            if (refusal.Length == 0 && rooms.HoldsNone(rack)) refusal = TooMuch(build, rack);
            racks.Remove(rack);
        }
        return refusal;
    }

    /// <summary>Leaves have a rack to themselves; only where racks are named and few do upper tiers stand below them.</summary>
    private ImmutableArray<FabricPlace> Take(Rack rack, SwitchBuild build, int switches)
    {
        open.Remove(rack);
        if (isSpread || demand.Hall.IsStandard) free.Remove(rack);
        return rooms.Take(rack, build, switches);
    }

    /// <summary>Places of boxes: in the middle racks of all hosts if there is room above them, otherwise with the upper tiers.</summary>
    public ImmutableArray<FabricPlace>? Boxes(LeafChoice box, int boxes, out string fault)
    {
        fault = "";
        var (hall, build) = (demand.Hall, box.Build);
        var middle = hall.FirstRack[^1] / 2;
        var racks = isSpread ? Math.Min(Math.Min(boxes, LeastRacks), hall.FirstRack[^1]) : 1;
        var first = Math.Min(middle, hall.FirstRack[^1] - racks);
        var each = (boxes + racks - 1) / racks;
        var isRoom = !box.IsApart && Enumerable.Range(first, racks).All(r =>
            AboveHosts(r, build, each).Length == 0 && rooms.InOne(build, hall.HostRacks[r]) >= each);
        if (!isRoom) return Next(build, boxes, out fault);
        var stacks = Enumerable.Range(first, racks).Select(r => rooms.Take(hall.HostRacks[r], build, each)).ToArray();
        return [.. Enumerable.Range(0, boxes).Select(i => stacks[i / each][i % each])];
    }

    /// <summary>Places of upper switches in the next racks, each set in racks of its own and, when spread, in two at least: one tripped
    /// strip or wet rack must not take a whole tier.</summary>
    public ImmutableArray<FabricPlace>? Next(SwitchBuild build, int switches, out string fault)
    {
        var places = ImmutableArray.CreateBuilder<FabricPlace>();
        fault = "";
        var refusal = "";
        var racks = Math.Max(isSpread ? Math.Min(switches, LeastRacks) : 1, RacksFor(build, switches));
        for (; places.Count < switches; racks--)
        {
            while (free.Count > 0 && rooms.InOne(build, free[0]) <= 0)
            {
                if (refusal.Length == 0 && rooms.HoldsNone(free[0])) refusal = TooMuch(build, free[0]);
                free.RemoveAt(0);
            }
            if (free.Count == 0)
            {
                fault = refusal.Length > 0 ? refusal : $"the racks kept for upper tiers do not take {switches} x {build.Name}";
                return null;
            }
            var rack = free[0];
            free.RemoveAt(0);
            // A rack that takes less than its share leaves the rest to more racks than were counted.
            var sharing = Math.Max(1, racks);
            var here = Math.Min(rooms.InOne(build, rack), (switches - places.Count + sharing - 1) / sharing);
            places.AddRange(rooms.Take(rack, build, here));
        }
        return places.ToImmutable();
    }

    /// <summary>Racks that so many fill when they stand as close as they may.</summary>
    private int RacksFor(SwitchBuild build, int switches)
    {
        var (racks, left) = (0, switches);
        for (var at = 0; left > 0 && at < free.Count; at++)
        {
            if (rooms.InOne(build, free[at]) is not (var here and > 0)) continue;
            left -= here;
            racks++;
        }
        return racks;
    }

    /// <summary>Places of the aggregation switches of each pod, in the free racks nearest to its hosts.</summary>
    public ImmutableArray<ImmutableArray<FabricPlace>>? PodRacks(PodPlan pods, SwitchBuild build, int switches, out string fault)
    {
        fault = "";
        var all = ImmutableArray.CreateBuilder<ImmutableArray<FabricPlace>>();
        for (var pod = 0; pod < pods.Count; pod++)
        {
            var (first, last) = pods.RacksOf(pod);
            var middle = demand.Hall.HostRacks[(first + last) / 2];
            var nearest = free.OrderBy(r => Math.Round(demand.Hall.Across(r, middle).Metres, 4)).ThenBy(r => r.Index).ToList();
            free.Clear();
            free.AddRange(nearest);
            if (Next(build, switches, out fault) is not { } places) return null;
            // Where racks do not suffice for one to a pod, the next pod fills up what this one has left.
            if (!isSpread && mostInRack == int.MaxValue)
                free.AddRange(places.Select(p => p.Rack).Distinct().Where(r => rooms.InOne(build, r) > 0));
            all.Add(places);
        }
        return all.ToImmutable();
    }

    private string TooMuch(SwitchBuild build, Rack rack)
    {
        if (demand.Wanted.RackPower is { } power && build.Maximum > power.Value)
            return $"{build.Name} draws {Watts.From(build.Maximum)} and a rack may draw {power}";
        if (demand.Wanted.RackWeight is { } mass && build.Weight > mass.Kilograms)
            return $"{build.Name} weighs {Mass.FromKilograms(build.Weight)} and a rack may hold {mass}";
        if (demand.Hall.Limits is { } limits && rooms.LimitOf(limits, rack, build, 1) is { Length: > 0 } broken)
            return $"with one {build.Name}, {broken}";
        return $"{build.Name} with its modules does not fit into a rack";
    }
}
