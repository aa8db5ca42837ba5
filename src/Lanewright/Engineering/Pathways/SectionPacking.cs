using System.Collections.Immutable;

namespace Lanewright.Engineering.Pathways;

/// <summary>Round bundles laid into a tray or a round duct, each where it comes to rest lowest, then farthest left: the thickest first. Not
/// the densest way there is, and not looser than what is laid by hand.</summary>
public static class SectionPacking
{
    /// <summary>Middles of circles above the floor of a tray and from its left wall, in the order they were given; circles wider than the
    /// tray are left out.</summary>
    /// <param name="width">Inside width.</param>
    /// <param name="radii">Radii, in the unit of the width.</param>
    public static ImmutableArray<(double X, double Y)?> Pack(double width, IReadOnlyList<double> radii) =>
        Lay(new BoxWalls(width), radii);

    /// <summary>The same in a round duct, above its lowest point; circles that find no room are left out.</summary>
    /// <param name="diameter">Inside diameter.</param>
    /// <param name="radii">Radii, in the unit of the diameter.</param>
    public static ImmutableArray<(double X, double Y)?> PackRound(double diameter, IReadOnlyList<double> radii) =>
        Lay(new RoundWalls(diameter / 2), radii);

    /// <summary>Places where a circle of one radius may come to rest are kept by their height. One that is taken or covered is never free
    /// again, so each is looked at once.</summary>
    private static ImmutableArray<(double X, double Y)?> Lay(ISectionWalls walls, IReadOnlyList<double> radii)
    {
        var placed = new PlacedCircles(radii.Count == 0 ? 1 : radii.Max());
        var found = new (double, double)?[radii.Count];
        foreach (var alike in Enumerable.Range(0, radii.Count).GroupBy(i => radii[i]).OrderByDescending(g => g.Key))
        {
            var radius = alike.Key;
            var rests = new PriorityQueue<(double X, double Y), (long, long)>();
            foreach (var place in walls.First(radius)) Offer(place);
            foreach (var circle in placed.All) Around(circle);
            foreach (var i in alike)
            {
                if (Lowest() is not { } rest) break;
                var circle = (rest.X, rest.Y, radius);
                placed.Add(circle);
                found[i] = rest;
                Around(circle);
            }

            (double X, double Y)? Lowest()
            {
                while (rests.TryDequeue(out var place, out _))
                    if (!placed.Near(place.X, place.Y).Any(p => Overlaps(p, place, radius))) return place;
                return null;
            }

            void Around((double X, double Y, double R) circle)
            {
                foreach (var place in walls.Beside(circle, radius)) Offer(place);
                foreach (var other in placed.Around(circle.X, circle.Y))
                {
                    foreach (var place in Crossing((circle.X, circle.Y), circle.R + radius, (other.X, other.Y), other.R + radius))
                        Offer(place);
                }
            }

            void Offer((double X, double Y) place)
            {
                if (walls.Holds(place, radius)) rests.Enqueue(place, (InSteps(place.Y), InSteps(place.X)));
            }
        }
        return [.. found];
    }

    /// <summary>Where two circles cross: none, or two points.</summary>
    internal static IEnumerable<(double X, double Y)> Crossing(
        (double X, double Y) one, double ofOne, (double X, double Y) other, double ofOther)
    {
        var (dx, dy) = (other.X - one.X, other.Y - one.Y);
        var apart = Math.Sqrt((dx * dx) + (dy * dy));
        if (apart > ofOne + ofOther || apart <= Math.Abs(ofOne - ofOther)) yield break;
        var along = ((ofOne * ofOne) - (ofOther * ofOther) + (apart * apart)) / (2 * apart);
        var off = Math.Sqrt(Math.Max(0, (ofOne * ofOne) - (along * along)));
        var (x, y) = (one.X + (along * dx / apart), one.Y + (along * dy / apart));
        yield return (x - (off * dy / apart), y + (off * dx / apart));
        yield return (x + (off * dy / apart), y - (off * dx / apart));
    }

    private static bool Overlaps((double X, double Y, double R) other, (double X, double Y) place, double radius)
    {
        var (x, y, apart) = (other.X - place.X, other.Y - place.Y, other.R + radius - Rounding);
        return (x * x) + (y * y) < apart * apart;
    }

    private static long InSteps(double value) => (long)Math.Round(value / Rounding);

    /// <summary>What is nearer than this is in one place.</summary>
    internal const double Rounding = 1e-6;
}
