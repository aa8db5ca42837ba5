using System.Collections.Immutable;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;

namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>Pathways that lie above one another, such as a tray overhead and one under the floor: seen from above the one hides the other,
/// so they share the width of their band, the highest nearest to the top of the sheet or to its left.</summary>
internal sealed class FloorStacks
{
    private const double Touch = 1e-6;

    private readonly Dictionary<Pathway, (int Lane, int Lanes, double Metres)> laneOf = new(ReferenceEqualityComparer.Instance);

    /// <summary>Looks through the pathways of a hall.</summary>
    public FloorStacks(IEnumerable<Pathway> pathways)
    {
        var flat = pathways.Where(p => !p.IsRiser).ToImmutableArray();
        foreach (var own in flat)
        {
            var others = flat.Where(p => !ReferenceEquals(p, own) && AreAboveOneAnother(own, p)).ToList();
            if (others.Count == 0) continue;
            laneOf[own] = (others.Count(p => HeightOf(p) > HeightOf(own)), others.Count + 1,
                others.Append(own).Max(p => p.Width.Metres));
        }
    }

    /// <summary>Whether any do.</summary>
    public bool Any => laneOf.Count > 0;

    /// <summary>How wide a pathway is drawn, and how far beside its line.</summary>
    /// <param name="pathway">The pathway.</param>
    /// <param name="scale">Units of the sheet for a metre.</param>
    /// <param name="least">The least width of a band.</param>
    public (double Width, double Beside) Of(Pathway pathway, double scale, double least)
    {
        if (!laneOf.TryGetValue(pathway, out var lane)) return (Math.Max(least, pathway.Width.Metres * scale), 0);
        // A rim stands between two of them.
        var step = Math.Max(least + Canvas.RimOver, lane.Metres * scale / lane.Lanes);
        return (step - Canvas.RimOver, (((lane.Lanes - 1) / 2.0) - lane.Lane) * step);
    }

    /// <summary>A line moved towards the top of the sheet, or where it runs up it, to the left.</summary>
    public static (double X1, double Y1, double X2, double Y2) Moved((double X1, double Y1, double X2, double Y2) line, double beside)
    {
        var (x, y) = (line.X2 - line.X1, line.Y2 - line.Y1);
        var length = Math.Sqrt((x * x) + (y * y));
        if (beside is 0 || length < Touch) return line;
        var isLeftward = x < -Touch || (Math.Abs(x) <= Touch && y > 0);
        var (dx, dy) = (y / length * beside, -x / length * beside);
        if (isLeftward) (dx, dy) = (-dx, -dy);
        return (line.X1 + dx, line.Y1 + dy, line.X2 + dx, line.Y2 + dy);
    }

    /// <summary>Whether two run side by side in plan, nearer than they are wide and at different heights.</summary>
    private static bool AreAboveOneAnother(Pathway one, Pathway other)
    {
        if (Math.Abs(HeightOf(one) - HeightOf(other)) <= Touch) return false;
        var (from, to) = (new WayPoint(one.FromX.Metres, one.FromY.Metres), new WayPoint(one.ToX.Metres, one.ToY.Metres));
        var length = from.FlatTo(to);
        var (start, end) = (Seen(other.FromX.Metres, other.FromY.Metres), Seen(other.ToX.Metres, other.ToY.Metres));
        var near = Math.Min(one.Width.Metres, other.Width.Metres) / 2;
        return Math.Abs(start.Beside) < near && Math.Abs(end.Beside) < near
            && Math.Min(length, Math.Max(start.Along, end.Along)) - Math.Max(0, Math.Min(start.Along, end.Along)) > near;

        (double Along, double Beside) Seen(double x, double y)
        {
            var (ux, uy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
            return (((x - from.X) * ux) + ((y - from.Y) * uy), ((y - from.Y) * ux) - ((x - from.X) * uy));
        }
    }

    private static double HeightOf(Pathway pathway) => (pathway.FromHeight.Metres + pathway.ToHeight.Metres) / 2;
}
