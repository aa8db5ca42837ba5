using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Pathways;

/// <summary>Makes the graph of all pathways of a building.</summary>
internal sealed class WayNetMaker
{
    private readonly Building building;
    private readonly StandardsLibrary standards;
    private readonly double reach;
    private readonly List<WayPoint> points = [];
    private readonly List<WaySegment> stretches = [];
    private readonly List<WayEdge> edges = [];
    private readonly ImmutableDictionary<string, int> sides;
    private readonly Dictionary<(int Hall, string Exit), int> exitPoints = [];
    private readonly Dictionary<(int Hall, int Side, long X, long Y, long Z), int> indexOf = [];
    private readonly List<(int Rack, int Point, double Metres, int Hall, int Side)> drops = [];

    /// <summary>Takes the places.</summary>
    public WayNetMaker(Building building, StandardsLibrary standards)
    {
        this.building = building;
        this.standards = standards;
        reach = standards.Facility("tray", "reach").Value;
        sides = building.Pathways.Select(p => p.Side).Concat(building.Routes.Select(r => r.Side))
            .Where(s => s.Length > 0).Distinct().Order(NaturalOrder.Instance)
            .Select((name, i) => (name, i)).ToImmutableDictionary(s => s.name, s => s.i + 1, StringComparer.Ordinal);
    }

    /// <summary>The graph.</summary>
    public WayNet Make()
    {
        var inHall = building.Pathways.Where(p => p.Route is null).ToLookup(p => p.Hall.Index);
        foreach (var hall in building.Halls)
            foreach (var exit in ExitsOf(hall))
                exitPoints[(hall.Index, exit.Name)] = AddPlace(new WayPoint(exit.X.Metres, exit.Y.Metres, hall.PathwayHeight.Metres));
        var exits = points.Count;
        var racks = building.Racks.ToLookup(r => r.Hall.Index);
        foreach (var hall in building.Halls) AddHall(hall, [.. inHall[hall.Index]], [.. racks[hall.Index]]);
        foreach (var route in building.Routes) AddRoute(route);
        var firstRack = points.Count;
        var rackPoints = new int[building.Racks.Length];
        foreach (var rack in building.Racks) rackPoints[rack.Index] = AddPlace(PlaceOf(rack));
        foreach (var drop in drops)
            edges.Add(new WayEdge(drop.Point, rackPoints[drop.Rack], drop.Metres, -1, drop.Hall, drop.Side, -1));
        return new WayNet(new WayNetParts(points, stretches, edges, rackPoints, firstRack, exits, exitPoints, sides), building);
    }

    private static IEnumerable<HallExit> ExitsOf(Hall hall) => hall.Exits.Prepend(hall.Exit);

    /// <summary>A rack at half its height: what its devices are nearer to is decided there.</summary>
    private WayPoint PlaceOf(Rack rack)
    {
        var unit = standards.Practice("rack", "unit").Value;
        return new WayPoint(rack.X.Metres, rack.Y.Metres, rack.Type.Plinth.Metres + (rack.Type.Units * unit / 2 / MillimetresInMetre));
    }

    private void AddHall(Hall hall, ImmutableArray<Pathway> pathways, ImmutableArray<Rack> racks)
    {
        if (pathways.IsEmpty)
        {
            JoinExits(hall);
            foreach (var rack in racks)
                foreach (var exit in ExitsOf(hall))
                {
                    var point = exitPoints[(hall.Index, exit.Name)];
                    drops.Add((rack.Index, point, Rise(PlaceOf(rack), points[point]), hall.Index, 0));
                }
            return;
        }
        var cuts = PathwayJoins.Ends(pathways);
        var joins = new PathwayJoins(standards.Facility("tray", "drop-out").Value);
        for (var i = 0; i < pathways.Length; i++)
            for (var j = i + 1; j < pathways.Length; j++)
                joins.Cross(pathways[i], pathways[j], cuts[i], cuts[j]);
        var bySide = Enumerable.Range(0, pathways.Length)
            .GroupBy(i => pathways[i].Side).Select(g => g.ToImmutableArray()).ToImmutableArray();
        var rackDrops = racks.SelectMany(r => DropsOf(PlaceOf(r), pathways, bySide, isRack: true), (rack, drop) => (rack, drop)).ToList();
        var exitDrops = ExitsOf(hall).SelectMany(
            e => DropsOf(points[exitPoints[(hall.Index, e.Name)]], pathways, bySide, isRack: false), (exit, drop) => (exit, drop)).ToList();
        foreach (var (_, drop) in rackDrops) cuts[drop.Pathway].Add(drop.At);
        foreach (var (_, drop) in exitDrops) cuts[drop.Pathway].Add(drop.At);
        for (var i = 0; i < pathways.Length; i++) AddStretches(pathways[i], cuts[i]);
        foreach (var (high, low) in joins.Drops) AddFall(hall, high, low);
        foreach (var (rack, drop) in rackDrops)
        {
            var side = SideOf(pathways[drop.Pathway]);
            drops.Add((rack.Index, IndexOf(hall.Index, side, drop.At), Rise(PlaceOf(rack), drop.At), hall.Index, side));
        }
        foreach (var (exit, drop) in exitDrops)
        {
            var (place, side) = (exitPoints[(hall.Index, exit.Name)], SideOf(pathways[drop.Pathway]));
            edges.Add(new WayEdge(IndexOf(hall.Index, side, drop.At), place, Rise(points[place], drop.At), -1, hall.Index, side, -1));
        }
    }

