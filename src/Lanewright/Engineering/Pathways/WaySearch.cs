using System.Collections.Immutable;
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
    private WaySearch? again;
    private int source;

    public WaySearch(WayNet net)
    {
        this.net = net;
        metres = new double[net.States];
        by = new int[net.States];
        heap = new WayHeap(net.States);
    }

    /// <summary>Searches from a rack to all of its hall or, when another hall is named, to all of that.</summary>
    /// <param name="start">The rack, and where ways from it are to begin and to end.</param>
    public void From(WayStart start) => Search(start, null, [], -1, default);

    /// <summary>The shortest way to one rack past what is closed; null where none is left. Nothing that lies farther is looked at, and in
    /// one hall what lies towards the rack first (Hart, Nilsson and Raphael 1968).</summary>
    /// <param name="question">The racks.</param>
    /// <param name="isClosed">What may not be used, by the numbers of <see cref="WayNet.Closable"/>; null for nothing.</param>
    public CableWay? Past(WayQuestion question, Predicate<int>? isClosed)
    {
        if (Past(question, isClosed, []) is not { } shortest) return null;
        // A way that passes an exit twice goes out of a hall only to come back beside where it was. Of all ways that pass each once, each
        // either never reaches that exit from within, or never goes from it into the hall: what is left after both is the answer.
        var open = new PriorityQueue<(ImmutableHashSet<int> Shut, CableWay Way, int Twice), (double Metres, int Number)>();
        var number = 0;
        open.Enqueue(([], shortest.Way, shortest.Twice), (shortest.Metres, number));
        while (open.TryDequeue(out var next, out _))
        {
            if (next.Twice < 0) return next.Way;
            if (number > MostTried) return null;
            foreach (var isByRoute in new[] { false, true })
            {
                var shut = next.Shut.Add(net.StateOf(next.Twice, isByRoute));
                if (Past(question, isClosed, shut) is { } found) open.Enqueue((shut, found.Way, found.Twice), (found.Metres, ++number));
            }
        }
        return null;
    }

    private (CableWay Way, double Metres, int Twice)? Past(WayQuestion question, Predicate<int>? isClosed, ImmutableHashSet<int> shut)
    {
        var end = net.PointOf(question.To);
        Search(WayStart.Of(net, question), isClosed, shut, end, question);
        if (!Trace(question with { ToHeight = null })) return null;
        var found = CollectionsMarshal.AsSpan(edges);
        return (WayOf(net, source, found), metres[net.StateOf(end, false)], net.PassedTwice(source, found));
    }

    private void Search(WayStart start, Predicate<int>? isClosed, ImmutableHashSet<int> shut, int goal, WayQuestion question)
    {
        var (farHall, side) = (start.FarHall, start.Side);
        source = net.PointOf(start.Rack);
        var ownHall = net.Building.Racks[start.Rack].Hall.Index;
        // Between halls the way is as long as it was surveyed, however near their points seem.
        var (isOneHall, mayBeShut) = (ownHall == farHall, !shut.IsEmpty);
        var isStraight = goal >= 0 && isOneHall;
        var end = goal < 0 ? default : net.Points[goal] with { Z = question.ToHeight?.Metres ?? net.Points[goal].Z };
        Array.Fill(metres, double.PositiveInfinity);
        Array.Fill(by, -1);
        metres[net.StateOf(source, false)] = 0;
        heap.Clear();
        heap.Lower(net.StateOf(source, false), 0);
        while (heap.TryTake(out var state))
        {
            var (point, here) = (net.PointAt(state), metres[state]);
            if (point == goal) return;
            var isLeaving = net.IsLeaving(state);
            var isShut = mayBeShut && shut.Contains(state);
            foreach (ref readonly var arc in net.ArcsAt(point))
            {
                var way = here + (arc.Far == goal ? net.DropMetres(goal, point, question.ToHeight)
                    : point == source ? net.DropMetres(source, arc.Far, question.FromHeight)
                    : arc.Metres);
                if (way >= metres[arc.State]) continue;
                if (point == source && start.IsOtherHeight(net.Points[arc.Far])) continue;
                if (arc.Side != side && arc.Side != 0 && side != 0) continue;
                if (arc.Route >= 0 ? isOneHall || !net.LeadsOn(net.Edges.ItemRef(arc.Edge), point, ownHall, farHall)
                    : isLeaving || isShut) continue;
                if (isClosed is not null && IsClosed(arc.Edge, isClosed)) continue;
                if (mayBeShut && net.IsLeaving(arc.State) && shut.Contains(arc.State)) continue;
                metres[arc.State] = way;
                by[arc.State] = arc.Edge;
                // A rack is an end of a way, never on it.
                if (net.IsRack(arc.Far) && arc.Far != goal) continue;
                // No way is shorter than the straight line, so what is taken from the heap first is reached by its shortest way.
                heap.Lower(arc.State, isStraight ? way + net.Points[arc.Far].To(end) : way);
            }
        }
    }

    /// <summary>The way to the other rack of a question; null where none leads there.</summary>
    /// <param name="question">The question.</param>
    public CableWay? To(WayQuestion question)
    {
        if (!Trace(question)) return null;
        var found = CollectionsMarshal.AsSpan(edges);
        return net.PassedTwice(source, found) < 0 ? WayOf(net, source, found) : (again ??= new WaySearch(net)).Past(question, null);
    }

    /// <summary>Writes down the edges to the other rack; false where no way leads there.</summary>
    private bool Trace(WayQuestion question)
    {
        var end = net.PointOf(question.To);
        if (double.IsInfinity(metres[net.StateOf(end, false)])) return false;
        edges.Clear();
        var last = question.ToHeight is { } height ? LastTo(end, height, question.Side) : by[net.StateOf(end, false)];
        edges.Add(last);
        for (var at = net.Edges[last].Far(end); at != source; at = net.Edges[last].Far(at)) edges.Add(last = by[Before(last, at)]);
        edges.Reverse();
        return true;
    }

    /// <summary>The state in which a point was left along an edge: into a hall as it was reached by a route, along a route as it was
    /// reached soonest.</summary>
    private int Before(int edge, int point)
    {
        var byRoute = net.StateOf(point, true);
        if (!net.IsExit(point) || net.Edges[edge].Route < 0) return byRoute;
        var within = net.StateOf(point, false);
        return metres[within] <= metres[byRoute] ? within : byRoute;
    }

    /// <summary>The edge by which a height in a rack is reached soonest.</summary>
    private int LastTo(int end, Length height, int side)
    {
        var (last, least) = (by[net.StateOf(end, false)], double.PositiveInfinity);
        foreach (ref readonly var arc in net.ArcsAt(end))
        {
            if (arc.Side != side && arc.Side != 0 && side != 0) continue;
            var way = metres[net.StateOf(arc.Far, true)] + net.DropMetres(end, arc.Far, height);
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
        var (inPathways, onRoutes) = (0, 0);
        foreach (var e in edges)
        {
            if (net.Edges.ItemRef(e).Stretch >= 0) inPathways++;
            if (net.Edges.ItemRef(e).Route >= 0) onRoutes++;
        }
        var (stretches, next, metres) = (new int[inPathways], 0, 0.0);
        var (routes, nextRoute) = (onRoutes > 0 ? new Model.Places.HallRoute[onRoutes] : [], 0);
        foreach (var e in edges)
        {
            ref readonly var edge = ref net.Edges.ItemRef(e);
            if (edge.Stretch >= 0) stretches[next++] = edge.Stretch;
            if (edge.Route >= 0) routes[nextRoute++] = net.Building.Routes[edge.Route];
            else metres += Inside(net, edge);
        }
        var (low, high) = (Height(net, edges[0], source), Height(net, edges[^1], -1));
        return new CableWay(ImmutableCollectionsMarshal.AsImmutableArray(stretches), metres, low, high,
            ImmutableCollectionsMarshal.AsImmutableArray(routes));
    }

    private bool IsClosed(int index, Predicate<int> isClosed)
    {
        var edge = net.Edges[index];
        return (edge.Stretch >= 0 && isClosed(edge.Stretch)) || (edge.Route >= 0 && isClosed(net.Stretches.Length + edge.Route));
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

    /// <summary>Choices tried at most where exits would be passed twice; each searches once.</summary>
    private const int MostTried = 2_000;
}
