using System.Collections.Immutable;
using Lanewright.Engineering.Pathways;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Cabling;

/// <summary>How long a cable between two devices has to be: along pathways, or along rows and across them where there are none, with what
/// goes up and down at the racks, and with slack.</summary>
public sealed class RouteLength
{
    private readonly Plan plan;
    private readonly RackRoute route;

    /// <summary>Measures in a plan.</summary>
    public RouteLength(Plan plan)
    {
        this.plan = plan;
        route = new RackRoute(plan.Policy, plan.Standards);
        Ways = WayNet.IsNeeded(plan.Building) || ThirdHalls.ArePassed(plan)
            ? new ShortestWays(WayNet.Of(plan.Building, plan.Standards))
            : null;
    }

    /// <summary>Shortest ways along pathways; null where the plan has none.</summary>
    public ShortestWays? Ways { get; }

    /// <summary>The length by the shortest way, or null when an end has no place or no routes join the halls.</summary>
    /// <param name="from">One device.</param>
    /// <param name="to">The other.</param>
    /// <param name="side">The side of pathways it lies in; empty for any.</param>
    public Length? Between(int from, int to, string side = "") => Parts(from, to, side)?.Total;

    /// <summary>The same, part by part.</summary>
    /// <param name="from">One device.</param>
    /// <param name="to">The other.</param>
    /// <param name="side">The side of pathways it lies in; empty for any.</param>
    public RouteParts? Parts(int from, int to, string side = "")
    {
        if (plan.Devices.Rack(from) is not { } rackFrom || plan.Devices.Rack(to) is not { } rackTo) return null;
        return Parts(rackFrom, Height(from, rackFrom), rackTo, Height(to, rackTo), side);
    }

    /// <summary>The length by the shortest way between two heights in racks, part by part, or null when no routes join the halls.</summary>
    /// <param name="from">One rack.</param>
    /// <param name="heightFrom">Height of the device in it, above the floor.</param>
    /// <param name="to">The other rack.</param>
    /// <param name="heightTo">Height of the device in that.</param>
    /// <param name="side">The side of pathways it lies in; empty for any.</param>
    public RouteParts? Parts(Rack from, Length heightFrom, Rack to, Length heightTo, string side)
    {
        if (from.Index != to.Index && WayBetween(from, heightFrom, to, heightTo, side) is { } way)
            return route.Along(way, from, heightFrom, to, heightTo);
        if (from.Hall == to.Hall) return route.Parts(from, heightFrom, to, heightTo, RackRoute.Across(from, to));
        if (Straight(from, to) is not { } chain) return null;
        // A route is as long as it was surveyed; only ways inside the halls are reckoned, and may turn out to have detours.
        var inside = route.Parts(from, heightFrom, to, heightTo, chain.Across);
        return inside with { Surveyed = chain.Surveyed, Total = inside.Total + chain.Surveyed };
    }

    /// <summary>The length by a way along pathways, part by part from one device to the other.</summary>
    public RouteParts Along(CableWay way, int from, int to)
    {
        if (plan.Devices.Rack(from) is not { } rackFrom || plan.Devices.Rack(to) is not { } rackTo)
            throw new InvalidOperationException("a way leads from rack to rack");
        return route.Along(way, rackFrom, Height(from, rackFrom), rackTo, Height(to, rackTo));
    }

    /// <summary>Height of the middle of a device above the floor.</summary>
    /// <param name="rack">Its rack.</param>
    /// <param name="lowest">Its lowest rack unit, from 1.</param>
    /// <param name="units">Its height in rack units.</param>
    public Length Height(Rack rack, int lowest, int units) => route.Height(rack.Type, lowest, units);

    /// <summary>The routes between the halls of two devices that the shortest way takes; none in one hall and where there are
    /// none.</summary>
    /// <param name="from">One device.</param>
    /// <param name="to">The other.</param>
    /// <param name="side">The side of pathways it lies in; empty for any.</param>
    public ImmutableArray<HallRoute> RoutesOf(int from, int to, string side)
    {
        if (plan.Devices.Rack(from) is not { } one || plan.Devices.Rack(to) is not { } other || one.Hall == other.Hall) return [];
        return WayBetween(one, Height(from, one), other, Height(to, other), side)?.Routes ?? Straight(one, other)?.Routes ?? [];
    }

    /// <summary>What is asked of pathways for a cable between two devices; null where none is laid along any.</summary>
    /// <param name="from">One device.</param>
    /// <param name="to">The other.</param>
    /// <param name="side">The side of pathways it lies in; empty for any. One that no pathway has keeps nothing away; a rule says
    /// so.</param>
    public WayQuestion? QuestionOf(int from, int to, string side)
    {
        if (Ways is null || plan.Devices.Rack(from) is not { } one || plan.Devices.Rack(to) is not { } other || one.Index == other.Index)
            return null;
        return Ways.Net.QuestionOf(one, Height(from, one), other, Height(to, other), Math.Max(0, Ways.Net.SideOf(side)));
    }

    /// <summary>A way with its detours, and a service loop at both ends.</summary>
    public Length WithSlack(Length way) => route.WithSlack(way);

    private CableWay? WayBetween(Rack from, Length heightFrom, Rack to, Length heightTo, string side) =>
        Ways?.Between(Ways.Net.QuestionOf(from, heightFrom, to, heightTo, Math.Max(0, Ways.Net.SideOf(side))));

    /// <summary>Where no pathway leads the way: the first route that joins the two halls, or else the shortest chain of routes.</summary>
    private HallChain? Straight(Rack from, Rack to) => plan.Building.RouteBetween(from.Hall, to.Hall) is { } direct
        ? HallChain.Along(direct, from, to)
        : HallChain.Between(plan.Building, from, to);

    private Length Height(int device, Rack rack) =>
        Height(rack, plan.Devices.Unit(device), plan.Devices.Group(device).Model.Units);
}
