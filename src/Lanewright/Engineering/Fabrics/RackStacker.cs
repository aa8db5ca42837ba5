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

    /// <summary>What is in the way of a stack above the hosts of a kind; empty when there is room.</summary>
    public string AboveHosts(int kind, SwitchBuild build, int switches)
    {
        var host = demand.Hosts[kind];
        var rack = demand.Hall.HostRacks[demand.Hall.FirstRack[kind]];
        var taken = (host.Demand.PerRack * host.Model.Units) + (switches * build.Units);
        return taken <= rack.Type.Units ? "" : $"{switches} x {build.Name} above {host.Demand.PerRack} hosts take {taken} units of a rack, "
            + $"which has {rack.Type.Units}";
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
                return new FabricPlace(rack, rack.Type.Units - ((each - (i % each)) * build.Units) + 1);
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
            if (free.Count == 0 || InOne(build, free[0]) is not (var most and > 0))
            {
                fault = free.Count == 0 ? $"the racks kept for upper tiers do not take {switches} x {build.Name}" : TooMuch(build);
                return null;
            }
            var rack = free[0];
            free.RemoveAt(0);
            var here = Math.Min(most, ((switches - places.Count) + racks - 1) / Math.Max(1, racks));
            for (var i = 0; i < here; i++) places.Add(new FabricPlace(rack, rack.Type.Units - ((here - i) * build.Units) + 1));
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
        var most = Math.Min(mostInRack, rack.Type.Units / Math.Max(1, build.Units));
        if (demand.Wanted.RackPower is { } power && build.Maximum > 0) most = (int)Math.Min(most, Math.Floor(power.Value / build.Maximum));
        if (demand.Wanted.RackWeight is { } mass && build.Weight > 0) most = (int)Math.Min(most, Math.Floor(mass.Kilograms / build.Weight));
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
