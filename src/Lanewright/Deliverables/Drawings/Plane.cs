namespace Lanewright.Deliverables.Drawings;

/// <summary>Points of a drawing.</summary>
internal static class Plane
{
    /// <summary>From one point to another, straight.</summary>
    public static double Distance((double X, double Y) from, (double X, double Y) to) =>
        Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2));
}
