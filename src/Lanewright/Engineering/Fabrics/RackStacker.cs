using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Stacks switches in racks: from the top, rack after rack, within the rack's units and the limits wished.</summary>
/// <param name="demand">What is wanted.</param>
/// <param name="mostInRack">Switches that one rack may hold.</param>
/// <param name="isSpread">Whether a tier stands in two racks at least.</param>
internal sealed class RackStacker(FabricDemand demand, int mostInRack, bool isSpread)
{
    private const int LeastRacks = 2;

    private readonly List<Rack> free = [.. demand.Hall.SpineRacks];
    private readonly List<Rack> open = [.. demand.Hall.LeafRacks];
    private readonly Dictionary<int, (int Units, double Watts, double Kilograms)> taken = [];

    /// <summary>Places of leaves: at the top of the racks of their hosts, or in racks of their own where those are full.</summary>
    /// <param name="kind">The kind of host they serve.</param>
    /// <param name="build">What each is.</param>
    /// <param name="rackOf">For each leaf the index of the rack of the hosts in its middle, block by block and port by port.</param>
    /// <param name="fault">What is in the way.</param>
    public FabricPlace[]? ForLeaves(int kind, SwitchBuild build, int[] rackOf, out string fault)
    {
        if (demand.StandsApart(kind, build)) return Apart(kind, build, rackOf, out fault);
        var nth = NumbersInRack(rackOf);
        var stack = nth.Max() + 1;
        fault = AboveHosts(kind, build, stack);
        if (fault.Length > 0) return null;
        return [.. rackOf.Select((r, i) => At(demand.Hall.HostRacks[r], build, stack - nth[i]))];
    }

    /// <summary>What is in the way of a stack above the hosts of a kind; empty when there is room.</summary>
    private string AboveHosts(int kind, SwitchBuild build, int switches)
    {
        var host = demand.Hosts[kind];
        var rack = demand.Hall.HostRacks[demand.Hall.FirstRack[kind]];
        var units = (host.Demand.PerRack * host.Model.Units) + (switches * build.Units);
        return units <= rack.Type.Units ? "" : $"{switches} x {build.Name} above {host.Demand.PerRack} hosts take {units} units of a rack, "
            + $"which has {rack.Type.Units}";
    }

    /// <summary>Leaves in racks of their own, the nearest that are left to the hosts of the first in each. Those of every other port of a
    /// host stand in other racks, so that no rack takes all its links.</summary>
    private FabricPlace[]? Apart(int kind, SwitchBuild build, int[] rackOf, out string fault)
    {
        fault = "";
        var (ports, sets) = (demand.Hosts[kind].Demand.Ports, isSpread ? LeastRacks : 1);
        var places = new FabricPlace[rackOf.Length];
        for (var set = 0; set < sets; set++)
        {
            var leaves = Enumerable.Range(0, rackOf.Length).Where(i => i % ports % sets == set).ToArray();
            for (var at = 0; at < leaves.Length;)
            {
                var near = demand.Hall.HostRacks[rackOf[leaves[at]]];
                if (open.MinBy(r => (Math.Round(RackRoute.Across(r, near).Metres, 4), r.Index)) is not { } rack)
                {
                    fault = $"the racks of the hosts are full, and those kept for upper tiers do not take {rackOf.Length} x {build.Name}";
                    return null;
                }
                var here = Math.Min(InOne(build, rack), leaves.Length - at);
                if (here <= 0)
                {
                    fault = TooMuch(build);
                    return null;
                }
                Take(rack, build, here);
                for (var i = 0; i < here; i++) places[leaves[at + i]] = At(rack, build, here - i);
                at += here;
            }
        }
        return places;
    }

    /// <summary>Leaves have a rack to themselves; only where racks are named and few do upper tiers stand below them.</summary>
    private void Take(Rack rack, SwitchBuild build, int switches)
    {
        open.Remove(rack);
        if (isSpread || demand.Hall.IsStandard) free.Remove(rack);
        else taken[rack.Index] = (switches * build.Units, switches * build.Maximum, switches * build.Weight);
    }

    /// <summary>The place of a switch with so many to the top of its rack, itself included.</summary>
    private static FabricPlace At(Rack rack, SwitchBuild build, int toTop, int unitsAbove = 0) =>
        new(rack, rack.Type.Units - unitsAbove - (toTop * build.Units) + 1);

    /// <summary>For each leaf how many stand in its rack before it.</summary>
    private static int[] NumbersInRack(int[] rackOf)
    {
        var inRack = new Dictionary<int, int>();
        return [.. rackOf.Select(r => inRack[r] = inRack.GetValueOrDefault(r, -1) + 1)];
    }

