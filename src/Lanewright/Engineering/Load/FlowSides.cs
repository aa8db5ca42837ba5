namespace Lanewright.Engineering.Load;

/// <summary>The directed links of a graph that are up, cables between two bundles of hosts included, by the node they leave.</summary>
internal sealed class FlowSides
{
    private readonly FabricGraph graph;
    private readonly List<int>[] leaving;

    /// <summary>Sorts the directed links of a graph.</summary>
    public FlowSides(FabricGraph graph)
    {
        this.graph = graph;
        leaving = new List<int>[graph.Nodes.Length];
        for (var node = 0; node < leaving.Length; node++) leaving[node] = [];
        All = [.. graph.Arcs.Side.Concat(graph.Arcs.DirectLinks.SelectMany(link => new[] { link * 2, (link * 2) + 1 })).Order()];
        foreach (var side in All) leaving[From(side)].Add(side);
    }

    /// <summary>All directed links, rising: a link doubled, and one more from end B.</summary>
    public int[] All { get; }

    /// <summary>The node a directed link leaves.</summary>
    public int From(int side) => side % 2 == 0 ? graph.Links[side / 2].A : graph.Links[side / 2].B;

    /// <summary>The directed links that leave a node, rising.</summary>
    public List<int> Leaving(int node) => leaving[node];
}
