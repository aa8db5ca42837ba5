using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Units sorted into classes whose outages are images of each other under symmetries of fabric, traffic and units.</summary>
internal sealed class UnitClasses
{
    private UnitClasses(ImmutableArray<ImmutableArray<int>> members, SymmetryClasses symmetry, ImmutableArray<int> compound)
    {
        Members = members;
        Symmetry = symmetry;
        Compound = compound;
    }

    /// <summary>The units of each class, rising; classes in the order of their first units.</summary>
    public ImmutableArray<ImmutableArray<int>> Members { get; }

    /// <summary>The symmetries behind the classes.</summary>
    public SymmetryClasses Symmetry { get; }

    /// <summary>Units that are more than one link or one node; they have a vertex each in the graph of the symmetries.</summary>
    public ImmutableArray<int> Compound { get; }

    /// <summary>Sorts units.</summary>
    public static UnitClasses Of(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units)
    {
        ImmutableArray<int> compound = [.. Enumerable.Range(0, units.Length).Where(u => IsCompound(units[u].Outage))];
        var symmetry = SymmetryClasses.Of(graph, traffic, [.. compound.Select(u => units[u])]);
        var vertices = compound.Select((unit, i) => (unit, symmetry.Orbits.OfVertex(symmetry.Coloured.UnitVertices[i]))).ToDictionary();
        var classes = new Dictionary<(FailureKind, int, int, int), List<int>>();
        for (var unit = 0; unit < units.Length; unit++)
        {
            var outage = units[unit].Outage;
            var key = vertices.TryGetValue(unit, out var vertex) ? (units[unit].Kind, 0, vertex, 0)
                : outage.Links.Length == 1 ? (units[unit].Kind, 1, symmetry.LinkClasses[outage.Links[0].Link], outage.Links[0].Count)
                : outage.Nodes.Length == 1 ? (units[unit].Kind, 2, symmetry.NodeClasses[outage.Nodes[0]], 0)
                : (units[unit].Kind, 3, 0, 0);
            if (!classes.TryGetValue(key, out var members)) classes[key] = members = [];
            members.Add(unit);
        }
        return new UnitClasses([.. classes.Values.OrderBy(c => c[0]).Select(c => c.ToImmutableArray())], symmetry, compound);
    }

    private static bool IsCompound(Outage outage) =>
        outage.Nodes.Length + outage.Links.Length + outage.Members.Length > 1 || outage.Members.Length > 0;
}
