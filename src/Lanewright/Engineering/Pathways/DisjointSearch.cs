using System.Runtime.InteropServices;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>Two ways from one rack to two racks, or to one, that have as few stretches in common as there can be, then as few crossings,
/// and are then as short together as there can be: a flow of two at the least cost, found by two searches, the second of which may turn
/// parts of the first way back (Suurballe; Bhandari).</summary>
public sealed class DisjointSearch
{
    private readonly WayNet net;
    private readonly double[] cost;
    private readonly double[] potential;
    private readonly int[] by;
    private readonly WayHeap heap;
    private readonly int[] enteredBy;
    private readonly int joins;
    private readonly bool[] isOnFirst;
    private readonly double forPoint;
    private readonly double forStretch;

    /// <summary>Searches in a graph.</summary>
    public DisjointSearch(WayNet net)
    {
        this.net = net;
        // A point, as it is reached by a route or from within a hall, is passed in two states: reached (even) and left (odd).
        var states = net.States * 2;
        cost = new double[states];
        potential = new double[states];
        by = new int[states];
        heap = new WayHeap(states);
        enteredBy = new int[net.States];
        isOnFirst = new bool[net.States];
        joins = net.Edges.Length;
        // A stretch in common outweighs all crossings in common, and each of those all metres.
        forPoint = 1 + net.Edges.Sum(e => e.Metres);
        forStretch = forPoint * (net.Points.Length + 1);
    }

    /// <summary>Whether the two ways that the last search came to pass an exit twice or a route both ways, which no cable does, so that it
    /// says nothing about ways that do not.</summary>
    public bool IsUndecided { get; private set; }

    /// <summary>The two ways; null where no way leads to one of the racks, or where that is undecided.</summary>
    /// <param name="from">The rack both begin at, and the height where that matters.</param>
    /// <param name="one">Where the first ends.</param>
    /// <param name="other">Where the second ends; where that is the same rack, it is reckoned at the height of the first.</param>
    /// <param name="side">Number of the side; 0 for any.</param>
    public (CableWay One, CableWay Other)? Find(
        (int Rack, Length? Height) from, (int Rack, Length? Height) one, (int Rack, Length? Height) other, int side)
    {
        var query = new Query(
            net.PointOf(from.Rack), net.PointOf(one.Rack), net.PointOf(other.Rack), side)
        {
            Heights = (from.Height, one.Height, other.Height),
            OwnHall = HallOf(from.Rack),
            FarHall = HallOf(one.Rack) == HallOf(other.Rack) ? HallOf(one.Rack) : -1,
        };
        IsUndecided = false;
        Array.Fill(isOnFirst, false);
        Array.Fill(enteredBy, -1);
        Array.Fill(potential, 0);
        if (Search(query, isSecond: false, -1) is not { } firstEnd) return null;
        var first = Trace(query, firstEnd);
        for (var state = 0; state < cost.Length; state++) potential[state] = cost[state];
        foreach (var (edge, point) in first)
        {
            enteredBy[Reached(edge, point)] = edge;
            isOnFirst[Reached(edge, point)] = true;
        }
        var left = query.One == query.Other ? query.One : firstEnd == query.One ? query.Other : query.One;
        if (Search(query, isSecond: true, left) is null) return null;
        var flow = Combine(first, Trace(query, left));
        return Split(query, flow);
    }

    private int HallOf(int rack) => net.Building.Racks[rack].Hall.Index;

    /// <summary>Searches to either end, or to the one that is left; gives the point that was reached.</summary>
    private int? Search(Query query, bool isSecond, int left)
    {
        Array.Fill(cost, double.PositiveInfinity);
        Array.Fill(by, None);
        heap.Clear();
        Reach((2 * net.StateOf(query.Source, true)) + 1, 0, None);
        int? end = null;
        while (heap.TryTake(out var state))
        {
            var point = net.PointAt(state / 2);
            if (state % 2 == 0 && (isSecond ? point == left : point == query.One || point == query.Other)) end ??= point;
            if (state % 2 == 0) Pass(state, point, query, isSecond);
            else Leave(state, point, query, isSecond);
        }
        return end;
    }

