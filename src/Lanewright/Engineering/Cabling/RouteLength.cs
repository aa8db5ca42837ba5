using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Cabling;

/// <summary>How long a cable between two devices has to be: along rows and across them at pathway height, up and down in racks.</summary>
public sealed class RouteLength
{
    private readonly Plan plan;
    private readonly RackRoute route;

    /// <summary>Measures in a plan.</summary>
    public RouteLength(Plan plan)
    {
        this.plan = plan;
        route = new RackRoute(plan.Policy, plan.Standards);
    }

    /// <summary>The length, or null when an end has no place or no route joins the halls.</summary>
    public Length? Between(int from, int to)
    {
        if (plan.Devices.Rack(from) is not { } rackFrom || plan.Devices.Rack(to) is not { } rackTo) return null;
        var across = rackFrom.Index == rackTo.Index ? default(Length?) : OverHead(rackFrom, rackTo);
        if (rackFrom.Index != rackTo.Index && across is null) return null;
        return route.Between(rackFrom, Height(from, rackFrom), rackTo, Height(to, rackTo), across ?? default);
    }

    /// <summary>A way with its detours, and a service loop at both ends.</summary>
    public Length WithSlack(Length way) => route.WithSlack(way);

    private Length? OverHead(Rack from, Rack to)
    {
        if (from.Hall == to.Hall) return RackRoute.Across(from, to);
        if (plan.Building.RouteBetween(from.Hall, to.Hall) is not { } way) return null;
        return ToExit(from) + way.Length + ToExit(to);
    }

    private static Length ToExit(Rack rack) => (rack.X - rack.Hall.ExitX).Abs() + (rack.Y - rack.Hall.ExitY).Abs();

    private Length Height(int device, Rack rack) =>
        route.Height(rack.Type, plan.Devices.Unit(device), plan.Devices.Group(device).Model.Units);
}
