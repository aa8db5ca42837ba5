namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>A division of vertices into ordered cells that no count of neighbours can refine. Made in a way that does not depend on how
/// vertices are numbered, so that equal traces are needed for an automorphism to take one colouring to another.</summary>
internal sealed class Colouring
{
    private Colouring(int[] colours, int cellCount, ulong trace)
    {
        Colours = colours;
        CellCount = cellCount;
        Trace = trace;
    }

    /// <summary>The cell of each vertex.</summary>
    public int[] Colours { get; }

    /// <summary>Cells there are; as many as vertices when every vertex stands alone.</summary>
    public int CellCount { get; }

    /// <summary>What the refinement met on its way, the same for colourings that are images of each other.</summary>
    public ulong Trace { get; }

    /// <summary>Refines colours until nothing changes.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="start">The colours to start with.</param>
    /// <param name="work">Arcs looked at are taken from this.</param>
    public static Colouring Of(ColouredGraph graph, int[] start, ref long work)
    {
        var colours = new int[start.Length];
        var hashes = new ulong[start.Length];
        var order = Enumerable.Range(0, start.Length).ToArray();
        for (var i = 0; i < start.Length; i++) hashes[i] = (ulong)start[i];
        var trace = 0ul;
        var cells = Rank(colours, hashes, order, ref trace);
        for (; ; )
        {
            work -= graph.Target.Length + graph.VertexCount;
            for (var vertex = 0; vertex < colours.Length; vertex++) hashes[vertex] = HashOf(graph, vertex, colours);
            var before = cells;
            cells = Rank(colours, hashes, order, ref trace);
            if (cells == before) return new Colouring(colours, cells, trace);
        }
    }

    /// <summary>The colours with one vertex told apart from its cell.</summary>
    public int[] Individualised(int vertex)
    {
        var result = new int[Colours.Length];
        for (var i = 0; i < result.Length; i++) result[i] = Colours[i] * 2;
        result[vertex]++;
        return result;
    }

    /// <summary>The vertices of each cell, rising.</summary>
    public List<int>[] Cells()
    {
        var cells = new List<int>[CellCount];
        for (var i = 0; i < cells.Length; i++) cells[i] = [];
        for (var vertex = 0; vertex < Colours.Length; vertex++) cells[Colours[vertex]].Add(vertex);
        return cells;
    }

    private static ulong HashOf(ColouredGraph graph, int vertex, int[] colours)
    {
        var sum = 0ul;
        for (var arc = graph.First[vertex]; arc < graph.First[vertex + 1]; arc++)
            sum = unchecked(sum + Mixing.Stir((ulong)graph.ArcColour[arc], (ulong)colours[graph.Target[arc]]));
        return sum;
    }

    /// <summary>Numbers cells anew by old cell and hash; the trace takes in each cell's hash and size.</summary>
    private static int Rank(int[] colours, ulong[] hashes, int[] order, ref ulong trace)
    {
        Array.Sort(order, (a, b) => colours[a] != colours[b] ? colours[a].CompareTo(colours[b]) : hashes[a].CompareTo(hashes[b]));
        var cell = -1;
        var (lastColour, lastHash) = (-1, 0ul);
        foreach (var vertex in order)
        {
            if (cell < 0 || colours[vertex] != lastColour || hashes[vertex] != lastHash)
            {
                (lastColour, lastHash) = (colours[vertex], hashes[vertex]);
                cell++;
            }
            trace = unchecked(trace + Mixing.Stir(lastHash, (ulong)cell));
            colours[vertex] = cell;
        }
        trace = Mixing.Stir(trace);
        return cell + 1;
    }
}
