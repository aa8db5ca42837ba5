using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>How high the pathways lie that cables come down from at each rack, for the racks where it depends on the height of a device
/// which of them is nearest.</summary>
internal sealed class RackDrops
{
    private readonly double[]?[] heights;

    /// <summary>Looks at the racks of a graph.</summary>
    public RackDrops(WayNet net)
    {
        heights = new double[]?[net.Building.Racks.Length];
        foreach (var rack in net.Building.Racks) heights[rack.Index] = HeightsOf(net, rack);
    }

    /// <summary>Heights of the pathways in metres, the lowest first; null where the height of a device plays no part.</summary>
    public double[]? Of(int rack) => heights[rack];

    /// <summary>Where all lie above a rack, or all below, they keep their order for every device in it.</summary>
    private static double[]? HeightsOf(WayNet net, Rack rack)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        var place = net.PointOf(rack.Index);
        foreach (ref readonly var arc in net.ArcsAt(place))
            (least, most) = (Math.Min(least, net.Points[arc.Far].Z), Math.Max(most, net.Points[arc.Far].Z));
        // The point of a rack is half way up.
        var (bottom, middle) = (rack.Type.Plinth.Metres, net.Points[place].Z);
        if (!(most - least > PathwayJoins.Touch) || least >= middle + middle - bottom || most <= bottom) return null;
        var found = new List<double>();
        foreach (ref readonly var arc in net.ArcsAt(place))
        {
            var height = net.Points[arc.Far].Z;
            if (!found.Exists(f => Math.Abs(f - height) <= PathwayJoins.Touch)) found.Add(height);
        }
        found.Sort();
        return [.. found];
    }
}
