using System.Collections.Immutable;

namespace Lanewright.Engineering.Pathways;

/// <summary>Round bundles laid into a tray, each where it comes to rest lowest, then farthest left: the thickest first. Not the densest way
/// there is, and not looser than what is laid by hand.</summary>
public static class SectionPacking
{
    private const double Rounding = 1e-6;

    /// <summary>Middles of circles above the floor of a tray and from its left wall, in the order they were given; circles wider than the
    /// tray are left out.</summary>
    /// <param name="width">Inside width.</param>
    /// <param name="radii">Radii, in the unit of the width.</param>
    public static ImmutableArray<(double X, double Y)?> Pack(double width, IReadOnlyList<double> radii)
    {
        var placed = new PlacedCircles(radii.Count == 0 ? 1 : radii.Max());
        var found = new (double, double)?[radii.Count];
        foreach (var i in Enumerable.Range(0, radii.Count).OrderByDescending(i => radii[i]).ThenBy(i => i))
        {
            if (radii[i] * 2 > width) continue;
            var rest = Lowest(width, radii[i], placed);
            placed.Add((rest.X, rest.Y, radii[i]));
            found[i] = rest;
        }
        return [.. found];
    }

    private static (double X, double Y) Lowest(double width, double radius, PlacedCircles placed)
    {
        var best = (X: radius, Y: double.PositiveInfinity);
        foreach (var place in Candidates(width, radius, placed))
        {
            if (place.Y > best.Y + Rounding || (Math.Abs(place.Y - best.Y) <= Rounding && place.X >= best.X)) continue;
            if (place.X < radius - Rounding || place.X > width - radius + Rounding || place.Y < radius - Rounding) continue;
            if (!placed.Near(place.X, place.Y).Any(p => Overlaps(p, place, radius))) best = place;
        }
        return best;
    }

    private static bool Overlaps((double X, double Y, double R) other, (double X, double Y) place, double radius)
    {
        var (x, y, apart) = (other.X - place.X, other.Y - place.Y, other.R + radius - Rounding);
        return (x * x) + (y * y) < apart * apart;
    }

    /// <summary>Places where a circle touches two things: floor, walls and other circles.</summary>
    private static IEnumerable<(double X, double Y)> Candidates(double width, double radius, PlacedCircles placed)
    {
        yield return (radius, radius);
        yield return (width - radius, radius);
        foreach (var one in placed.All)
        {
            var (x, y, r) = one;
            var reach = r + radius;
            var beside = Math.Sqrt(Math.Max(0, (reach * reach) - ((y - radius) * (y - radius))));
            yield return (x - beside, radius);
            yield return (x + beside, radius);
            foreach (var wall in new[] { radius, width - radius })
                if (Math.Abs(wall - x) <= reach) yield return (wall, y + Math.Sqrt((reach * reach) - ((wall - x) * (wall - x))));
            foreach (var other in placed.Around(x, y))
                foreach (var place in Between(one, other, radius)) yield return place;
        }
    }

    private static IEnumerable<(double X, double Y)> Between(
        (double X, double Y, double R) one, (double X, double Y, double R) other, double radius)
    {
        var (dx, dy) = (other.X - one.X, other.Y - one.Y);
        var apart = Math.Sqrt((dx * dx) + (dy * dy));
        var (a, b) = (one.R + radius, other.R + radius);
        if (apart > a + b || apart <= 0) yield break;
        var along = ((a * a) - (b * b) + (apart * apart)) / (2 * apart);
        var off = Math.Sqrt(Math.Max(0, (a * a) - (along * along)));
        var (x, y) = (one.X + (along * dx / apart), one.Y + (along * dy / apart));
        yield return (x - (off * dy / apart), y + (off * dx / apart));
        yield return (x + (off * dy / apart), y - (off * dx / apart));
    }
}
