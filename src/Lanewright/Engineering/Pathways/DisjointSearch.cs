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
    private readonly bool[] isOnFirst;
    private readonly double forPoint;
    private readonly double forStretch;

    /// <summary>Searches in a graph.</summary>
    public DisjointSearch(WayNet net)
    {
        this.net = net;
        // A point is passed in two states: reached (even) and left (odd).
        var states = net.Points.Length * 2;
        cost = new double[states];
        potential = new double[states];
        by = new int[states];
        heap = new WayHeap(states);
        enteredBy = new int[net.Points.Length];
        isOnFirst = new bool[net.Points.Length];
        // A stretch in common outweighs all crossings in common, and each of those all metres.
        forPoint = 1 + net.Edges.Sum(e => e.Metres);
        forStretch = forPoint * (net.Points.Length + 1);
    }

    /// <summary>The two ways; null where no way leads to one of the racks.</summary>
    /// <param name="from">The rack both begin at, and the height where that matters.</param>
    /// <param name="one">Where the first ends.</param>
    /// <param name="other">Where the second ends; where that is the same rack, it is reckoned at the height of the first.</param>
    /// <param name="side">Number of the side; 0 for any.</param>
    public (CableWay One, CableWay Other)? Find(
        (int Rack, Length? Height) from, (int Rack, Length? Height) one, (int Rack, Length? Height) other, int side)
    {
        var query = new Query(
            net.PointOf(from.Rack), net.PointOf(one.Rack), net.PointOf(other.Rack), side, Halls(from.Rack, one.Rack, other.Rack))
        {
            Heights = (from.Height, one.Height, other.Height),
        };
        Array.Fill(isOnFirst, false);
        Array.Fill(enteredBy, -1);
        Array.Fill(potential, 0);
        if (Search(query, isSecond: false, -1) is not { } firstEnd) return null;
        var first = Trace(query, firstEnd);
        for (var state = 0; state < cost.Length; state++) potential[state] = cost[state];
        foreach (var (edge, point) in first)
        {
            enteredBy[point] = edge;
            isOnFirst[point] = true;
        }
        var left = query.One == query.Other ? query.One : firstEnd == query.One ? query.Other : query.One;
        if (Search(query, isSecond: true, left) is null) return null;
        var flow = Combine(first, Trace(query, left));
        return Split(query, flow);
    }

    private HashSet<int> Halls(params ReadOnlySpan<int> racks)
    {
        var halls = new HashSet<int>();
        foreach (var rack in racks) halls.Add(net.Building.Racks[rack].Hall.Index);
        return halls;
    }

    /// <summary>Searches to either end, or to the one that is left; gives the point that was reached.</summary>
    private int? Search(Query query, bool isSecond, int left)
    {
        Array.Fill(cost, double.PositiveInfinity);
        Array.Fill(by, None);
        heap.Clear();
        Reach((2 * query.Source) + 1, 0, None);
        int? end = null;
        while (heap.TryTake(out var state))
        {
            var point = state / 2;
            if (state % 2 == 0 && (isSecond ? point == left : point == query.One || point == query.Other)) end ??= point;
            if (state % 2 == 0) Pass(state, point, query, isSecond);
            else Leave(state, point, query, isSecond);
        }
        return end;
    }

    /// <summary>From reaching a point to leaving it, or back along the first way.</summary>
    private void Pass(int state, int point, Query query, bool isSecond)
    {
        if (!net.IsRack(point)) Step(state, state + 1, isSecond && isOnFirst[point] ? forPoint : 0, ThroughPoint);
        if (!isSecond || enteredBy[point] < 0) return;
        var edge = net.Edges[enteredBy[point]];
        var before = edge.Far(point);
        Step(state, (2 * before) + 1, -Metres(edge, query), -enteredBy[point] - BackFrom);
    }

    /// <summary>From leaving a point along every edge; and back to reaching it, where the first way passed it.</summary>
    private void Leave(int state, int point, Query query, bool isSecond)
    {
        if (isSecond && isOnFirst[point] && point != query.Source) Step(state, state - 1, 0, BackThroughPoint);
        var isExit = net.IsExit(point);
        var cameByRoute = isExit && by[state - 1] is >= 0 and var came && net.Edges[came].Route >= 0;
        foreach (var e in net.EdgesAt(point))
        {
            var edge = net.Edges[e];
            var far = edge.Far(point);
            if (isExit && cameByRoute == (edge.Route >= 0)) continue;
            if (net.IsRack(far) && far != query.One && far != query.Other) continue;
            if (edge.Side != query.Side && edge.Side != 0 && query.Side != 0) continue;
            if (edge.Route >= 0 ? !Leads(edge, point, query) : !query.Halls.Contains(edge.Hall)) continue;
            var isShared = isSecond && enteredBy[far] == e;
            // Where cables lie in nothing there is nothing to have in common.
            var more = !isShared ? 0 : edge.Stretch >= 0 || edge.Route >= 0 ? forStretch : 0;
            Step(state, 2 * far, Metres(edge, query) + more, e);
        }
    }

    /// <summary>What goes up and down at a rack is as long as it is from the device.</summary>
    private double Metres(WayEdge edge, Query query) =>
        net.IsRack(edge.B) ? net.DropMetres(edge.B, edge.A, query.HeightAt(edge.B)) : edge.Metres;

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
        var state = 2 * end;
        while (state != (2 * query.Source) + 1)
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
                    way.Add((how, state / 2));
                    state = (2 * net.Edges[how].Far(state / 2)) + 1;
                    break;
                default:
                    var edge = -how - BackFrom;
                    var point = net.Edges[edge].Far(state / 2);
                    way.Add((-edge - 1, point));
                    state = 2 * point;
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
        var one = Follow(query, flow);
        var other = Follow(query, flow);
        if (one.End != query.One) (one, other) = (other, one);
        var (a, b) = (Way(query, one.Edges, query.One), Way(query, other.Edges, query.Other));
        // Between the same racks the shorter one is the first.
        return query.One == query.Other && b.Total < a.Total ? (b, a) : (a, b);
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
            var next = flow.FindIndex(f => net.Edges[f.Edge].Far(f.Point) == at);
            edges.Add(flow[next].Edge);
            at = flow[next].Point;
            flow.RemoveAt(next);
        }
        return (edges, at);
    }

    /// <summary>Routes lead away from the hall of the source.</summary>
    private bool Leads(WayEdge route, int at, Query query)
    {
        var (from, to) = (net.Building.Routes[route.Route].From.Index, net.Building.Routes[route.Route].To.Index);
        var own = net.Building.Racks[net.RackAt(query.Source)].Hall.Index;
        return (route.A == at && from == own && query.Halls.Contains(to)) || (route.B == at && to == own && query.Halls.Contains(from));
    }

    private sealed record Query(int Source, int One, int Other, int Side, HashSet<int> Halls)
    {
        public (Length? Source, Length? One, Length? Other) Heights { get; init; }

        public Length? HeightAt(int point) => point == Source ? Heights.Source : point == One ? Heights.One : Heights.Other;
    }

    private const int None = int.MinValue;
    private const int ThroughPoint = -1;
    private const int BackThroughPoint = -2;
    private const int BackFrom = 3;
}
