using System.Collections.Immutable;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>The pathways of a hall as a graph: points where they begin, end, cross, and where cables come down, and the stretches between.
/// Points closer than a millimetre are one.</summary>
public sealed class WayGraph
{
    private const double Touch = 1e-3;

    private readonly List<WayPoint> points = [];
    private readonly Dictionary<(long X, long Y), int> indexOf = [];
    private readonly ImmutableArray<ImmutableArray<int>> segmentsOf;

    /// <summary>Joins pathways with places that cables come down at.</summary>
    /// <param name="pathways">The pathways of one hall.</param>
    /// <param name="drops">Places, each joined to the nearest point of a pathway.</param>
    public WayGraph(ImmutableArray<Pathway> pathways, ImmutableArray<WayPoint> drops)
    {
        var cuts = pathways.Select(p => new List<WayPoint> { Start(p), End(p) }).ToArray();
        for (var i = 0; i < pathways.Length; i++)
            for (var j = i + 1; j < pathways.Length; j++)
                Cross(pathways[i], pathways[j], cuts[i], cuts[j]);
        Drops =
        [
            .. drops.Select(drop =>
            {
                var (nearest, at) = Nearest(pathways, drop);
                if (nearest >= 0) cuts[nearest].Add(at);
                return nearest < 0 ? -1 : IndexOf(at);
            }),
        ];
        var segments = ImmutableArray.CreateBuilder<WaySegment>();
        for (var i = 0; i < pathways.Length; i++)
        {
            var start = Start(pathways[i]);
            var along = cuts[i].OrderBy(c => c.To(start)).Select(IndexOf).ToList();
            for (var k = 1; k < along.Count; k++)
                if (along[k] != along[k - 1])
                    segments.Add(new WaySegment(pathways[i], along[k - 1], along[k], points[along[k - 1]].To(points[along[k]])));
        }
        Segments = segments.ToImmutable();
        var of = new ImmutableArray<int>.Builder[points.Count];
        for (var p = 0; p < of.Length; p++) of[p] = ImmutableArray.CreateBuilder<int>();
        for (var s = 0; s < Segments.Length; s++)
        {
            of[Segments[s].A].Add(s);
            of[Segments[s].B].Add(s);
        }
        segmentsOf = [.. of.Select(b => b.ToImmutable())];
    }

    /// <summary>The points.</summary>
    public IReadOnlyList<WayPoint> Points => points;

    /// <summary>The stretches, pathway by pathway.</summary>
    public ImmutableArray<WaySegment> Segments { get; }

    /// <summary>For each place the point at which its cables meet a pathway; -1 where there is none.</summary>
    public ImmutableArray<int> Drops { get; }

    /// <summary>The shortest ways from a point to all others. Of ways equally long the one over the stretch listed first.</summary>
    public WayTree From(int source)
    {
        var metres = new double[points.Count];
        var by = new int[points.Count];
        Array.Fill(metres, double.PositiveInfinity);
        Array.Fill(by, -1);
        metres[source] = 0;
        var queue = new PriorityQueue<int, (double, int)>();
        queue.Enqueue(source, (0, source));
        while (queue.TryDequeue(out var at, out var reached))
        {
            if (reached.Item1 > metres[at]) continue;
            foreach (var s in segmentsOf[at])
            {
                var far = Segments[s].A == at ? Segments[s].B : Segments[s].A;
                var way = metres[at] + Segments[s].Metres;
                if (way >= metres[far]) continue;
                metres[far] = way;
                by[far] = s;
                queue.Enqueue(far, (way, far));
            }
        }
        return new WayTree(this, source, metres, by);
    }

    private int IndexOf(WayPoint point)
    {
        var key = ((long)Math.Round(point.X / Touch), (long)Math.Round(point.Y / Touch));
        if (indexOf.TryGetValue(key, out var index)) return index;
        points.Add(point);
        return indexOf[key] = points.Count - 1;
    }

    private static WayPoint Start(Pathway pathway) => new(pathway.FromX.Metres, pathway.FromY.Metres);

    private static WayPoint End(Pathway pathway) => new(pathway.ToX.Metres, pathway.ToY.Metres);

    /// <summary>Where two pathways cross or touch, both are cut.</summary>
    private static void Cross(Pathway one, Pathway other, List<WayPoint> ofOne, List<WayPoint> ofOther)
    {
        // An end that lies on the other pathway joins it even where the two are parallel.
        foreach (var end in new[] { Start(one), End(one) })
            if (On(other, end) is { } at && at.To(end) <= Touch) ofOther.Add(end);
        foreach (var end in new[] { Start(other), End(other) })
            if (On(one, end) is { } at && at.To(end) <= Touch) ofOne.Add(end);
        var (a, b, c, d) = (Start(one), End(one), Start(other), End(other));
        var across = ((b.X - a.X) * (d.Y - c.Y)) - ((b.Y - a.Y) * (d.X - c.X));
        if (Math.Abs(across) < Touch * Touch) return;
        var t = (((c.X - a.X) * (d.Y - c.Y)) - ((c.Y - a.Y) * (d.X - c.X))) / across;
        var u = (((c.X - a.X) * (b.Y - a.Y)) - ((c.Y - a.Y) * (b.X - a.X))) / across;
        if (t is < 0 or > 1 || u is < 0 or > 1) return;
        var point = new WayPoint(a.X + (t * (b.X - a.X)), a.Y + (t * (b.Y - a.Y)));
        ofOne.Add(point);
        ofOther.Add(point);
    }

    /// <summary>The point of a pathway that is nearest to a place.</summary>
    private static WayPoint? On(Pathway pathway, WayPoint place)
    {
        var (a, b) = (Start(pathway), End(pathway));
        var length = a.To(b);
        if (length <= 0) return a;
        var t = (((place.X - a.X) * (b.X - a.X)) + ((place.Y - a.Y) * (b.Y - a.Y))) / (length * length);
        t = Math.Clamp(t, 0, 1);
        return new WayPoint(a.X + (t * (b.X - a.X)), a.Y + (t * (b.Y - a.Y)));
    }

    private static (int Pathway, WayPoint At) Nearest(ImmutableArray<Pathway> pathways, WayPoint place)
    {
        var (best, at, least) = (-1, default(WayPoint), double.PositiveInfinity);
        for (var i = 0; i < pathways.Length; i++)
        {
            if (On(pathways[i], place) is not { } point || point.To(place) >= least - Touch) continue;
            (best, at, least) = (i, point, point.To(place));
        }
        return (best, at);
    }
}
