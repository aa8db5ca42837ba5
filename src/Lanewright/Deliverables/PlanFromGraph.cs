using System.Collections.Immutable;
using System.Text;
using Lanewright.Deliverables.Fabrics;
using Lanewright.Engineering.Lines;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables;

/// <summary>A plan of sites and spans made from a graph of places: a point to start from. Lengths are reckoned from positions and have to
/// be replaced by those of the fibre.</summary>
public static class PlanFromGraph
{
    /// <summary>Writes it.</summary>
    public static void Write(GraphText graph, StandardsLibrary standards, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true);
        var names = NamesOf(graph);
        var placed = graph.Points.Where(p => p.Longitude is not null && p.Latitude is not null).ToList();
        var origin = Earth.Middle(placed.Select(p => (p.Longitude ?? 0, p.Latitude ?? 0)));
        var detour = standards.LineValue("route", "detour").Value;
        writer.Write("# Sites and spans from a graph of places. Lengths are straight lines over the ground times "
            + $"{Numerals.Plain(detour)}: put in those of\n# the fibre, say which spans share a duct, and describe the lines.\n"
            + "lanewright: 1\nsites:\n");
        for (var i = 0; i < names.Length; i++)
            writer.Write($"  {PlanText.Name(names[i])}: {{ {PositionOf(graph, standards, origin, i)} }}\n");
        if (graph.Edges.IsEmpty) return;
        writer.Write("spans:\n");
        for (var e = 0; e < graph.Edges.Length; e++) Span(writer, graph, standards, names, e, detour);
    }

    private static string PositionOf(GraphText graph, StandardsLibrary standards, (double, double) origin, int point)
    {
        if (graph.Points[point] is not (_, { } longitude, { } latitude)) return "";
        var (east, north) = Earth.Position(standards, origin, (longitude, latitude));
        return $"east: {Kilometres(east)}, north: {Kilometres(north)}";
    }

    private static void Span(
        StreamWriter writer, GraphText graph, StandardsLibrary standards, ImmutableArray<string> names, int edge, double detour)
    {
        var (from, to, label) = graph.Edges[edge];
        if (from == to)
        {
            writer.Write($"  # an edge from {PlanText.Name(names[from])} to itself is left out\n");
            return;
        }
        var ends = $"from: {PlanText.Name(names[from])}, to: {PlanText.Name(names[to])}";
        var name = $"s{Numerals.Padded(edge + 1, 3)}";
        var about = label.Length > 0 ? "  # " + new string([.. label.Select(c => char.IsControl(c) ? ' ' : c)]) : "";
        if (graph.Points[from] is (_, { } x1, { } y1) && graph.Points[to] is (_, { } x2, { } y2)
            && Earth.Between(standards, (x1, y1), (x2, y2)) * detour is { Metres: >= 1 } length)
            writer.Write($"  {name}: {{ {ends}, length: {Kilometres(length)}, huts: anywhere }}{about}\n");
        else
        {
            var isPlaced = graph.Points[from] is (_, not null, not null) && graph.Points[to] is (_, not null, not null);
            var why = isPlaced ? "the graph has both on one spot" : "how far apart they are is not known";
            writer.Write($"  # {name}: {{ {ends}, length: ... km }}   # {why}\n");
        }
    }

    private static string Kilometres(Length length) => Numerals.Exact(Math.Round(length.Kilometres, 1)) + " km";

    /// <summary>Names of sites: those of the graph, told apart by a number where two points have one.</summary>
    private static ImmutableArray<string> NamesOf(GraphText graph)
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        var names = ImmutableArray.CreateBuilder<string>();
        foreach (var (label, _, _) in graph.Points)
        {
            var plain = new string([.. label.Select(c => char.IsControl(c) ? ' ' : c)]).Trim();
            var name = plain.Length > 0 ? plain : "site";
            for (var n = 2; !taken.Add(name); n++) name = $"{plain} {Numerals.Whole(n)}";
            names.Add(name);
        }
        return names.ToImmutable();
    }
}
