namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>Orbits of vertices and links under the symmetries found: first small exchanges, then searches, as far as the work
/// goes.</summary>
internal sealed class Orbits
{
    /// <summary>Unlike vertices of one colour that a further one is compared with before it is let stand alone.</summary>
    private const int MostTries = 4;

    /// <summary>Arcs that may be looked at, for each arc of the graph and in all: a second or so.</summary>
    private const long WorkPerArc = 20_000;
    private const long WorkInAll = 100_000_000;

    private const int Stages = 4;

    private readonly ColouredGraph graph;
    private readonly UnionFind vertices;
    private readonly UnionFind sides;
    private readonly List<Generator> generators = [];
    private readonly int[] linkEnds;
    private long work;

    /// <summary>Finds the orbits of a graph.</summary>
    public Orbits(ColouredGraph graph, FabricGraph fabric)
    {
        this.graph = graph;
        vertices = new UnionFind(graph.VertexCount);
        sides = new UnionFind(fabric.Links.Length * 2);
        linkEnds = new int[fabric.Links.Length * 2];
        for (var link = 0; link < fabric.Links.Length; link++)
            (linkEnds[link * 2], linkEnds[(link * 2) + 1]) = (fabric.Links[link].A, fabric.Links[link].B);
        JoinTwinLinks();
        var stage = Math.Min(WorkInAll, WorkPerArc * (graph.Target.Length + graph.VertexCount)) / Stages;
        work = stage;
        var stable = Colouring.Of(graph, graph.Colours, ref work);
        var swap = new LocalSwap(graph, stable.Colours);
        var search = new AutomorphismSearch(graph, stable);
        JoinVertices(stable, _ => 0, (a, b) => swap.Find([(a, b)], ref work));
        work = stage;
        // A vertex that looks unlike another once it is told apart need not be compared with it.
        JoinVertices(stable, vertex => TraceOf(stable, vertex), (a, b) => search.Find([a], [b], ref work));
        work = stage;
        JoinLinks(stable, (a, b, c, d) => swap.Find([(a, c), (b, d)], ref work));
        work = stage;
        JoinLinks(stable, (a, b, c, d) => search.Find([a, b], [c, d], ref work));
    }

    /// <summary>The symmetries found; all others they generate hold too.</summary>
    public IReadOnlyList<Generator> Generators => generators;

    /// <summary>The lowest vertex in the orbit of a vertex.</summary>
    public int OfVertex(int vertex) => vertices.Find(vertex);

    /// <summary>The lowest directed link in the orbit of a directed link.</summary>
    public int OfSide(int side) => sides.Find(side);

    /// <summary>Links with the same ends, rate and count change places without moving a node.</summary>
    private void JoinTwinLinks()
    {
        for (var arc = 1; arc < graph.Target.Length; arc++)
        {
            var isTwin = graph.Target[arc] == graph.Target[arc - 1] && graph.ArcColour[arc] == graph.ArcColour[arc - 1]
                && graph.Side[arc] >= 0 && linkEnds[graph.Side[arc]] == linkEnds[graph.Side[arc - 1]];
            if (!isTwin) continue;
            var (one, two) = (graph.Side[arc - 1], graph.Side[arc]);
            if (one > (one ^ 1) || sides.Find(one) == sides.Find(two)) continue;
            Apply(new Generator([], [(one, two), (two, one), (one ^ 1, two ^ 1), (two ^ 1, one ^ 1)]));
        }
    }

    private ulong TraceOf(Colouring stable, int vertex) =>
        work < 0 ? 0 : Colouring.Of(graph, stable.Individualised(vertex), ref work).Trace;

    private void JoinVertices(Colouring stable, Func<int, ulong> keyOf, Func<int, int, Generator?> find)
    {
        foreach (var cell in stable.Cells())
        {
            var lowest = cell.Where(vertex => vertices.Find(vertex) == vertex).ToList();
            if (lowest.Count == 1) continue;
            var apart = new Dictionary<ulong, List<int>>();
            foreach (var vertex in lowest)
            {
                // An earlier find may have taken this vertex along.
                if (vertices.Find(vertex) != vertex) continue;
                var key = keyOf(vertex);
                if (!apart.TryGetValue(key, out var others)) apart[key] = others = [];
                var found = others.Take(MostTries).Select(a => work < 0 ? null : find(a, vertex)).FirstOrDefault(g => g is not null);
                if (found is null) others.Add(vertex);
                else Apply(found);
            }
        }
    }

    private void JoinLinks(Colouring stable, Func<int, int, int, int, Generator?> find)
    {
        var apart = new Dictionary<(int, int, int), List<int>>();
        for (var vertex = 0; vertex < graph.VertexCount; vertex++)
        {
            for (var arc = graph.First[vertex]; arc < graph.First[vertex + 1]; arc++)
            {
                var side = graph.Side[arc];
                if (side < 0 || sides.Find(side) != side) continue;
                var key = (stable.Colours[vertex], stable.Colours[graph.Target[arc]], graph.ArcColour[arc]);
                if (!apart.TryGetValue(key, out var others)) apart[key] = others = [];
                JoinLink(side, others, find);
            }
        }
    }

    private void JoinLink(int side, List<int> others, Func<int, int, int, int, Generator?> find)
    {
        foreach (var other in others.Take(MostTries))
        {
            if (work < 0) break;
            if (find(linkEnds[other], linkEnds[other ^ 1], linkEnds[side], linkEnds[side ^ 1]) is not { } found) continue;
            Apply(found);
            if (sides.Find(side) == sides.Find(other)) return;
        }
        others.Add(side);
    }

    private void Apply(Generator found)
    {
        generators.Add(found);
        foreach (var (from, to) in found.Vertices) vertices.Join(from, to);
        foreach (var (from, to) in found.Sides) sides.Join(from, to);
    }
}
