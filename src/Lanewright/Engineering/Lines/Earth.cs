using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Distances and positions on the globe, taken as a sphere.</summary>
public static class Earth
{
    private const double HalfTurn = 180;

    /// <summary>The shortest way over the ground between two points in degrees.</summary>
    public static Length Between(
        StandardsLibrary standards, (double Longitude, double Latitude) from, (double Longitude, double Latitude) to)
    {
        var (y1, y2) = (Radians(from.Latitude), Radians(to.Latitude));
        var half = Squares.Of(Math.Sin((y2 - y1) / 2))
            + (Math.Cos(y1) * Math.Cos(y2) * Squares.Of(Math.Sin(Radians(to.Longitude - from.Longitude) / 2)));
        return Radius(standards) * (2 * Math.Asin(Math.Min(1, Math.Sqrt(half))));
    }

    /// <summary>How far east and north a point lies of another, on a flat map that is true near the latitude of the other.</summary>
    public static (Length East, Length North) Position(
        StandardsLibrary standards, (double Longitude, double Latitude) origin, (double Longitude, double Latitude) point)
    {
        var radius = Radius(standards);
        return (radius * (Radians(point.Longitude - origin.Longitude) * Math.Cos(Radians(origin.Latitude))),
            radius * Radians(point.Latitude - origin.Latitude));
    }

    private static Length Radius(StandardsLibrary standards) =>
        Length.FromKilometres(standards.LineValue("earth", "radius").Value);

    private static double Radians(double degrees) => degrees * Math.PI / HalfTurn;
}