    /// <summary>Where no pathway is, cables pass through a hall straight along and across its rows.</summary>
    private void JoinExits(Hall hall)
    {
        var exits = building.Routes
            .SelectMany(r => new[] { r.EndOf(isTo: false), r.EndOf(isTo: true) })
            .Where(e => e.Hall == hall).Select(e => exitPoints[(hall.Index, e.Exit.Name)]).Distinct().Order().ToList();
        for (var i = 0; i < exits.Count; i++)
            for (var j = i + 1; j < exits.Count; j++)
                edges.Add(new WayEdge(exits[i], exits[j], points[exits[i]].Across(points[exits[j]]), -1, hall.Index, 0, -1));
    }

    /// <summary>A place meets the pathway nearest to it, and of each further side the nearest that a rack's cables reach unsupported; and
    /// what else of these sides they reach; at an exit, where all cables come together, only what runs beside the nearest.</summary>
    private IEnumerable<(int Pathway, WayPoint At)> DropsOf(
        WayPoint place, ImmutableArray<Pathway> pathways, ImmutableArray<ImmutableArray<int>> bySide, bool isRack)
    {
        var sorted = bySide.Select(side => PathwayDrops.Of(place, pathways, side, reach)).OrderBy(d => d[0].Metres).ToList();
        for (var i = 0; i < sorted.Count; i++)
        {
            var nearest = sorted[i][0];
            if (i > 0 && isRack && nearest.Metres > reach) continue;
            yield return (nearest.Pathway, nearest.At);
            var own = pathways[nearest.Pathway];
            foreach (var (other, at, _) in sorted[i].Skip(1))
                if (PathwayJoins.AreParallel(own, pathways[other]) ? PathwayJoins.AreBeside(own, nearest.At, at) : isRack)
                    yield return (other, at);
        }
    }

    private void AddStretches(Pathway pathway, List<WayPoint> cuts)
    {
        var (start, side) = (PathwayJoins.Start(pathway), SideOf(pathway));
        var along = cuts.OrderBy(c => c.To(start)).Select(c => IndexOf(pathway.Hall.Index, side, c)).ToList();
        for (var k = 1; k < along.Count; k++)
        {
            var (a, b) = (along[k - 1], along[k]);
            if (a == b) continue;
            var metres = points[a].To(points[b]);
            edges.Add(new WayEdge(a, b, metres, stretches.Count, pathway.Hall.Index, side, -1));
            stretches.Add(new WaySegment(pathway, a, b, metres));
        }
    }

    /// <summary>A fall from one pathway on to another; those of two sides are never joined.</summary>
    private void AddFall(Hall hall, WayPoint high, WayPoint low)
    {
        foreach (var (side, a) in SidesAt(hall, high))
            foreach (var (other, b) in SidesAt(hall, low))
                if (side == other || side == 0 || other == 0)
                    edges.Add(new WayEdge(a, b, Math.Abs(high.Z - low.Z), -1, hall.Index, Math.Max(side, other), -1));
    }

    private IEnumerable<(int Side, int Point)> SidesAt(Hall hall, WayPoint point)
    {
        for (var side = 0; side <= sides.Count; side++)
            if (indexOf.TryGetValue(Key(hall.Index, side, point), out var index)) yield return (side, index);
    }

    private void AddRoute(HallRoute route)
    {
        var index = building.Routes.IndexOf(route);
        var (a, b) = (exitPoints[(route.From.Index, route.FromExit.Name)], exitPoints[(route.To.Index, route.ToExit.Name)]);
        var stretch = -1;
        if (building.Pathways.FirstOrDefault(p => p.Route == route) is { } pathway)
        {
            stretch = stretches.Count;
            stretches.Add(new WaySegment(pathway, a, b, route.Length.Metres));
        }
        edges.Add(new WayEdge(a, b, route.Length.Metres, stretch, route.From.Index, route.Side.Length > 0 ? sides[route.Side] : 0, index));
    }

    private int SideOf(Pathway pathway) => pathway.Side.Length > 0 ? sides[pathway.Side] : 0;

    private static double Rise(WayPoint place, WayPoint at) => place.Across(at) + Math.Abs(place.Z - at.Z);

    private int AddPlace(WayPoint place)
    {
        points.Add(place);
        return points.Count - 1;
    }

    private int IndexOf(int hall, int side, WayPoint point)
    {
        var key = Key(hall, side, point);
        if (indexOf.TryGetValue(key, out var index)) return index;
        index = AddPlace(point);
        indexOf[key] = index;
        // Where a pathway without a side meets one of a side, cables change over.
        for (var other = 0; other <= sides.Count; other++)
            if (other != side && (other == 0 || side == 0) && indexOf.TryGetValue(Key(hall, other, point), out var twin))
                edges.Add(new WayEdge(twin, index, 0, -1, hall, Math.Max(side, other), -1));
        return index;
    }

    private static (int, int, long, long, long) Key(int hall, int side, WayPoint point) => (hall, side,
        (long)Math.Round(point.X / PathwayJoins.Touch), (long)Math.Round(point.Y / PathwayJoins.Touch),
        (long)Math.Round(point.Z / PathwayJoins.Touch));

    private const double MillimetresInMetre = 1000;
}
