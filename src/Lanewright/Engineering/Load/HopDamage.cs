namespace Lanewright.Engineering.Load;

/// <summary>Links between switches that are down, as passes over arcs need them.</summary>
internal sealed class HopDamage
{
    private readonly FabricGraph graph;
    private readonly int[] lost;
    private readonly int[] links;

    /// <summary>Lays an outage on a whole graph.</summary>
    public HopDamage(FabricGraph graph, Outage outage)
    {
        this.graph = graph;
        lost = new int[graph.Links.Length];
        foreach (var (link, cables) in LostCables.Of(graph, outage)) lost[link] = cables.Count;
        links = [.. outage.Links.Select(l => l.Link).Distinct()];
        Arcs = [.. links.SelectMany(l => new[] { (graph.Links[l].A, graph.Links[l].B), (graph.Links[l].B, graph.Links[l].A) })];
    }

    /// <summary>The ends of links that lost something, in both directions.</summary>
    public (int From, int To)[] Arcs { get; }

    /// <summary>How many of its parallel links a link lost.</summary>
    public int LostOf(int link) => lost[link];

    /// <summary>Parallel links of an arc that are left.</summary>
    public int Left(int arc) => graph.Arcs.Count[arc] - lost[graph.Arcs.Side[arc] / 2];

    /// <summary>Whether both ends of every lost link still reach each other over switches.</summary>
    public bool StaysJoined()
    {
        var seen = new int[graph.Nodes.Length];
        var queue = new Queue<int>();
        for (var i = 0; i < links.Length; i++)
        {
            if (lost[links[i]] < graph.Links[links[i]].Count) continue;
            queue.Clear();
            queue.Enqueue(graph.Links[links[i]].A);
            seen[graph.Links[links[i]].A] = i + 1;
            while (queue.TryDequeue(out var node) && seen[graph.Links[links[i]].B] != i + 1)
            {
                for (var arc = graph.Arcs.First[node]; arc < graph.Arcs.First[node + 1]; arc++)
                {
                    var far = graph.Arcs.Target[arc];
                    if (seen[far] == i + 1 || graph.Arcs.IsTerminal[far] || Left(arc) == 0) continue;
                    seen[far] = i + 1;
                    queue.Enqueue(far);
                }
            }
            if (seen[graph.Links[links[i]].B] != i + 1) return false;
        }
        return true;
    }
}