    /// <summary>From reaching a point to leaving it, or back along the first way.</summary>
    private void Pass(int state, int point, Query query, bool isSecond)
    {
        if (!net.IsRack(point)) Step(state, state + 1, isSecond && isOnFirst[state / 2] ? forPoint : 0, ThroughPoint);
        if (!isSecond || enteredBy[state / 2] is not (>= 0 and var edge)) return;
        Step(state, (2 * Left(edge, Far(edge, point))) + 1, -Metres(edge, query), -edge - BackFrom);
    }

    /// <summary>From leaving a point along every edge; and back to reaching it, where the first way passed it.</summary>
    private void Leave(int state, int point, Query query, bool isSecond)
    {
        if (isSecond && isOnFirst[state / 2] && point != query.Source) Step(state, state - 1, 0, BackThroughPoint);
        var isLeaving = net.IsLeaving(state / 2);
        // What a route brought to an exit may leave along the next as well.
        if (net.IsExit(point) && !isLeaving) Step(state, 2 * net.StateOf(point, false), 0, joins + point);
        foreach (var e in net.EdgesAt(point))
        {
            var edge = net.Edges[e];
            var far = edge.Far(point);
            if (net.IsExit(point) && isLeaving != (edge.Route >= 0)) continue;
            if (net.IsRack(far) && far != query.One && far != query.Other) continue;
            if (edge.Side != query.Side && edge.Side != 0 && query.Side != 0) continue;
            if (edge.Route >= 0 && (query.OwnHall == query.FarHall || !net.LeadsOn(edge, point, query.OwnHall, query.FarHall))) continue;
            var isShared = isSecond && enteredBy[Reached(e, far)] == e;
            // Where cables lie in nothing there is nothing to have in common.
            var more = !isShared ? 0 : edge.Stretch >= 0 || edge.Route >= 0 ? forStretch : 0;
            Step(state, 2 * Reached(e, far), Metres(e, query) + more, e);
        }
    }

    /// <summary>What goes up and down at a rack is as long as it is from the device.</summary>
    private double Metres(int number, Query query)
    {
        if (number >= joins) return 0;
        var edge = net.Edges[number];
        return net.IsRack(edge.B) ? net.DropMetres(edge.B, edge.A, query.HeightAt(edge.B)) : edge.Metres;
    }

    /// <summary>Edges from the last on join an exit that a route reached to itself, as it is left by a route.</summary>
    private int Far(int edge, int point) => edge >= joins ? point : net.Edges[edge].Far(point);

    /// <summary>A point as it is reached along an edge.</summary>
    private int Reached(int edge, int point) => net.StateOf(point, edge < joins && net.Edges[edge].Route >= 0);

    /// <summary>A point as it is left along an edge.</summary>
    private int Left(int edge, int point) => net.StateOf(point, edge >= joins || net.Edges[edge].Route < 0);

    private void Step(int from, int to, double length, int how)
    {
        if (double.IsInfinity(potential[from]) || double.IsInfinity(potential[to])) return;
        // Rounding may leave a trace of a negative length behind.
        var reduced = Math.Max(0, length + potential[from] - potential[to]);
        Reach(to, cost[from] + reduced, how);
    }

    private void Reach(int state, double value, int how)
    {
        if (value >= cost[state]) return;
        cost[state] = value;
        by[state] = how;
        heap.Lower(state, value);
    }