    /// <summary>Places of boxes: in the middle racks of all hosts if there is room above them, otherwise with the upper tiers.</summary>
    public ImmutableArray<FabricPlace>? Boxes(SwitchBuild build, int boxes, out string fault)
    {
        fault = "";
        var hall = demand.Hall;
        var middle = hall.FirstRack[^1] / 2;
        var racks = isSpread ? Math.Min(Math.Min(boxes, LeastRacks), hall.FirstRack[^1]) : 1;
        var first = Math.Min(middle, hall.FirstRack[^1] - racks);
        var each = (boxes + racks - 1) / racks;
        var isRoom = Enumerable.Range(first, racks).All(r =>
            AboveHosts(KindIn(r), build, each).Length == 0 && InOne(build, hall.HostRacks[r]) >= each);
        if (!isRoom) return Next(build, boxes, out fault);
        return
        [
            .. Enumerable.Range(0, boxes).Select(i =>
            {
                var rack = hall.HostRacks[first + (i / each)];
                return At(rack, build, each - (i % each));
            }),
        ];
    }

    /// <summary>The kind of host that stands in a rack of hosts.</summary>
    private int KindIn(int rack) => Enumerable.Range(0, demand.Hosts.Length).Last(k => demand.Hall.FirstRack[k] <= rack);

    /// <summary>Places of upper switches in the next racks, each set in racks of its own and, when spread, in two at least: one tripped
    /// strip or wet rack must not take a whole tier.</summary>
    public ImmutableArray<FabricPlace>? Next(SwitchBuild build, int switches, out string fault)
    {
        var places = ImmutableArray.CreateBuilder<FabricPlace>();
        fault = "";
        var racks = Math.Max(isSpread ? Math.Min(switches, LeastRacks) : 1, RacksFor(build, switches));
        for (; places.Count < switches; racks--)
        {
            while (free.Count > 0 && taken.ContainsKey(free[0].Index) && InOne(build, free[0]) <= 0) free.RemoveAt(0);
            if (free.Count == 0 || InOne(build, free[0]) is not (var most and > 0))
            {
                fault = free.Count == 0 ? $"the racks kept for upper tiers do not take {switches} x {build.Name}" : TooMuch(build);
                return null;
            }
            var rack = free[0];
            free.RemoveAt(0);
            var here = Math.Min(most, ((switches - places.Count) + racks - 1) / Math.Max(1, racks));
            var above = taken.GetValueOrDefault(rack.Index).Units;
            for (var i = 0; i < here; i++) places.Add(At(rack, build, here - i, above));
        }
        return places.ToImmutable();
    }

    /// <summary>Racks that so many fill when they stand as close as they may.</summary>
    private int RacksFor(SwitchBuild build, int switches)
    {
        var racks = 0;
        for (var left = switches; left > 0 && racks < free.Count; racks++) left -= Math.Max(0, InOne(build, free[racks]));
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
            var nearest = free.OrderBy(r => Math.Round(RackRoute.Across(r, middle).Metres, 4)).ThenBy(r => r.Index).ToList();
            free.Clear();
            free.AddRange(nearest);
            if (Next(build, switches, out fault) is not { } places) return null;
            all.Add(places);
        }
        return all.ToImmutable();
    }

    private int InOne(SwitchBuild build, Rack rack)
    {
        var before = taken.GetValueOrDefault(rack.Index);
        var most = Math.Min(mostInRack, (rack.Type.Units - before.Units) / Math.Max(1, build.Units));
        if (demand.Wanted.RackPower is { } power && build.Maximum > 0)
            most = (int)Math.Min(most, Math.Floor((power.Value - before.Watts) / build.Maximum));
        if (demand.Wanted.RackWeight is { } mass && build.Weight > 0)
            most = (int)Math.Min(most, Math.Floor((mass.Kilograms - before.Kilograms) / build.Weight));
        return most;
    }

    private string TooMuch(SwitchBuild build)
    {
        if (demand.Wanted.RackPower is { } power && build.Maximum > power.Value)
            return $"{build.Name} draws {Watts.From(build.Maximum)} and a rack may draw {power}";
        if (demand.Wanted.RackWeight is { } mass && build.Weight > mass.Kilograms)
            return $"{build.Name} weighs {Mass.FromKilograms(build.Weight)} and a rack may hold {mass}";
        return $"{build.Name} with its modules does not fit into a rack";
    }
}
