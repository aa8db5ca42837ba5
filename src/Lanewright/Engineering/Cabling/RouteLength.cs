using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Cabling;

/// <summary>How long a cable between two devices has to be: along rows and across them at pathway height, up and down in racks.</summary>
public sealed class RouteLength
{
    private readonly Plan plan;
    private readonly Length unit;

    /// <summary>Measures in a plan.</summary>
    public RouteLength(Plan plan)
    {
        this.plan = plan;
        unit = Length.FromMillimetres(plan.Standards.Practice("rack", "unit").Value);
    }

    /// <summary>The length, or null when an end has no place or no route joins the halls.</summary>
    public Length? Between(int from, int to)
    {
        if (plan.Devices.Rack(from) is not { } rackFrom || plan.Devices.Rack(to) is not { } rackTo) return null;
        var heightFrom = Height(from, rackFrom);
        var heightTo = Height(to, rackTo);
        var insideRacks = plan.Policy.InRack * 2;
        if (rackFrom.Index == rackTo.Index) return (heightFrom - heightTo).Abs() + insideRacks;
        var rise = (rackFrom.Hall.PathwayHeight - heightFrom).Abs();
        var drop = (rackTo.Hall.PathwayHeight - heightTo).Abs();
        if (rackFrom.Hall == rackTo.Hall)
        {
            var across = (rackFrom.X - rackTo.X).Abs() + (rackFrom.Y - rackTo.Y).Abs();
            return WithSlack(across + rise + drop) + insideRacks;
        }
        if (plan.Building.RouteBetween(rackFrom.Hall, rackTo.Hall) is not { } route) return null;
        // A route is as long as it was surveyed; only ways inside the halls are reckoned, and may turn out to have detours.
        return WithSlack(rise + ToExit(rackFrom) + ToExit(rackTo) + drop) + route.Length + insideRacks;
    }

    /// <summary>A way with its detours, and a service loop at both ends.</summary>
    public Length WithSlack(Length way) => (way * (1 + plan.Policy.Contingency.Value)) + (plan.Policy.Service * 2);

    private static Length ToExit(Rack rack) => (rack.X - rack.Hall.ExitX).Abs() + (rack.Y - rack.Hall.ExitY).Abs();

    /// <summary>Height of the middle of a device above the floor.</summary>
    private Length Height(int device, Rack rack)
    {
        var middle = plan.Devices.Unit(device) - 1 + (plan.Devices.Group(device).Model.Units / 2.0);
        return rack.Type.Plinth + (unit * middle);
    }
}
