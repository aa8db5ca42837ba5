using System.Runtime.InteropServices;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>Shortest ways from a rack. One search is held at a time; the room for it is used again.</summary>
internal sealed class WaySearch
{
    private readonly WayNet net;
    private readonly double[] metres;
    private readonly int[] by;
    private readonly WayHeap heap;
    private readonly List<int> edges = [];
    private int source;

    public WaySearch(WayNet net)
    {
        this.net = net;
        metres = new double[net.Points.Length];
        by = new int[net.Points.Length];
        heap = new WayHeap(net.Points.Length);
    }

    /// <summary>Searches from a rack to all of its hall and, when another hall is named, to all of that.</summary>
    /// <param name="start">The rack, and where ways from it are to begin and to end.</param>
    public void From(WayStart start) => Search(start, null, -1, default);

    /// <summary>The shortest way to one rack past what is closed; null where none is left. Nothing that lies farther is looked at, and in
    /// one hall what lies towards the rack first (Hart, Nilsson and Raphael 1968).</summary>
    /// <param name="question">The racks.</param>
    /// <param name="isClosed">What may not be used, by the numbers of <see cref="WayNet.Closable"/>.</param>
    public CableWay? Past(WayQuestion question, Predicate<int> isClosed)
    {
        Search(WayStart.Of(net, question), isClosed, net.PointOf(question.To), question);
        return To(question with { ToHeight = null });
    }

    private void Search(WayStart start, Predicate<int>? isClosed, int goal, WayQuestion question)
    {
        var (farHall, side) = (start.FarHall, start.Side);
        source = net.PointOf(start.Rack);
        // Between halls the way is as long as it was surveyed, however near their points seem.
        var isStraight = goal >= 0 && net.Building.Racks[start.Rack].Hall.Index == farHall;
        var ownHall = net.Building.Racks[start.Rack].Hall.Index;
        var end = goal < 0 ? default : net.Points[goal] with { Z = question.ToHeight?.Metres ?? net.Points[goal].Z };
        Array.Fill(metres, double.PositiveInfinity);
        Array.Fill(by, -1);
        metres[source] = 0;
        heap.Clear();
        heap.Lower(source, 0);
        while (heap.TryTake(out var point))
        {
            if (point == goal) return;
            var (isExit, here) = (net.IsExit(point), metres[point]);
            var cameByRoute = isExit && net.Edges[by[point]].Route >= 0;
            foreach (ref readonly var arc in net.ArcsAt(point))
            {
                var way = here + (arc.Far == goal ? net.DropMetres(goal, point, question.ToHeight)
                    : point == source ? net.DropMetres(source, arc.Far, question.FromHeight)
                    : arc.Metres);
                if (way >= metres[arc.Far]) continue;
                if (point == source && start.IsOtherHeight(net.Points[arc.Far])) continue;
                if (isExit && cameByRoute == (arc.Route >= 0)) continue;
                if (arc.Side != side && arc.Side != 0 && side != 0) continue;
                if (arc.Route >= 0 ? !Leads(arc, point, ownHall, farHall) : arc.Hall != ownHall && arc.Hall != farHall) continue;
                if (isClosed is not null && IsClosed(arc.Edge, isClosed)) continue;
                metres[arc.Far] = way;
                by[arc.Far] = arc.Edge;
                // A rack is an end of a way, never on it.
                if (net.IsRack(arc.Far) && arc.Far != goal) continue;
                // No way is shorter than the straight line, so what is taken from the heap first is reached by its shortest way.
                heap.Lower(arc.Far, isStraight ? way + net.Points[arc.Far].To(end) : way);
            }
        }
    }

    /// <summary>The way to the other rack of a question; null where none leads there.</summary>
    /// <param name="question">The question.</param>
    public CableWay? To(WayQuestion question)
    {
        var end = net.PointOf(question.To);
        if (double.IsInfinity(metres[end])) return null;
        edges.Clear();
        var last = question.ToHeight is { } height ? LastTo(end, height, question.Side) : by[end];
        edges.Add(last);
        for (var at = net.Edges[last].Far(end); at != source; at = net.Edges[by[at]].Far(at)) edges.Add(by[at]);
        edges.Reverse();
        return WayOf(net, source, CollectionsMarshal.AsSpan(edges));
    }

    /// <summary>The edge by which a height in a rack is reached soonest.</summary>
    private int LastTo(int end, Length height, int side)
    {
        var (last, least) = (by[end], double.PositiveInfinity);
        foreach (ref readonly var arc in net.ArcsAt(end))
        {
            if (arc.Side != side && arc.Side != 0 && side != 0) continue;
            var way = metres[arc.Far] + net.DropMetres(end, arc.Far, height);
            if (way < least) (last, least) = (arc.Edge, way);
        }
        return last;
    }

    /// <summary>What was found, to be put back later.</summary>
    public (double[] Metres, int[] By, int Source) Result() => ([.. metres], [.. by], source);

    /// <summary>Puts back what was found before.</summary>
    public void Restore((double[] Metres, int[] By, int Source) result)
    {
        result.Metres.CopyTo(metres, 0);
        result.By.CopyTo(by, 0);
        source = result.Source;
    }

    /// <summary>The way along edges that begin at a rack.</summary>
    public static CableWay WayOf(WayNet net, int source, ReadOnlySpan<int> edges)
    {
        var inPathways = 0;
        foreach (var e in edges)
            if (net.Edges.ItemRef(e).Stretch >= 0) inPathways++;
        var (stretches, next, metres) = (new int[inPathways], 0, 0.0);
        Model.Places.HallRoute? route = null;
        foreach (var e in edges)
        {
            ref readonly var edge = ref net.Edges.ItemRef(e);
            if (edge.Stretch >= 0) stretches[next++] = edge.Stretch;
            if (edge.Route >= 0) route = net.Building.Routes[edge.Route];
            else metres += Inside(net, edge);
        }
        var (low, high) = (Height(net, edges[0], source), Height(net, edges[^1], -1));
        return new CableWay(ImmutableCollectionsMarshal.AsImmutableArray(stretches), metres, low, high, route);
    }

    private bool IsClosed(int index, Predicate<int> isClosed)
    {
        var edge = net.Edges[index];
        return (edge.Stretch >= 0 && isClosed(edge.Stretch)) || (edge.Route >= 0 && isClosed(net.Stretches.Length + edge.Route));
    }

    /// <summary>A route leads out of the own hall and into the other, never back and never through a third.</summary>
    private bool Leads(in WayArc arc, int at, int ownHall, int farHall)
    {
        var (route, edge) = (net.Building.Routes[arc.Route], net.Edges[arc.Edge]);
        var (from, to) = (route.From.Index, route.To.Index);
        return ownHall != farHall
            && ((edge.A == at && from == ownHall && to == farHall) || (edge.B == at && to == ownHall && from == farHall));
    }

    /// <summary>What goes up and down at a rack depends on the device and is counted with it.</summary>
    private static double Inside(WayNet net, in WayEdge edge) =>
        net.IsRack(edge.B) ? net.Points[edge.A].Across(net.Points[edge.B]) : edge.Metres;

    private static double Height(WayNet net, int edge, int rackPoint)
    {
        var joined = net.Edges[edge];
        // Edges of racks are written from the pathway to the rack.
        return net.Points[rackPoint >= 0 ? joined.Far(rackPoint) : joined.A].Z;
    }
}
