namespace Lanewright.Deliverables.Drawings.Section;

/// <summary>Circles alike side by side: those nearest to the middle of a honeycomb.</summary>
internal static class HexPlaces
{
    private const double HalfRootOfThree = 0.8660254037844386;

    /// <summary>Middles of the circles, from the middle of all: around a circle, a gap between two or a gap among three, whichever makes
    /// the smallest ring.</summary>
    public static IReadOnlyList<(double X, double Y)> Of(int count, double radius) =>
        Middles.Select(m => Around(m, count, radius)).MinBy(Reach) ?? [];

    /// <summary>Radius of the ring around so many circles.</summary>
    public static double Ring(int count, double radius) => Reach(Of(count, radius)) + radius;

    private static readonly (double X, double Y)[] Middles = [(0, 0), (1, 0), (1, HalfRootOfThree * 2 / 3)];

    private static List<(double X, double Y)> Around((double X, double Y) middle, int count, double radius)
    {
        var rings = 2 + (int)Math.Ceiling(Math.Sqrt(count));
        return [.. Enumerable.Range(-rings, (2 * rings) + 1)
            .SelectMany(row => Enumerable.Range(-rings, (2 * rings) + 1).Select(column => (
                X: ((column * 2) + (Math.Abs(row) % 2) - middle.X) * radius,
                Y: ((row * 2 * HalfRootOfThree) - middle.Y) * radius)))
            .OrderBy(p => Math.Round(Math.Sqrt((p.X * p.X) + (p.Y * p.Y)), 6))
            .ThenBy(p => Math.Round(p.Y, 6)).ThenBy(p => Math.Round(p.X, 6))
            .Take(count)];
    }

    private static double Reach(IReadOnlyList<(double X, double Y)> places) =>
        places.Select(p => Math.Sqrt((p.X * p.X) + (p.Y * p.Y))).DefaultIfEmpty(0).Max();
}
