using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Units sorted into classes whose outages are images of each other under symmetries of the fabric with its traffic.</summary>
internal static class UnitClasses
{
    /// <summary>The units of each class, rising; classes in the order of their first units.</summary>
    public static ImmutableArray<ImmutableArray<int>> Of(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units)
    {
        var symmetry = SymmetryClasses.Of(graph, traffic);
        var classes = new Dictionary<(FailureKind, int, int, int), List<int>>();
        var places = PlacesOfCompound(graph, traffic, units);
        for (var unit = 0; unit < units.Length; unit++)
        {
            var outage = units[unit].Outage;
            var key = places.TryGetValue(unit, out var place) ? (units[unit].Kind, 0, place, 0)
                : outage.Links.Length == 1 ? (units[unit].Kind, 1, symmetry.LinkClasses[outage.Links[0].Link], outage.Links[0].Count)
                : outage.Nodes.Length == 1 ? (units[unit].Kind, 2, symmetry.NodeClasses[outage.Nodes[0]], 0)
                : (units[unit].Kind, 3, 0, 0);
            if (!classes.TryGetValue(key, out var members)) classes[key] = members = [];
            members.Add(unit);
        }
        return [.. classes.Values.OrderBy(c => c[0]).Select(c => c.ToImmutableArray())];
    }

    /// <summary>Whether a unit is more than one link or one node, so that it needs a vertex of its own to be moved by
    /// symmetries.</summary>
    private static bool IsCompound(FabricGraph graph, Outage outage) =>
        outage.Nodes.Length + outage.Links.Length + outage.Members.Length > 1 || outage.Members.Length > 0
        // Several links of a bundle may be those of one member or of several.
        || (outage.Links.Length == 1 && outage.Links[0].Count > 1 && graph.BundleOf(outage.Links[0].Link) >= 0);

    /// <summary>The orbits of compound units. Each kind is looked at by itself: oddly filled racks must not tell modules apart.</summary>
    private static Dictionary<int, int> PlacesOfCompound(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units)
    {
        var places = new Dictionary<int, int>();
        var compound = Enumerable.Range(0, units.Length).Where(u => IsCompound(graph, units[u].Outage));
        foreach (var kind in compound.GroupBy(u => units[u].Kind).OrderBy(k => k.Key))
        {
            var found = SymmetryClasses.Of(graph, traffic, [.. kind.Select(u => units[u])]);
            foreach (var (unit, vertex) in kind.Zip(found.Coloured.UnitVertices)) places[unit] = found.Orbits.OfVertex(vertex);
        }
        return places;
    }
}
