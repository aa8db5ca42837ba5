using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Where in a hall a finding means.</summary>
internal static class Places
{
    /// <summary>A stretch by its ends, in metres along and across the rows; a route between halls has no such place.</summary>
    public static string Of(SegmentFill fill) => fill.Pathway.Route is null
        ? $"between {Of(fill.Net.Points[fill.Stretch.A])} and {Of(fill.Net.Points[fill.Stretch.B])}"
        : "on its whole length";

    /// <summary>A point, in metres along and across the rows and above the floor.</summary>
    public static string Of(WayPoint point) =>
        $"({Numerals.Fixed(point.X, 1)}, {Numerals.Fixed(point.Y, 1)}, {Numerals.Fixed(point.Z, 1)}) m";
}
