using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>How often a way turns, and how tightly.</summary>
/// <param name="Quarters">Quarter turns: one at each corner and one at each end.</param>
/// <param name="Tightest">The smallest radius stated of the pathways it lies in; null when none states one.</param>
public readonly record struct WayBends(int Quarters, Length? Tightest)
{
    /// <summary>The bends of a way.</summary>
    public static WayBends Of(WayNet net, CableWay way)
    {
        var quarters = 2;
        Length? tightest = null;
        for (var i = 0; i < way.Stretches.Length; i++)
        {
            var stretch = net.Stretches[way.Stretches[i]];
            if (stretch.Pathway.BendRadius is { } radius && !(tightest <= radius)) tightest = radius;
            if (i > 0 && !IsStraightOn(net, net.Stretches[way.Stretches[i - 1]], stretch)) quarters++;
        }
        return new WayBends(quarters, tightest);
    }

    private static bool IsStraightOn(WayNet net, WaySegment before, WaySegment after)
    {
        if (before.Pathway == after.Pathway) return true;
        var (a, b) = (Direction(net, before), Direction(net, after));
        var along = (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);
        return Math.Abs(along) > (1 - PathwayJoins.Touch) * before.Metres * after.Metres;
    }

    private static WayPoint Direction(WayNet net, WaySegment stretch)
    {
        var (a, b) = (net.Points[stretch.A], net.Points[stretch.B]);
        return new WayPoint(b.X - a.X, b.Y - a.Y, b.Z - a.Z);
    }
}
