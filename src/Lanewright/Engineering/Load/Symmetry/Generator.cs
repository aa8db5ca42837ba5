namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>A verified automorphism, as what it moves.</summary>
/// <param name="Vertices">Vertices it moves, and where to.</param>
/// <param name="Sides">Directed links it moves, and where to: a link doubled, and one more from end B.</param>
internal sealed record Generator((int From, int To)[] Vertices, (int From, int To)[] Sides)
{
    /// <summary>Verifies that a permutation keeps colours and arcs, and lists what it moves.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="image">Where each vertex goes.</param>
    /// <param name="moved">The vertices that go elsewhere; arcs between others cannot change.</param>
    /// <returns>Null when it is no automorphism.</returns>
    public static Generator? Verified(ColouredGraph graph, int[] image, IReadOnlyList<int> moved)
    {
        var sides = new List<(int, int)>();
        var mapped = new List<(int Target, int Colour, int Side)>();
        foreach (var vertex in moved)
        {
            var to = image[vertex];
            if (graph.Colours[vertex] != graph.Colours[to]) return null;
            mapped.Clear();
            for (var arc = graph.First[vertex]; arc < graph.First[vertex + 1]; arc++)
                mapped.Add((image[graph.Target[arc]], graph.ArcColour[arc], graph.Side[arc]));
            mapped.Sort();
            var at = graph.First[to];
            if (mapped.Count != graph.First[to + 1] - at) return null;
            foreach (var (target, colour, side) in mapped)
            {
                if (graph.Target[at] != target || graph.ArcColour[at] != colour) return null;
                if (side >= 0)
                {
                    sides.Add((side, graph.Side[at]));
                    sides.Add((side ^ 1, graph.Side[at] ^ 1));
                }
                at++;
            }
        }
        return new Generator([.. moved.Select(vertex => (vertex, image[vertex]))], [.. sides.Distinct()]);
    }
}
