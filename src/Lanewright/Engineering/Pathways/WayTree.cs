using System.Collections.Immutable;

namespace Lanewright.Engineering.Pathways;

/// <summary>The shortest ways from one point of a graph.</summary>
public sealed class WayTree
{
    private readonly WayGraph graph;
    private readonly int source;
    private readonly double[] metres;
    private readonly int[] by;

    internal WayTree(WayGraph graph, int source, double[] metres, int[] by)
    {
        this.graph = graph;
        this.source = source;
        this.metres = metres;
        this.by = by;
    }

    /// <summary>Metres to a point; infinite where no way leads there.</summary>
    public double MetresTo(int point) => metres[point];

    /// <summary>The stretches on the way to a point, from its end back to the source.</summary>
    public ImmutableArray<int> To(int point)
    {
        var way = ImmutableArray.CreateBuilder<int>();
        while (point != source && by[point] >= 0)
        {
            way.Add(by[point]);
            var segment = graph.Segments[by[point]];
            point = segment.A == point ? segment.B : segment.A;
        }
        return way.ToImmutable();
    }
}
