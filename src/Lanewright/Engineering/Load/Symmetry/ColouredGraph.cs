using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>What symmetry has to respect, as vertices and arcs with colours: nodes, links, demand named one by one, and things that fail
/// together. A permutation that keeps all colours and arcs is an automorphism of the fabric with its traffic and its failures.</summary>
internal sealed class ColouredGraph
{
    private readonly List<(int From, int To, int Colour, int Side)> arcs = [];
    private readonly Dictionary<object, int> arcColours = [];
    private readonly Dictionary<object, int> vertexColours = [];
    private readonly List<int> colours = [];
    private readonly Dictionary<(int Link, int Cable), int> cables = [];
    private readonly Dictionary<(int Node, int Member), int> members = [];

    /// <summary>Lays out a fabric.</summary>
    /// <param name="graph">The fabric.</param>
    /// <param name="traffic">What it carries; null when any traffic will do.</param>
    /// <param name="units">Things that fail together and are more than one link or one node; each gets a vertex.</param>
    public ColouredGraph(FabricGraph graph, TrafficMatrix? traffic, ImmutableArray<FailureUnit> units)
        : this(graph, traffic, units, isByCable: false)
    {
    }

    private ColouredGraph(FabricGraph graph, TrafficMatrix? traffic, ImmutableArray<FailureUnit> units, bool isByCable)
    {
        AddNodes(graph, traffic);
        var split = new bool[graph.Links.Length];
        foreach (var unit in isByCable ? [] : units)
            foreach (var lost in unit.Outage.Links) split[lost.Link] = true;
        LinkVertices = new int[graph.Links.Length];
        for (var link = 0; link < split.Length; link++) LinkVertices[link] = AddLink(graph.Links[link], link, split[link]);
        var parts = Enumerable.Range(0, graph.Nodes.Length).ToLookup(graph.OriginOfNode);
        foreach (var (from, to, gigabits) in traffic?.NamedFlows ?? [])
            foreach (var sender in parts[from])
                foreach (var receiver in parts[to]) AddPair(sender, receiver, ("sends", gigabits), ("receives", gigabits), -1);
        UnitVertices = [.. units.Select(unit => isByCable ? AddByCable(graph, unit) : AddUnit(graph, unit))];
        Colours = [.. colours];
        First = new int[Colours.Length + 1];
        (Target, ArcColour, Side) = (new int[arcs.Count], new int[arcs.Count], new int[arcs.Count]);
        Sort();
    }

    /// <summary>Vertices there are; nodes of the fabric come first, under their own numbers.</summary>
    public int VertexCount => Colours.Length;

    /// <summary>The colour of each vertex before anything is refined.</summary>
    public int[] Colours { get; }

    /// <summary>Where the arcs of each vertex start; one entry more than vertices.</summary>
    public int[] First { get; }

    /// <summary>The vertex each arc leads to, rising within a vertex.</summary>
    public int[] Target { get; }

    /// <summary>The colour of each arc, rising among arcs to one target.</summary>
    public int[] ArcColour { get; }

    /// <summary>The link of each arc, doubled, and one more from end B; -1 where the arc is no link.</summary>
    public int[] Side { get; }

    /// <summary>The vertex of each link that has one; -1 where the link is an arc.</summary>
    public int[] LinkVertices { get; }

    /// <summary>The vertex of each unit.</summary>
    public ImmutableArray<int> UnitVertices { get; }

    /// <summary>Arcs of a vertex.</summary>
    public Range ArcsOf(int vertex) => First[vertex]..First[vertex + 1];

    /// <summary>Lays out a fabric with a vertex for every cable and every host that things take down: what two of them have in common is
    /// then kept as well.</summary>
    public static ColouredGraph CableByCable(FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units) =>
        new(graph, traffic, units, isByCable: true);

    private static int ColourOf(Dictionary<object, int> known, object key)
    {
        if (!known.TryGetValue(key, out var colour)) known[key] = colour = known.Count;
        return colour;
    }

    private void AddNodes(FabricGraph graph, TrafficMatrix? traffic)
    {
        for (var node = 0; node < graph.Nodes.Length; node++)
        {
            var origin = graph.OriginOfNode(node);
            // A bundle that lost members is like no other, which is less than could be said and never wrong.
            var hurt = graph.Nodes[node].Members == graph.MembersOfOrigin(node) ? -1 : origin;
            object key = (graph.Nodes[node], graph.IsDown(node), hurt);
            foreach (var spread in traffic?.Spreads ?? []) key = (key, spread.RoleOf(origin));
            AddVertex(key);
        }
    }

