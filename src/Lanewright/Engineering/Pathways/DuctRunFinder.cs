using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Pathways;

/// <summary>Puts ducts together that meet end to end, where nothing else meets them.</summary>
internal sealed class DuctRunFinder
{
    private readonly WayNet net;
    private readonly UnionFind places;
    private readonly ILookup<int, int> stretchesAt;
    private readonly HashSet<int> openPlaces = [];
    private readonly HashSet<int> done = [];

    public DuctRunFinder(WayNet net)
    {
        this.net = net;
        places = new UnionFind(net.Points.Length);
        foreach (var edge in net.Edges)
            if (IsSamePlace(edge)) places.Join(edge.A, edge.B);
        stretchesAt = Enumerable.Range(0, net.Stretches.Length)
            .SelectMany(s => new[] { net.Stretches[s].A, net.Stretches[s].B }, (stretch, point) => (stretch, place: Place(point)))
            .ToLookup(e => e.place, e => e.stretch);
        // What falls on to a tray below, or hangs on from there to an exit, is open to a hand.
        foreach (var edge in net.Edges.Where(e => e is { Stretch: < 0, Route: < 0 } && !net.IsRack(e.A) && !net.IsRack(e.B)))
            if (!IsSamePlace(edge)) openPlaces.UnionWith([Place(edge.A), Place(edge.B)]);
    }

    public IEnumerable<DuctRun> All()
    {
        var ducts = Enumerable.Range(0, net.Stretches.Length).Where(s => net.Stretches[s].Pathway.IsDuct).ToList();
        // A ring has no end to begin at, so it is looked at last, from any of its ducts.
        foreach (var duct in ducts.Where(d => Next(d, Place(net.Stretches[d].A)) < 0))
            if (!done.Contains(duct)) yield return From(duct, isTurned: false);
        foreach (var duct in ducts.Where(d => Next(d, Place(net.Stretches[d].B)) < 0))
            if (!done.Contains(duct)) yield return From(duct, isTurned: true);
        foreach (var duct in ducts)
            if (!done.Contains(duct)) yield return From(duct, isTurned: false);
    }

    private DuctRun From(int duct, bool isTurned)
    {
        var (run, turns) = (new List<int>(), new List<double>());
        var (from, before) = (isTurned ? net.Stretches[duct].B : net.Stretches[duct].A, default(WayPoint));
        while (duct >= 0 && done.Add(duct))
        {
            var stretch = net.Stretches[duct];
            var starts = Place(stretch.A) == Place(from);
            var (a, b) = starts ? (stretch.A, stretch.B) : (stretch.B, stretch.A);
            // A route has a surveyed length and no direction that a plan tells.
            var along = stretch.Pathway.Route is null ? Direction(a, b) : default;
            turns.Add(run.Count == 0 ? 0 : Degrees(before, along));
            run.Add(duct);
            (before, from, duct) = (along, b, Next(duct, Place(b)));
        }
        return DuctRun.Along([.. run.Select(d => net.Stretches[d].Pathway)], turns);
    }

    /// <summary>The duct that goes on from a place where exactly two meet and nothing else does; -1 where it ends or opens.</summary>
    private int Next(int duct, int place)
    {
        var meeting = stretchesAt[place].Where(s => s != duct).ToList();
        if (openPlaces.Contains(place) || meeting is not [var next] || !net.Stretches[next].Pathway.IsDuct) return -1;
        // Between two routes lies a hall, where cables are pulled on.
        return net.Stretches[next].Pathway.Route is not null && net.Stretches[duct].Pathway.Route is not null ? -1 : next;
    }

    private bool IsSamePlace(WayEdge edge) =>
        edge is { Stretch: < 0, Route: < 0 } && edge.Metres <= PathwayJoins.Touch && !net.IsRack(edge.A) && !net.IsRack(edge.B);

    private WayPoint Direction(int a, int b)
    {
        var (from, to) = (net.Points[a], net.Points[b]);
        return new WayPoint(to.X - from.X, to.Y - from.Y, to.Z - from.Z);
    }

    private static double Degrees(WayPoint one, WayPoint other)
    {
        var (a, b) = (one.To(default), other.To(default));
        if (a <= 0 || b <= 0) return 0;
        var along = ((one.X * other.X) + (one.Y * other.Y) + (one.Z * other.Z)) / (a * b);
        return double.RadiansToDegrees(Math.Acos(Math.Clamp(along, -1, 1)));
    }

    private int Place(int point) => places.Find(point);
}
