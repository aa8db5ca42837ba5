using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>All that cables may lie in, as one graph: points where pathways begin, end, cross and where cables come down, racks and exits,
/// and what joins them. Racks are ends of ways and never on the way; a route leads from hall to hall.</summary>
public sealed class WayNet
{
    private readonly int[] first;
    private readonly int[] edgesAt;
    private readonly WayArc[] arcs;
    private readonly ImmutableDictionary<string, int> sideNumbers;
    private readonly int[] rackPoints;
    private readonly int firstPlace;
    private readonly int exits;
    private readonly IReadOnlyDictionary<(int Hall, string Exit), int> exitPoints;
    private readonly RackDrops drops;

    internal WayNet(WayNetParts parts, Building building)
    {
        Building = building;
        Points = [.. parts.Points];
        Stretches = [.. parts.Stretches];
        Edges = [.. parts.Edges];
        rackPoints = parts.RackPoints;
        firstPlace = parts.FirstRack;
        exits = parts.Exits;
        exitPoints = parts.ExitPoints;
        sideNumbers = parts.Sides;
        first = new int[Points.Length + 1];
        foreach (var edge in Edges)
        {
            first[edge.A + 1]++;
            first[edge.B + 1]++;
        }
        for (var p = 0; p < Points.Length; p++) first[p + 1] += first[p];
        var next = first[..^1];
        edgesAt = new int[first[^1]];
        for (var e = 0; e < Edges.Length; e++)
        {
            edgesAt[next[Edges[e].A]++] = e;
            edgesAt[next[Edges[e].B]++] = e;
        }
        arcs = new WayArc[edgesAt.Length];
        for (var p = 0; p < Points.Length; p++)
            for (var i = first[p]; i < first[p + 1]; i++)
            {
                var (e, edge) = (edgesAt[i], Edges[edgesAt[i]]);
                arcs[i] = new WayArc(edge.Far(p), StateOf(edge.Far(p), edge.Route >= 0), e, edge.Metres, edge.Side, edge.Route);
            }
        drops = new RackDrops(this);
    }

    /// <summary>The places.</summary>
    public Building Building { get; }

    /// <summary>The points; racks come last.</summary>
    public ImmutableArray<WayPoint> Points { get; }

    /// <summary>The stretches, pathway by pathway.</summary>
    public ImmutableArray<WaySegment> Stretches { get; }

    /// <summary>What joins points.</summary>
    public ImmutableArray<WayEdge> Edges { get; }

    /// <summary>The graph of a building.</summary>
    public static WayNet Of(Building building, StandardsLibrary standards) => new WayNetMaker(building, standards).Make();

    /// <summary>Whether ways of a building are more than straight lines and one route from a hall to the next.</summary>
    public static bool IsNeeded(Building building) => !building.Pathways.IsEmpty || building.Routes.Any(r => r.Side.Length > 0)
        || building.Routes.Select(r => (Math.Min(r.From.Index, r.To.Index), Math.Max(r.From.Index, r.To.Index))).Distinct().Count()
            < building.Routes.Length;

    /// <summary>Edges at a point, in their order.</summary>
    public ReadOnlySpan<int> EdgesAt(int point) => edgesAt.AsSpan(first[point], first[point + 1] - first[point]);

    /// <summary>The same edges as they are seen from there.</summary>
    internal ReadOnlySpan<WayArc> ArcsAt(int point) => arcs.AsSpan(first[point], first[point + 1] - first[point]);

    /// <summary>The point of a rack.</summary>
    public int PointOf(int rack) => rackPoints[rack];

    /// <summary>Index of the rack at a point of a rack.</summary>
    public int RackAt(int point) => point - firstPlace;

    /// <summary>Whether a point is a rack.</summary>
    public bool IsRack(int point) => point >= firstPlace;

    /// <summary>Whether a point is an exit: cables pass it from a hall to a route and from a route to a hall, never from tray to
    /// tray.</summary>
    public bool IsExit(int point) => point < exits;

    /// <summary>Number of the states in which points are reached: an exit by a route, from where cables go on into the hall or along the
    /// next route, or from within the hall, from where they leave by a route. So the one never hides a way by the other.</summary>
    internal int States => Points.Length + exits;

    /// <summary>Number of a point as it is reached by a route, or from within its hall.</summary>
    internal int StateOf(int point, bool isByRoute) => point >= exits ? point + exits : isByRoute ? point + point + 1 : point + point;

    /// <summary>The point of a state.</summary>
    internal int PointAt(int state) => state >= exits + exits ? state - exits : state / 2;

    /// <summary>Whether from a state no way leads but along a route.</summary>
    internal bool IsLeaving(int state) => state < exits + exits && state % 2 == 0;

    /// <summary>Whether a route leads on from one of its ends: never back into the hall where a way begins, nor out of the one where it
    /// ends.</summary>
    /// <param name="edge">The edge of the route.</param>
    /// <param name="at">The point it is left from.</param>
    /// <param name="ownHall">Index of the hall where the way begins.</param>
    /// <param name="farHall">Index of the hall where it ends.</param>
    internal bool LeadsOn(in WayEdge edge, int at, int ownHall, int farHall)
    {
        var route = Building.Routes[edge.Route];
        var (left, entered) = edge.A == at ? (route.From.Index, route.To.Index) : (route.To.Index, route.From.Index);
        return left != farHall && entered != ownHall;
    }