    /// <summary>The edges of a way just found, each with the point it leads to; edges turned back have their number below
    /// nothing.</summary>
    private List<(int Edge, int Point)> Trace(Query query, int end)
    {
        var way = new List<(int, int)>();
        var state = 2 * net.StateOf(end, true);
        while (state != (2 * net.StateOf(query.Source, true)) + 1)
        {
            var how = by[state];
            switch (how)
            {
                case ThroughPoint:
                    state--;
                    break;
                case BackThroughPoint:
                    state++;
                    break;
                case >= 0:
                    way.Add((how, net.PointAt(state / 2)));
                    state = (2 * Left(how, Far(how, net.PointAt(state / 2)))) + 1;
                    break;
                default:
                    var edge = -how - BackFrom;
                    var point = Far(edge, net.PointAt(state / 2));
                    way.Add((-edge - 1, point));
                    state = 2 * Reached(edge, point);
                    break;
            }
        }
        way.Reverse();
        return way;
    }

    /// <summary>Edges of both ways, without those that the second turned back.</summary>
    private static List<(int Edge, int Point)> Combine(List<(int Edge, int Point)> first, List<(int Edge, int Point)> second)
    {
        var flow = new List<(int Edge, int Point)>(first);
        foreach (var (edge, point) in second)
        {
            if (edge >= 0) flow.Add((edge, point));
            else flow.Remove((-edge - 1, point));
        }
        return flow;
    }

    /// <summary>Follows the flow from its source to each end.</summary>
    private (CableWay One, CableWay Other)? Split(Query query, List<(int Edge, int Point)> flow)
    {
        flow.RemoveAll(f => f.Edge >= joins);
        IsUndecided = flow.Exists(f => net.Edges[f.Edge].Route >= 0 && flow.Contains((f.Edge, Far(f.Edge, f.Point))));
        var one = Follow(query, flow);
        var other = Follow(query, flow);
        IsUndecided |= IsTwice(one.Edges) || IsTwice(other.Edges);
        if (IsUndecided) return null;
        if (one.End != query.One) (one, other) = (other, one);
        var (a, b) = (Way(query, one.Edges, query.One), Way(query, other.Edges, query.Other));
        // Between the same racks the shorter one is the first.
        return query.One == query.Other && b.Total < a.Total ? (b, a) : (a, b);

        bool IsTwice(List<int> edges) => net.PassedTwice(query.Source, CollectionsMarshal.AsSpan(edges)) >= 0;
    }

    private CableWay Way(Query query, List<int> edges, int end)
    {
        if (query.Source < end) return WaySearch.WayOf(net, query.Source, CollectionsMarshal.AsSpan(edges));
        edges.Reverse();
        return WaySearch.WayOf(net, end, CollectionsMarshal.AsSpan(edges));
    }

    private (List<int> Edges, int End) Follow(Query query, List<(int Edge, int Point)> flow)
    {
        var edges = new List<int>();
        var at = query.Source;
        while (at == query.Source || (at != query.One && at != query.Other))
        {
            var next = flow.FindIndex(f => net.Edges[f.Edge].Far(f.Point) == at && IsOnward(f.Edge));
            if (next < 0) next = flow.FindIndex(f => net.Edges[f.Edge].Far(f.Point) == at);
            edges.Add(flow[next].Edge);
            at = flow[next].Point;
            flow.RemoveAt(next);
        }
        return (edges, at);

        // At an exit what came from within the hall has to leave, so that what a route brought goes into the hall where anything does.
        bool IsOnward(int edge) => !net.IsExit(at) || (net.Edges[edge].Route >= 0) != (net.Edges[edges[^1]].Route >= 0);
    }

    private sealed record Query(int Source, int One, int Other, int Side)
    {
        /// <summary>The hall where both begin.</summary>
        public required int OwnHall { get; init; }

        /// <summary>The hall where both end; -1 where they end in two, of which one may be on the way to the other.</summary>
        public required int FarHall { get; init; }

        public (Length? Source, Length? One, Length? Other) Heights { get; init; }

        public Length? HeightAt(int point) => point == Source ? Heights.Source : point == One ? Heights.One : Heights.Other;
    }

    private const int None = int.MinValue;
    private const int ThroughPoint = -1;
    private const int BackThroughPoint = -2;
    private const int BackFrom = 3;
}
