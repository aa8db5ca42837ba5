namespace Lanewright.Engineering.Load;

/// <summary>The largest flow from some bundles of hosts to others, by blocking flows on ever longer shortest ways. Whole bits per
/// second.</summary>
internal sealed class MaxFlow
{
    private readonly List<int> target = [];
    private readonly List<long> room = [];
    private readonly List<int>[] arcs;
    private readonly int[] level;
    private readonly int[] next;

    private MaxFlow(FabricGraph graph, IReadOnlyDictionary<int, long> sending, IReadOnlyDictionary<int, long> taking)
    {
        var (source, sink) = (graph.Nodes.Length, graph.Nodes.Length + 1);
        arcs = new List<int>[sink + 1];
        for (var node = 0; node < arcs.Length; node++) arcs[node] = [];
        (level, next) = (new int[arcs.Length], new int[arcs.Length]);
        var sides = new FlowSides(graph);
        foreach (var side in sides.All)
        {
            var (from, to) = (sides.From(side), sides.From(side ^ 1));
            // Hosts forward nothing.
            var leaves = !graph.Nodes[from].IsTerminal || sending.ContainsKey(from);
            var enters = !graph.Nodes[to].IsTerminal || taking.ContainsKey(to);
            if (leaves && enters) AddArc(from, to, graph.Links[side / 2].Rate.BitsPerSecond * graph.Links[side / 2].Count);
        }
        foreach (var (node, rate) in sending) AddArc(source, node, rate);
        foreach (var (node, rate) in taking) AddArc(node, sink, rate);
        while (Layer(source, sink))
        {
            Array.Clear(next);
            for (var sent = Push(source, sink, long.MaxValue); sent > 0; sent = Push(source, sink, long.MaxValue)) Value += sent;
        }
    }

    private long Value { get; set; }

    /// <summary>The largest flow, in bits per second.</summary>
    /// <param name="graph">The fabric.</param>
    /// <param name="sending">What each bundle on the one side sends at most, in bits per second.</param>
    /// <param name="taking">What each bundle on the other side takes at most.</param>
    public static long Of(FabricGraph graph, IReadOnlyDictionary<int, long> sending, IReadOnlyDictionary<int, long> taking) =>
        new MaxFlow(graph, sending, taking).Value;

    private void AddArc(int from, int to, long capacity)
    {
        arcs[from].Add(target.Count);
        target.Add(to);
        room.Add(capacity);
        arcs[to].Add(target.Count);
        target.Add(from);
        room.Add(0);
    }

    private bool Layer(int source, int sink)
    {
        Array.Fill(level, -1);
        level[source] = 0;
        var queue = new Queue<int>([source]);
        while (queue.TryDequeue(out var node))
        {
            foreach (var arc in arcs[node])
            {
                if (room[arc] == 0 || level[target[arc]] >= 0) continue;
                level[target[arc]] = level[node] + 1;
                queue.Enqueue(target[arc]);
            }
        }
        return level[sink] >= 0;
    }

    /// <summary>Sends along one way that the layers allow; as deep as the way is long.</summary>
    private long Push(int node, int sink, long wanted)
    {
        if (node == sink) return wanted;
        for (; next[node] < arcs[node].Count; next[node]++)
        {
            var arc = arcs[node][next[node]];
            if (room[arc] == 0 || level[target[arc]] != level[node] + 1) continue;
            var sent = Push(target[arc], sink, Math.Min(wanted, room[arc]));
            if (sent == 0) continue;
            room[arc] -= sent;
            room[arc ^ 1] += sent;
            return sent;
        }
        return 0;
    }
}
