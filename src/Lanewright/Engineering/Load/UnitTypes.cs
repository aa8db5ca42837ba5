using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Units by what is down when they fail, and how symmetries move these types onto each other.</summary>
internal sealed class UnitTypes
{
    private readonly FabricGraph graph;
    private readonly ImmutableArray<FailureUnit> units;
    private readonly Dictionary<(FailureKind Kind, int Node, int Link, int Count, int First), int> simple = [];
    private readonly Dictionary<int, int> byVertex = [];
    private readonly List<List<int>> members = [];

    private UnitTypes(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units)
    {
        this.graph = graph;
        this.units = units;
        int[] compound = [.. Enumerable.Range(0, units.Length).Where(u => UnitClasses.IsCompound(units[u].Outage))];
        // One set of symmetries must move all units, as a pair may be of two kinds.
        var symmetry = SymmetryClasses.Of(graph, traffic, [.. compound.Select(u => units[u])]);
        var coloured = symmetry.Coloured;
        for (var i = 0; i < compound.Length; i++)
        {
            byVertex[coloured.UnitVertices[i]] = members.Count;
            members.Add([compound[i]]);
        }
        var isCompound = compound.ToHashSet();
        for (var unit = 0; unit < units.Length; unit++)
        {
            if (isCompound.Contains(unit)) continue;
            var key = KeyOf(units[unit]);
            if (!simple.TryGetValue(key, out var type))
            {
                simple[key] = type = members.Count;
                members.Add([]);
            }
            members[type].Add(unit);
        }
        var linkOf = new Dictionary<int, int>();
        for (var link = 0; link < graph.Links.Length; link++)
            if (coloured.LinkVertices[link] >= 0) linkOf[coloured.LinkVertices[link]] = link;
        var moves = symmetry.Orbits.Generators.Select(g => MoveOf(g, linkOf)).OfType<IReadOnlyDictionary<int, int>>();
        Moves = [.. moves, .. MemberMoves(isCompound)];
    }

    /// <summary>Types there are.</summary>
    public int Count => members.Count;

    /// <summary>Where symmetries send types, those they move.</summary>
    public ImmutableArray<IReadOnlyDictionary<int, int>> Moves { get; }

    /// <summary>Sorts units into types.</summary>
    public static UnitTypes Of(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units) => new(graph, traffic, units);

    /// <summary>The units of a type, rising.</summary>
    public List<int> UnitsOf(int type) => members[type];

    private (FailureKind, int, int, int, int) KeyOf(FailureUnit unit)
    {
        if (unit.Outage.Nodes.Length == 1) return (unit.Kind, unit.Outage.Nodes[0], -1, 0, 0);
        if (unit.Outage.Links.Length == 0) return (unit.Kind, -1, -1, 0, 0);
        var lost = unit.Outage.Links[0];
        return (unit.Kind, -1, lost.Link, lost.Count, graph.BundleOf(lost.Link) < 0 ? 0 : lost.FirstMember);
    }

    /// <summary>What a symmetry does to types; null when it takes a unit to where there is none, and so is none of the units.</summary>
    private Dictionary<int, int>? MoveOf(Symmetry.Generator symmetry, Dictionary<int, int> linkOf)
    {
        var nodes = symmetry.Vertices.Where(v => v.From < graph.Nodes.Length).ToDictionary(v => v.From, v => v.To);
        var links = symmetry.Sides.Where(s => s.From % 2 == 0).ToDictionary(s => s.From / 2, s => s.To / 2);
        foreach (var (from, to) in symmetry.Vertices)
            if (linkOf.TryGetValue(from, out var link)) links[link] = linkOf[to];
        var move = new Dictionary<int, int>();
        foreach (var (from, to) in symmetry.Vertices)
            if (byVertex.TryGetValue(from, out var type)) move[type] = byVertex[to];
        foreach (var (key, type) in simple)
        {
            var image = key with { Node = nodes.GetValueOrDefault(key.Node, key.Node), Link = links.GetValueOrDefault(key.Link, key.Link) };
            if (image == key) continue;
            if (!simple.TryGetValue(image, out var found) || members[found].Count != members[type].Count) return null;
            move[type] = found;
        }
        return move;
    }

    /// <summary>Members of a bundle are alike, so neighbours in it may change places, where every unit of the bundle hits one of
    /// them.</summary>
    private IEnumerable<IReadOnlyDictionary<int, int>> MemberMoves(HashSet<int> isCompound)
    {
        var mixed = isCompound.SelectMany(u => units[u].Outage.Links.Select(l => graph.BundleOf(l.Link))
            .Concat(units[u].Outage.Members.Select(m => m.Node))).ToHashSet();
        foreach (var bundle in simple.Where(s => s.Key.Link >= 0).GroupBy(s => graph.BundleOf(s.Key.Link)))
        {
            if (bundle.Key < 0 || mixed.Contains(bundle.Key)) continue;
            var all = graph.Nodes[bundle.Key].Members;
            if (bundle.Any(s => s.Key.Count > graph.Links[s.Key.Link].Count / all)) continue;
            int[] hit = [.. bundle.Select(s => s.Key.First).Distinct().Order()];
            for (var i = 1; i < hit.Length; i++)
            {
                if (Exchange(bundle.ToList(), hit[i - 1], hit[i]) is { } move) yield return move;
            }
        }
    }

    private Dictionary<int, int>? Exchange(
        List<KeyValuePair<(FailureKind Kind, int Node, int Link, int Count, int First), int>> bundle, int one, int two)
    {
        var move = new Dictionary<int, int>();
        foreach (var (key, type) in bundle)
        {
            if (key.First != one && key.First != two) continue;
            if (!simple.TryGetValue(key with { First = key.First == one ? two : one }, out var found)) return null;
            if (members[found].Count != members[type].Count) return null;
            move[type] = found;
        }
        return move;
    }
}
