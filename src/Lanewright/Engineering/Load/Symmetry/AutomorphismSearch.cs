namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>Looks for a symmetry that takes given vertices to given vertices: both sides are told apart and refined in step until every
/// vertex stands alone; the permutation that is then read off is verified. What differs on the way proves that there is none
/// there.</summary>
internal sealed class AutomorphismSearch(ColouredGraph graph, Colouring start)
{
    /// <summary>Looks for a symmetry.</summary>
    /// <param name="from">Vertices, in order.</param>
    /// <param name="to">Where they must go.</param>
    /// <param name="work">Arcs looked at are taken from this; the search gives up at zero.</param>
    /// <returns>Null when there is none, or none was found in time.</returns>
    public Generator? Find(ReadOnlySpan<int> from, ReadOnlySpan<int> to, ref long work)
    {
        var (left, right) = (start, start);
        for (var i = 0; i < from.Length; i++)
        {
            if (left.Colours[from[i]] != right.Colours[to[i]]) return null;
            left = Colouring.Of(graph, left.Individualised(from[i]), ref work);
            right = Colouring.Of(graph, right.Individualised(to[i]), ref work);
            if (left.Trace != right.Trace || left.CellCount != right.CellCount) return null;
        }
        return Extend(left, right, ref work);
    }

    private Generator? Extend(Colouring left, Colouring right, ref long work)
    {
        if (left.CellCount == graph.VertexCount) return ReadOff(left, right);
        var cells = left.Cells();
        var cell = Enumerable.Range(0, cells.Length).Where(c => cells[c].Count > 1).MinBy(c => cells[c].Count);
        var vertex = cells[cell][0];
        var told = Colouring.Of(graph, left.Individualised(vertex), ref work);
        // To leave a vertex where it is keeps the symmetry small, so that is tried first.
        foreach (var partner in right.Cells()[cell].OrderBy(p => p == vertex ? 0 : 1))
        {
            if (work < 0) return null;
            var answer = Colouring.Of(graph, right.Individualised(partner), ref work);
            if (told.Trace != answer.Trace || told.CellCount != answer.CellCount) continue;
            if (Extend(told, answer, ref work) is { } found) return found;
        }
        return null;
    }

    private Generator? ReadOff(Colouring left, Colouring right)
    {
        var byColour = new int[graph.VertexCount];
        for (var vertex = 0; vertex < byColour.Length; vertex++) byColour[right.Colours[vertex]] = vertex;
        var image = left.Colours.Select(c => byColour[c]).ToArray();
        return Generator.Verified(graph, image, [.. Enumerable.Range(0, image.Length).Where(v => image[v] != v)]);
    }
}
