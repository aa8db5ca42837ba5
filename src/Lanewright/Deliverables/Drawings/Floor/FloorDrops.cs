using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Floor;

/// <summary>Where cables come down from pathways to racks: a dot on the pathway, and a line from there to a rack that stands beside
/// it.</summary>
internal static class FloorDrops
{
    private const double Radius = 2;

    /// <summary>Draws those of a hall that something comes down at.</summary>
    public static void Draw(Canvas canvas, FloorLayout layout, DesignedPlan designed, Hall hall)
    {
        if (designed.Pathways.Value.Net is not { } net) return;
        foreach (var (rack, point) in Used(designed.Pathways.Value, net, hall))
        {
            var (place, from) = (net.Points[net.PointOf(rack)], net.Points[point]);
            var strip = layout.StripOf(place.X, place.Y);
            var ((x, y), (fromX, fromY)) = (layout.At(place.X, place.Y, strip), layout.At(from.X, from.Y, strip));
            if (Math.Abs(fromX - x) + Math.Abs(fromY - y) > Radius) canvas.Line(fromX, fromY, x, y, "fine");
            canvas.Circle(fromX, fromY, Radius, "box");
        }
    }

    /// <summary>Racks of a hall with the points of pathways that cables come down to them from.</summary>
    private static SortedSet<(int Rack, int Point)> Used(PathwayBook book, WayNet net, Hall hall)
    {
        var used = new SortedSet<(int Rack, int Point)>();
        for (var piece = 0; piece < book.Pieces.Length; piece++)
        {
            if (book.WayOf(piece) is not { Stretches.IsEmpty: false } way) continue;
            var question = book.Pieces[piece].Question;
            Add(question.From, net.Stretches[way.Stretches[0]]);
            Add(question.To, net.Stretches[way.Stretches[^1]]);
        }
        return used;

        void Add(int rack, WaySegment stretch)
        {
            if (net.Building.Racks[rack].Hall != hall) return;
            var place = net.PointOf(rack);
            foreach (var edge in net.EdgesAt(place))
                if (net.Edges[edge].Far(place) is var point && (point == stretch.A || point == stretch.B)) used.Add((rack, point));
        }
    }
}
