using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Placement;

/// <summary>Finds places for the devices of a group. Where no two of them are linked each link has one end that stays, and the best
/// placement is an assignment, found exactly. Where some are, their own links are left out for a bound and put in by exchanges.</summary>
internal sealed class GroupPlacer
{
    private const int MostExchanges = 200;

    /// <summary>Links that are priced at most for exchanges, and once more for the bound: some seconds of work.</summary>
    private const long MostPrices = 1_000_000;

    private readonly PlacementCost cost;
    private readonly ImmutableArray<int> devices;
    private readonly HashSet<int> moved;
    private readonly ImmutableArray<PlacedAt> places;
    private readonly ImmutableArray<(int Link, int One, int Other)> own;

    private GroupPlacer(PlacementCost cost, ImmutableArray<int> devices, ImmutableArray<PlacedAt> places)
    {
        (this.cost, this.devices, this.places) = (cost, devices, places);
        moved = [.. devices];
        own =
        [
            .. from device in devices
               from link in cost.LinksOf(device)
               let far = cost.Far(link, device)
               where device < far && moved.Contains(far)
               select (link, devices.IndexOf(device), devices.IndexOf(far)),
        ];
    }

    /// <summary>The placement of a group, or why there is none: its devices have no places, or there are fewer than there are
    /// devices.</summary>
    public static (GroupPlacement? Placement, PlacelessGroup? Placeless) Find(
        Plan plan, RackBook book, PlacementCost cost, int group, Func<Rack, bool> allows)
    {
        ImmutableArray<int> devices = [.. Enumerable.Range(0, plan.Devices.Count)
            .Where(d => plan.Devices.Group(d).Index == group && plan.Devices.Rack(d) is not null)];
        if (devices.IsEmpty || plan.Devices.Rack(devices[0]) is not { } first) return (null, new PlacelessGroup(group, 0, -1));
        // Devices that stand in several halls or racks stand apart on purpose: each stays in its hall, and no rack gets more than one has
        // now.
        var halls = devices.Select(d => plan.Devices.Rack(d)?.Hall).ToHashSet();
        var most = devices.GroupBy(plan.Devices.RackIndex).Max(g => g.Count());
        var racks = plan.Building.Racks.Where(r => halls.Contains(r.Hall) && r.Type == first.Type && allows(r));
        var places = PlaceOffer.Of(plan, book, devices, racks, most);
        var isEnough = devices.GroupBy(d => plan.Devices.Rack(d)?.Hall).All(g => places.Count(p => p.Rack.Hall == g.Key) >= g.Count());
        return isEnough
            ? (new GroupPlacer(cost, devices, places).Find(group), null)
            : (null, new PlacelessGroup(group, devices.Length, places.Length));
    }

    private GroupPlacement Find(int group)
    {
        var alone = new double[devices.Length, places.Length];
        for (var d = 0; d < devices.Length; d++)
            for (var p = 0; p < places.Length; p++)
                alone[d, p] = places[p].Rack.Hall == cost.Now(devices[d])?.Rack.Hall
                    ? cost.Of(devices[d], places[p], moved)
                    : double.PositiveInfinity;
        ImmutableArray<PlacedAt> now = [.. devices.Select(d => cost.Now(d) ?? throw new InvalidOperationException("it has a place"))];
        var held = devices.Select((d, i) => cost.Of(d, now[i], moved)).Sum() + Own(i => now[i]);
        var found = Assignment.Solve(alone);
        var bound = found.Select((p, d) => alone[d, p]).Sum() + LeastOwn();
        if (!own.IsEmpty) Exchange(alone, found);
        var best = Total(alone, found);
        // A placement as dear as the plan's is no reason to move anything.
        var isBetter = best < held - Rounding;
        var costs = Enumerable.Range(0, places.Length)
            .Where(p => double.IsFinite(alone[0, p])).Select(p => new RackOffer(places[p].Rack, alone[0, p], places[p].Gaps))
            .GroupBy(p => p.Rack.Index).Select(g => g.MinBy(p => p.Cost))
            .OrderBy(p => p.Cost).ThenBy(p => p.Rack.Index);
        var detours = cost.Detours(devices);
        return new GroupPlacement(group, held + detours, (isBetter ? best : held) + detours, Math.Min(bound, isBetter ? best : held),
            [.. devices.Select((d, i) => new DeviceMove(d, now[i], isBetter ? places[found[i]] : now[i]))], [.. costs])
        {
            Detours = detours,
        };
    }

    private double Total(double[,] alone, int[] found) => found.Select((p, d) => alone[d, p]).Sum() + Own(i => places[found[i]]);

    private double Own(Func<int, PlacedAt> at) =>
        own.Sum(o => cost.Between(o.Link, devices[o.One], at(o.One), devices[o.Other], at(o.Other)));

    /// <summary>What links among the moved cost at the least, each by itself in the best two places; nothing where that is too much to
    /// reckon.</summary>
    private double LeastOwn() => (long)own.Length * places.Length * places.Length > MostPrices
        ? 0
        : own.Sum(o => places.Index().Min(a => places.Index()
        .Where(b => b.Index != a.Index)
        .Min(b => cost.Between(o.Link, devices[o.One], a.Item, devices[o.Other], b.Item))));

    /// <summary>Takes the best single move or exchange again and again until none helps, or until enough has been looked at.</summary>
    private void Exchange(double[,] alone, int[] found)
    {
        var priced = 0L;
        for (var round = 0; round < MostExchanges && priced < MostPrices; round++)
        {
            var (before, best) = (Total(alone, found), (Gain: Rounding, Device: -1, Place: -1));
            for (var d = 0; d < found.Length && priced < MostPrices; d++)
            {
                for (var p = 0; p < places.Length; p++, priced += own.Length)
                {
                    var after = Total(alone, Swapped(found, d, p));
                    if (before - after is var gain && gain > best.Gain) best = (gain, d, p);
                }
            }
            if (best.Device < 0) return;
            Swapped(found, best.Device, best.Place).CopyTo(found, 0);
        }
    }

    private static int[] Swapped(int[] found, int device, int place)
    {
        int[] next = [.. found];
        var holder = Array.IndexOf(next, place);
        if (holder >= 0) next[holder] = next[device];
        next[device] = place;
        return next;
    }

    private const double Rounding = 1e-9;
}
