using System.Collections.Immutable;
using Lanewright.Engineering.Pathways;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Cabling;

/// <summary>How long a cable between two devices has to be: along rows and across them at pathway height, up and down in racks.</summary>
public sealed class RouteLength
{
    private readonly Plan plan;
    private readonly RackRoute route;
    private readonly ImmutableSortedDictionary<int, HallWays> ways;

    /// <summary>Measures in a plan.</summary>
    public RouteLength(Plan plan)
    {
        this.plan = plan;
        route = new RackRoute(plan.Policy, plan.Standards);
        ways = HallWays.Of(plan.Building);
    }

    /// <summary>The length, or null when an end has no place or no route joins the halls.</summary>
    public Length? Between(int from, int to) => Parts(from, to)?.Total;

    /// <summary>The same, part by part.</summary>
    public RouteParts? Parts(int from, int to)
    {
        if (plan.Devices.Rack(from) is not { } rackFrom || plan.Devices.Rack(to) is not { } rackTo) return null;
        if (rackFrom.Hall == rackTo.Hall)
            return route.Parts(rackFrom, Height(from, rackFrom), rackTo, Height(to, rackTo), Across(rackFrom, rackTo));
        if (plan.Building.RouteBetween(rackFrom.Hall, rackTo.Hall) is not { } surveyed) return null;
        // A route is as long as it was surveyed; only ways inside the halls are reckoned, and may turn out to have detours.
        var toExits = ToExit(rackFrom) + ToExit(rackTo);
        var inside = route.Parts(rackFrom, Height(from, rackFrom), rackTo, Height(to, rackTo), toExits);
        return inside with { Surveyed = surveyed.Length, Total = inside.Total + surveyed.Length };
    }

    /// <summary>A way with its detours, and a service loop at both ends.</summary>
    public Length WithSlack(Length way) => route.WithSlack(way);

    /// <summary>Along pathways where the hall has any that join the two; otherwise straight along and across the rows.</summary>
    private Length Across(Rack from, Rack to) =>
        from.Index == to.Index || !ways.TryGetValue(from.Hall.Index, out var own) ? RackRoute.Across(from, to) : own.Across(from, to);

    private Length ToExit(Rack rack)
    {
        var straight = (rack.X - rack.Hall.ExitX).Abs() + (rack.Y - rack.Hall.ExitY).Abs();
        if (!ways.TryGetValue(rack.Hall.Index, out var own)) return straight;
        return own.Metres(rack.Index, HallWays.Exit) is { } metres ? Length.FromMetres(metres) : straight;
    }

    private Length Height(int device, Rack rack) =>
        route.Height(rack.Type, plan.Devices.Unit(device), plan.Devices.Group(device).Model.Units);
}
