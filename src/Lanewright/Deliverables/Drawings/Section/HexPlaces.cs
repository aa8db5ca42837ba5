namespace Lanewright.Deliverables.Drawings.Section;

/// <summary>Circles alike side by side: those nearest to the middle of a honeycomb.</summary>
internal static class HexPlaces
{
    private const double HalfRootOfThree = 0.8660254037844386;

    /// <summary>Middles of the circles, from the middle of all.</summary>
    public static IEnumerable<(double X, double Y)> Of(int count, double radius)
    {
        var rings = 1 + (int)Math.Ceiling(Math.Sqrt(count));
        return Enumerable.Range(-rings, (2 * rings) + 1)
            .SelectMany(row => Enumerable.Range(-rings, (2 * rings) + 1).Select(column => At(row, column, radius, count)))
            .OrderBy(p => Math.Round((p.X * p.X) + (p.Y * p.Y), 6)).ThenBy(p => Math.Round(p.Y, 6)).ThenBy(p => Math.Round(p.X, 6))
            .Take(count);
    }

    /// <summary>Two circles touch in the middle; more than two have one there.</summary>
    private static (double X, double Y) At(int row, int column, double radius, int count)
    {
        var shift = (Math.Abs(row) % 2 == 1 ? radius : 0) + (count == 2 ? radius : 0);
        return ((column * 2 * radius) + shift, row * 2 * HalfRootOfThree * radius);
    }
}
