namespace Lanewright.Engineering.Load;

/// <summary>Least prices of a way between bundles of hosts, when every directed link has a price. Hosts forward nothing.</summary>
internal sealed class FlowDistances
{
    private readonly FabricGraph graph;
    private readonly FlowSides sides;

    /// <summary>Prepares searches in a graph.</summary>
    public FlowDistances(FabricGraph graph)
    {
        this.graph = graph;
        sides = new FlowSides(graph);
    }

    /// <summary>The least price of a way from every node to one bundle, infinite where there is none; from the bundle itself, of the way
    /// up to a switch and back.</summary>
    /// <param name="target">The bundle.</param>
    /// <param name="prices">A price for each directed link; null for 1 each.</param>
    public double[] To(int target, double[]? prices)
    {
        var distance = new double[graph.Nodes.Length];
        Array.Fill(distance, double.PositiveInfinity);
        var queue = new PriorityQueue<int, double>();
        Relax(target, 0);
        while (queue.TryDequeue(out var node, out var reached))
            if (reached <= distance[node] && !graph.Nodes[node].IsTerminal) Relax(node, reached);
        return distance;

        void Relax(int node, double reached)
        {
            foreach (var side in sides.Leaving(node))
            {
                var before = sides.From(side ^ 1);
                var through = reached + (prices is null ? 1 : prices[side ^ 1]);
                if (through >= distance[before]) continue;
                distance[before] = through;
                queue.Enqueue(before, through);
            }
        }
    }
}
