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

    /// <summary>How far east and north a point lies of another, on a flat map with true distances and directions from that other
    /// (azimuthal equidistant): distances between others are too long by a sixth of the square of the angle they lie out, a fiftieth at
    /// 20 degrees.</summary>
    public static (Length East, Length North) Position(
        StandardsLibrary standards, (double Longitude, double Latitude) origin, (double Longitude, double Latitude) point)
    {
        var (y0, y) = (Radians(origin.Latitude), Radians(point.Latitude));
        var turn = Radians(point.Longitude - origin.Longitude);
        var east = Math.Cos(y) * Math.Sin(turn);
        var north = (Math.Cos(y0) * Math.Sin(y)) - (Math.Sin(y0) * Math.Cos(y) * Math.Cos(turn));
        var aside = Math.Sqrt(Squares.Of(east) + Squares.Of(north));
        var far = Math.Atan2(aside, (Math.Sin(y0) * Math.Sin(y)) + (Math.Cos(y0) * Math.Cos(y) * Math.Cos(turn)));
        var stretch = aside > 0 ? far / aside : 1;
        return (Radius(standards) * (east * stretch), Radius(standards) * (north * stretch));
    }

    /// <summary>The middle of points on the globe, wherever degrees begin to be counted; nothing without any.</summary>
    public static (double Longitude, double Latitude) Middle(IEnumerable<(double Longitude, double Latitude)> points)
    {
        var (x, y, z) = (0.0, 0.0, 0.0);
        foreach (var (longitude, latitude) in points)
        {
            var (around, up) = (Radians(longitude), Radians(latitude));
            x += Math.Cos(up) * Math.Cos(around);
            y += Math.Cos(up) * Math.Sin(around);
            z += Math.Sin(up);
        }
        return (Degrees(Math.Atan2(y, x)), Degrees(Math.Atan2(z, Math.Sqrt(Squares.Of(x) + Squares.Of(y)))));
    }

    private static Length Radius(StandardsLibrary standards) =>
        Length.FromKilometres(standards.LineValue("earth", "radius").Value);

    private static double Degrees(double radians) => radians / Math.PI * HalfTurn;

    private static double Radians(double degrees) => degrees * Math.PI / HalfTurn;
}
