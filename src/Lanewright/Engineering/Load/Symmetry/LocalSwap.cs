namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>Looks for a symmetry that exchanges two vertices and as little else as it must: neighbours that the two do not share have to
/// change places too, and so on outwards. This finds the exchanges of which layered fabrics are full, at the cost of what they
/// move.</summary>
internal sealed class LocalSwap
{
    private readonly ColouredGraph graph;
    private readonly int[] colours;
    private readonly int[] image;
    private readonly bool[] isPinned;
    private readonly List<int> moved = [];
    private readonly int[] nearFirst;
    private readonly int[] nearSecond;
    private int stamp;

    /// <summary>Makes room for searches in one graph.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="colours">Cells of vertices that may be exchanged.</param>
    public LocalSwap(ColouredGraph graph, int[] colours)
    {
        this.graph = graph;
        this.colours = colours;
        image = Enumerable.Range(0, graph.VertexCount).ToArray();
        isPinned = new bool[graph.VertexCount];
        nearFirst = new int[graph.VertexCount];
        nearSecond = new int[graph.VertexCount];
    }

    /// <summary>Tries to exchange pairs of vertices; a pair of a vertex with itself pins it.</summary>
    /// <param name="pairs">What must change places.</param>
    /// <param name="work">Arcs looked at are taken from this; the search gives up at zero.</param>
    /// <returns>The symmetry, verified; null when none was found this way.</returns>
    public Generator? Find(ReadOnlySpan<(int First, int Second)> pairs, ref long work)
    {
        var isSound = true;
        foreach (var (first, second) in pairs)
            if (first == second) isPinned[first] = true;
        foreach (var (first, second) in pairs)
            if (first != second) isSound &= Bind(first, second);
        for (var next = 0; isSound && next < moved.Count; next += 2) isSound = Settle(moved[next], moved[next + 1], ref work);
        var result = isSound ? Generator.Verified(graph, image, moved) : null;
        foreach (var (first, _) in pairs) isPinned[first] = false;
        foreach (var vertex in moved) image[vertex] = vertex;
        moved.Clear();
        return result;
    }

    private bool Bind(int first, int second)
    {
        if (image[first] == second && first != second) return true;
        if (image[first] != first || image[second] != second || isPinned[first] || isPinned[second]) return false;
        if (colours[first] != colours[second]) return false;
        (image[first], image[second]) = (second, first);
        moved.Add(first);
        moved.Add(second);
        return true;
    }

    /// <summary>Makes neighbours of a pair that are not shared change places.</summary>
    private bool Settle(int first, int second, ref long work)
    {
        work -= graph.First[first + 1] - graph.First[first] + graph.First[second + 1] - graph.First[second];
        if (work < 0) return false;
        List<(int Vertex, int Colour)> ofFirst = [];
        List<(int Vertex, int Colour)> ofSecond = [];
        if (!Unshared(first, second, ofFirst) || !Unshared(second, first, ofSecond) || ofFirst.Count != ofSecond.Count) return false;
        if (ofFirst.Count == 0) return true;
        if (ofFirst.Count == 1) return ofFirst[0].Colour == ofSecond[0].Colour && Bind(ofFirst[0].Vertex, ofSecond[0].Vertex);
        var left = Ranked(ofFirst, ofSecond, ref work);
        var right = Ranked(ofSecond, ofFirst, ref work);
        for (var i = 0; i < left.Count; i++)
            if (left[i].Key != right[i].Key || !Bind(left[i].Vertex, right[i].Vertex)) return false;
        return true;
    }

    /// <summary>Neighbours of a vertex that have not moved and whose arc the other vertex lacks. False when one that has moved does not
    /// arrive at a neighbour of the other: then nothing further helps.</summary>
    private bool Unshared(int vertex, int other, List<(int Vertex, int Colour)> result)
    {
        for (var arc = graph.First[vertex]; arc < graph.First[vertex + 1]; arc++)
        {
            var target = graph.Target[arc];
            if (HasArc(other, image[target], graph.ArcColour[arc])) continue;
            if (image[target] != target) return false;
            if (result.Count == 0 || result[^1].Vertex != target) result.Add((target, graph.ArcColour[arc]));
        }
        return true;
    }

    private bool HasArc(int vertex, int target, int colour)
    {
        var at = Array.BinarySearch(graph.Target, graph.First[vertex], graph.First[vertex + 1] - graph.First[vertex], target);
        if (at < 0) return false;
        for (var i = at; i >= graph.First[vertex] && graph.Target[i] == target; i--)
            if (graph.ArcColour[i] == colour) return true;
        for (var i = at + 1; i < graph.First[vertex + 1] && graph.Target[i] == target; i++)
            if (graph.ArcColour[i] == colour) return true;
        return false;
    }

    /// <summary>Orders vertices by what ties them to vertices that both sides know: partners must agree in it.</summary>
    private List<((int Cell, int Arc, ulong Ties) Key, int Vertex)> Ranked(
        List<(int Vertex, int Colour)> own, List<(int Vertex, int Colour)> others, ref long work)
    {
        stamp++;
        foreach (var (vertex, _) in own) Stamp(vertex, nearFirst, ref work);
        foreach (var (vertex, _) in others) Stamp(vertex, nearSecond, ref work);
        var result = new List<((int, int, ulong) Key, int Vertex)>();
        foreach (var (vertex, colour) in own)
        {
            var ties = 0ul;
            for (var arc = graph.First[vertex]; arc < graph.First[vertex + 1]; arc++)
            {
                var target = graph.Target[arc];
                if (image[target] == target && (nearFirst[target] != stamp || nearSecond[target] != stamp)) continue;
                var pair = (ulong)Math.Min(target, image[target]);
                ties = unchecked(ties + Mixing.Stir(pair, (ulong)graph.ArcColour[arc]));
            }
            result.Add(((colours[vertex], colour, ties), vertex));
        }
        result.Sort();
        return result;
    }

    private void Stamp(int vertex, int[] near, ref long work)
    {
        work -= 2 * (graph.First[vertex + 1] - graph.First[vertex]);
        for (var arc = graph.First[vertex]; arc < graph.First[vertex + 1]; arc++) near[graph.Target[arc]] = stamp;
    }
}