    private int AddVertex(object key)
    {
        colours.Add(ColourOf(vertexColours, key));
        return colours.Count - 1;
    }

    private int AddLink(FabricLink link, int index, bool isVertex)
    {
        object colour = ("link", link.Rate, link.Count);
        if (!isVertex)
        {
            AddPair(link.A, link.B, colour, colour, index * 2);
            return -1;
        }
        var vertex = AddVertex(colour);
        AddPair(vertex, link.A, "end", "end", -1);
        AddPair(vertex, link.B, "end", "end", -1);
        return vertex;
    }

    private int AddUnit(FabricGraph graph, FailureUnit unit)
    {
        var vertex = AddVertex(unit.Kind);
        foreach (var node in unit.Outage.Nodes) AddPair(vertex, node, "down", "down", -1);
        var lost = LostCables.Of(graph, unit.Outage);
        // Members of a bundle are alike, so that only their places relative to each other count.
        var firsts = lost.Where(l => graph.BundleOf(l.Key) >= 0)
            .Select(l => (Bundle: graph.BundleOf(l.Key), First: l.Value.Min / graph.LinksEach(l.Key)))
            .Concat(unit.Outage.Members.Select(m => (Bundle: m.Node, m.First)))
            .GroupBy(f => f.Bundle)
            .ToDictionary(f => f.Key, f => f.Min(m => m.First));
        foreach (var (link, taken) in lost)
        {
            var what = graph.BundleOf(link) is >= 0 and var bundle
                ? string.Join(' ', LostCables.ByMember(taken, graph.LinksEach(link)).Select(m => (m.Member - firsts[bundle], m.Count)))
                : Numerals.Whole(taken.Count);
            AddPair(vertex, LinkVertices[link], ("lost", what), ("lost", what), -1);
        }
        foreach (var gone in unit.Outage.Members)
        {
            object colour = ("gone", gone.Count, gone.First - firsts[gone.Node]);
            AddPair(vertex, gone.Node, colour, colour, -1);
        }
        return vertex;
    }

    private int AddByCable(FabricGraph graph, FailureUnit unit)
    {
        var vertex = AddVertex(unit.Kind);
        foreach (var node in unit.Outage.Nodes) AddPair(vertex, node, "down", "down", -1);
        foreach (var (link, lost) in LostCables.Of(graph, unit.Outage))
            foreach (var cable in lost) AddPair(vertex, CableVertex(graph, link, cable), "lost", "lost", -1);
        foreach (var gone in unit.Outage.Members)
        {
            for (var i = 0; i < gone.Count; i++)
                AddPair(vertex, MemberVertex(gone.Node, (gone.First + i) % graph.Nodes[gone.Node].Members), "gone", "gone", -1);
        }
        return vertex;
    }

    private int CableVertex(FabricGraph graph, int link, int cable)
    {
        if (cables.TryGetValue((link, cable), out var known)) return known;
        var ends = graph.Links[link];
        var vertex = cables[(link, cable)] = AddVertex(("cable", ends.Rate, ends.Count));
        var bundle = graph.BundleOf(link);
        foreach (var end in new[] { ends.A, ends.B })
            AddPair(vertex, end == bundle ? MemberVertex(bundle, cable / graph.LinksEach(link)) : end, "end", "end", -1);
        return vertex;
    }

    private int MemberVertex(int node, int member)
    {
        if (members.TryGetValue((node, member), out var known)) return known;
        var vertex = members[(node, member)] = AddVertex("member");
        AddPair(vertex, node, "of", "of", -1);
        return vertex;
    }

    private void AddPair(int from, int to, object forth, object back, int side)
    {
        arcs.Add((from, to, ColourOf(arcColours, forth), side));
        arcs.Add((to, from, ColourOf(arcColours, back), side < 0 ? side : side + 1));
    }

    private void Sort()
    {
        foreach (var arc in arcs) First[arc.From + 1]++;
        for (var i = 0; i < VertexCount; i++) First[i + 1] += First[i];
        var next = First[..^1];
        var sorted = new (int Target, int Colour, int Side)[arcs.Count];
        foreach (var arc in arcs) sorted[next[arc.From]++] = (arc.To, arc.Colour, arc.Side);
        for (var i = 0; i < VertexCount; i++) Array.Sort(sorted, First[i], First[i + 1] - First[i]);
        for (var i = 0; i < sorted.Length; i++) (Target[i], ArcColour[i], Side[i]) = sorted[i];
        arcs.Clear();
    }
}
