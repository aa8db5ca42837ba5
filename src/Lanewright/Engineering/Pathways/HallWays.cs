using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Pathways;

/// <summary>Ways in a hall with pathways: from each rack, and from the exit, down and along to every other. Ways are found when first asked
/// for.</summary>
public sealed class HallWays
{
    /// <summary>Stands for the hall's exit among its racks.</summary>
    public const int Exit = -1;

    private readonly Dictionary<int, int> placeOf = [];
    private readonly ImmutableArray<WayPoint> places;
    private readonly Dictionary<int, WayTree> trees = [];

    private HallWays(Hall hall, ImmutableArray<Pathway> pathways, ImmutableArray<Rack> racks)
    {
        Hall = hall;
        Racks = racks;
        places = [new WayPoint(hall.ExitX.Metres, hall.ExitY.Metres), .. racks.Select(r => new WayPoint(r.X.Metres, r.Y.Metres))];
        placeOf[Exit] = 0;
        for (var i = 0; i < racks.Length; i++) placeOf[racks[i].Index] = i + 1;
        Graph = new WayGraph(pathways, places);
    }

    /// <summary>The hall.</summary>
    public Hall Hall { get; }

    /// <summary>Its racks.</summary>
    public ImmutableArray<Rack> Racks { get; }

    /// <summary>Its pathways.</summary>
    public WayGraph Graph { get; }

    /// <summary>The halls of a building that have pathways, by their index.</summary>
    public static ImmutableSortedDictionary<int, HallWays> Of(Building building) => building.Pathways
        .GroupBy(p => p.Hall)
        .ToImmutableSortedDictionary(
            g => g.Key.Index,
            g => new HallWays(g.Key, [.. g], [.. building.Racks.Where(r => r.Hall == g.Key)]));

    /// <summary>Metres from one rack to another, or to the exit: to the pathway, along it and from it; null where no way leads
    /// there.</summary>
    /// <param name="from">Index of a rack, or <see cref="Exit"/>.</param>
    /// <param name="to">Index of a rack, or <see cref="Exit"/>.</param>
    public double? Metres(int from, int to)
    {
        var (a, b) = (placeOf[Math.Min(from, to)], placeOf[Math.Max(from, to)]);
        var along = TreeOf(a).MetresTo(Graph.Drops[b]);
        return double.IsInfinity(along) ? null : along + OffPathway(a) + OffPathway(b);
    }

    /// <summary>The way between two racks of the hall: along pathways that join them, otherwise straight along and across the
    /// rows.</summary>
    public Length Across(Rack from, Rack to) =>
        Metres(from.Index, to.Index) is { } metres ? Length.FromMetres(metres) : RackRoute.Across(from, to);

    /// <summary>Metres between a rack, or the exit, and the pathway nearest to it.</summary>
    public double OffPathway(Rack rack) => OffPathway(placeOf[rack.Index]);

    /// <summary>The pathway that cables of a rack come down from.</summary>
    public Pathway? Over(Rack rack)
    {
        var point = Graph.Drops[placeOf[rack.Index]];
        foreach (var segment in Graph.Segments)
            if (segment.A == point || segment.B == point) return segment.Pathway;
        return null;
    }

    /// <summary>The stretches between two racks, or a rack and the exit; none where no way leads there.</summary>
    public ImmutableArray<int> Way(int from, int to) =>
        TreeOf(placeOf[Math.Min(from, to)]).To(Graph.Drops[placeOf[Math.Max(from, to)]]);

    private double OffPathway(int place) => places[place].Across(Graph.Points[Graph.Drops[place]]);

    private WayTree TreeOf(int place)
    {
        if (trees.TryGetValue(place, out var found)) return found;
        return trees[place] = Graph.From(Graph.Drops[place]);
    }
}