    /// <summary>An exit that a way along edges from a rack passes twice: from within its hall, and then by a route back into it; -1 where
    /// there is none.</summary>
    internal int PassedTwice(int source, ReadOnlySpan<int> edges)
    {
        var (passed, at) = (default(List<int>), source);
        foreach (var e in edges)
        {
            at = Edges.ItemRef(e).Far(at);
            if (!IsExit(at)) continue;
            if (passed?.Contains(at) == true) return at;
            (passed ??= []).Add(at);
        }
        return -1;
    }

    /// <summary>Number of what may be closed to a search: stretches, then routes between halls.</summary>
    public int Closable => Stretches.Length + Building.Routes.Length;

    /// <summary>Number of a route among what may be closed.</summary>
    public int ClosableOf(HallRoute route) => Stretches.Length + Building.Routes.IndexOf(route);

    /// <summary>Number of a side; 0 for none, -1 where no pathway is of that side.</summary>
    public int SideOf(string name) => name.Length == 0 ? 0 : sideNumbers.GetValueOrDefault(name, -1);

    /// <summary>What is asked for a cable between heights in two racks.</summary>
    public WayQuestion QuestionOf(Rack one, Length heightOne, Rack other, Length heightOther, int side)
    {
        return WayQuestion.Between(At(one, heightOne), At(other, heightOther), side);

        (int Rack, Length? Height) At(Rack rack, Length height) => (rack.Index, drops.Of(rack.Index) is null ? null : height);
    }

    /// <summary>Heights of the pathways at a rack in metres, where the shortest way depends on the height of a device; null
    /// elsewhere.</summary>
    internal double[]? DropHeights(int rack) => drops.Of(rack);

    /// <summary>Metres between a height in a rack and a point of a pathway that its cables come down from; at half its height where none
    /// is given.</summary>
    internal double DropMetres(int rackPoint, int point, Length? height) =>
        Points[point].Across(Points[rackPoint]) + Math.Abs(Points[point].Z - (height?.Metres ?? Points[rackPoint].Z));

    /// <summary>How long a way is from height to height.</summary>
    internal double MetresOf(CableWay way, WayQuestion question) => way.Total
        + Math.Abs(way.LowHeight - (question.FromHeight?.Metres ?? Points[PointOf(question.From)].Z))
        + Math.Abs(way.HighHeight - (question.ToHeight?.Metres ?? Points[PointOf(question.To)].Z));

    /// <summary>The pathway that cables of a rack come down from; null where its hall has none.</summary>
    public Pathway? Over(Rack rack)
    {
        if (NearestDrop(rack) is not { } drop) return null;
        foreach (var e in EdgesAt(drop.Far(PointOf(rack.Index))))
            if (Edges[e] is { Stretch: >= 0 } edge && Edges[e].Side == drop.Side) return Stretches[edge.Stretch].Pathway;
        return null;
    }

    /// <summary>Metres in plan between a rack and the pathway nearest to it; null where its hall has none.</summary>
    public double? OffPathway(Rack rack) =>
        NearestDrop(rack) is { } drop ? Points[drop.A].Across(Points[drop.B]) : null;

    /// <summary>Metres in plan between an exit and the pathway nearest to it; null where its hall has none.</summary>
    public double? OffPathway(Hall hall, HallExit exit)
    {
        var point = exitPoints[(hall.Index, exit.Name)];
        double? nearest = null;
        foreach (var e in EdgesAt(point))
        {
            var far = Edges[e].Far(point);
            if (Edges[e].Route >= 0 || !IsPathwayPoint(far)) continue;
            var off = Points[point].Across(Points[far]);
            if (!(nearest <= off)) nearest = off;
        }
        return nearest;
    }

    /// <summary>Whether ways lead from a rack to an exit of its hall from which routes go on to another hall.</summary>
    public bool LeadsOut(Rack rack, Hall other)
    {
        var onward = Building.Routes.Select(r => LeadsFrom(r, rack.Hall, other)).ToArray();
        var source = PointOf(rack.Index);
        var (seen, open) = (new HashSet<int> { source }, new Stack<int>([source]));
        while (open.TryPop(out var point))
        {
            if (point != source && IsRack(point)) continue;
            foreach (var e in EdgesAt(point))
            {
                var edge = Edges[e];
                if (edge.Route >= 0 && IsExit(point) && onward[edge.Route]) return true;
                if (edge.Route < 0 && !(IsExit(point) && point != source) && seen.Add(edge.Far(point))) open.Push(edge.Far(point));
            }
        }
        return false;
    }

    /// <summary>Whether a route leads from a hall to one from which others go on, without coming back.</summary>
    private bool LeadsFrom(HallRoute route, Hall own, Hall other) => (route.From == own || route.To == own)
        && Building.AreJoined(route.From == own ? route.To : route.From, other, r => r.From != own && r.To != own);

    private WayEdge? NearestDrop(Rack rack)
    {
        var point = PointOf(rack.Index);
        WayEdge? nearest = null;
        foreach (var e in EdgesAt(point))
        {
            // In a hall without pathways a rack is joined to the exits alone.
            if (!IsPathwayPoint(Edges[e].Far(point))) continue;
            if (nearest is { } best && Flat(best) <= Flat(Edges[e])) continue;
            nearest = Edges[e];
        }
        return nearest;

        double Flat(WayEdge edge) => Points[edge.A].FlatTo(Points[edge.B]);
    }

    private bool IsPathwayPoint(int point)
    {
        foreach (var e in EdgesAt(point))
            if (Edges[e] is { Stretch: >= 0, Route: < 0 }) return true;
        return false;
    }
}
