using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Lower bounds of what parts of a design cost over the years, in hundredths, without placing them.</summary>
internal sealed class CostFloor
{
    private readonly FabricDemand demand;
    private readonly LinkPricer pricer;
    private readonly double wattYear;
    private readonly RackRoute route;
    private readonly Dictionary<int, int> nearest = [];
    private readonly Dictionary<LinkEnds, LinkReach> reaches = [];
    private readonly int placeAcross;
    private readonly Dictionary<int, ImmutableArray<(int Place, long Hosts, long HostYears)>> apart = [];

    public CostFloor(FabricDemand demand, FinderContext context, LinkPricer pricer)
    {
        this.demand = demand;
        this.pricer = pricer;
        wattYear = EnergyUse.PriceOfWattYear(demand.Wanted);
        PlaceInRack = pricer.Grid.PlaceOf(context.Policy.InRack * 2);
        route = new RackRoute(context.Policy, context.Standards);
        placeAcross = pricer.Grid.PlaceOf(Shortest(demand.Hall.HostRacks, demand.Hall.SpineRacks));
        ImmutableArray<Rack> leafRacks = [.. demand.Hall.LeafRacks];
        // Leaves apart share a rack with an upper tier only where racks are named.
        PlaceApart = demand.Hall.IsStandard
            ? pricer.Grid.PlaceOf(Shortest(leafRacks, leafRacks))
            : PlaceInRack;
        PlaceTrunk = pricer.Grid.PlaceOf(Shortest(demand.Hall.SpineRacks, demand.Hall.SpineRacks));
    }

    /// <summary>Switches: so many at the end, and so many added up over the years they run.</summary>
    public double Switches(SwitchBuild build, long count, long countYears)
    {
        return build.Price(count, demand.Free) + (build.Typical * wattYear * countYears);
    }

    /// <summary>Links between hosts and the lowest tier, which may stand in one rack; not a number when none can be made.</summary>
    public double Edge(LinkEnds ends, long links, long linkYears) => Links(ends, PlaceInRack, links, linkYears);

    /// <summary>Place in the grid of lengths of the shortest way between a host and a switch.</summary>
    public int PlaceInRack { get; }

    /// <summary>Place in the grid of lengths of the shortest way between two upper tiers.</summary>
    public int PlaceTrunk { get; }

    /// <summary>Place in the grid of lengths of the shortest way between an upper tier and leaves in racks of their own.</summary>
    public int PlaceApart { get; }

    /// <summary>Place in the grid of lengths of the shortest way between an upper tier and leaves above their hosts.</summary>
    public int PlaceAcross => placeAcross;

    /// <summary>Links between hosts of a kind and leaves that stand in racks of their own: no rack of leaves is nearer to a rack of hosts
    /// than the nearest there is.</summary>
    public double EdgeApart(LinkEnds ends, int kind)
    {
        var host = demand.Hosts[kind].Demand;
        if (!apart.TryGetValue(kind, out var found)) apart[kind] = found = [.. HostsByPlace(kind)];
        return found.Sum(h => Links(ends, h.Place, h.Hosts * host.Ports, h.HostYears * host.Ports));
    }

    private IEnumerable<(int Place, long Hosts, long HostYears)> HostsByPlace(int kind)
    {
        ImmutableArray<Rack> leafRacks = [.. demand.Hall.LeafRacks];
        var perRack = demand.Hosts[kind].Demand.PerRack;
        return Enumerable.Range(0, (demand.Finals[kind] + perRack - 1) / perRack)
            .Select(r =>
            {
                var rack = demand.Hall.HostRacks[demand.Hall.FirstRack[kind] + r];
                var hosts = Enumerable.Range(0, demand.Wanted.Years + 1)
                    .Select(y => (long)Math.Clamp(demand.CountsIn(y)[kind] - (r * perRack), 0, perRack))
                    .ToArray();
                return (Place: pricer.Grid.PlaceOf(Shortest([rack], leafRacks)), Hosts: hosts[^1], Years: hosts.SkipLast(1).Sum());
            })
            .GroupBy(r => r.Place)
            .Select(g => (g.Key, g.Sum(r => r.Hosts), g.Sum(r => r.Years)));
    }

    /// <summary>Links between two kinds of port, length by length.</summary>
    public LinkReach Between(LinkEnds ends) => reaches.TryGetValue(ends, out var found)
        ? found
        : reaches[ends] = new LinkReach(ends, pricer, demand.Free, wattYear);

    /// <summary>Watts that a link between a host and the lowest tier draws at the least.</summary>
    public double EdgeWatts(LinkEnds ends) => RatesOf(ends, PlaceInRack).LeastWatts;

    /// <summary>Place in the grid of lengths of the way from a rack of hosts to the nearest rack of an upper tier.</summary>
    public int NearestAbove(Rack rack)
    {
        if (nearest.TryGetValue(rack.Index, out var found)) return found;
        return nearest[rack.Index] = pricer.Grid.PlaceOf(Shortest([rack], demand.Hall.SpineRacks));
    }

    /// <summary>Links between two upper tiers, which stand in racks of their own.</summary>
    public LinkRates Trunks(LinkEnds ends) => RatesOf(ends, PlaceTrunk);

    private double Links(LinkEnds ends, int place, long links, long linkYears) => RatesOf(ends, place).Cost(links, linkYears);

    private LinkRates RatesOf(LinkEnds ends, int place) => Between(ends).From(place);

    /// <summary>No link between two racks of these is shorter.</summary>
    private Length Shortest(ImmutableArray<Rack> lowers, ImmutableArray<Rack> uppers)
    {
        var isSame = lowers == uppers;
        var least = default(Length?);
        foreach (var upper in uppers)
        {
            foreach (var lower in lowers)
            {
                // A rack that takes hosts and upper tiers may hold both ends of a link.
                if (lower.Index == upper.Index && !isSame) return default;
                if (lower.Index == upper.Index) continue;
                var way = demand.Hall.Least(route, lower, upper);
                least = least is { } before ? Length.Min(before, way) : way;
            }
        }
        return least ?? default;
    }
}
