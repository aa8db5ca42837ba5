namespace Lanewright.Engineering.Load;

/// <summary>Finds the quickest and the slowest of all ways of fewest links from one bundle of hosts to any other.</summary>
internal sealed class DelaySearch
{
    private readonly FabricGraph graph;
    private readonly Delay passing;
    private readonly int[] start;
    private readonly int[] linkAt;
    private readonly int[] farAt;
    private readonly int[] distance;
    private readonly Ways quick;
    private readonly Ways slow;
    private readonly List<int> queue = [];

    /// <summary>Takes a fabric.</summary>
    /// <param name="graph">The fabric.</param>
    /// <param name="delays">Delay of each link.</param>
    /// <param name="passing">Delay of a switch on the way.</param>
    public DelaySearch(FabricGraph graph, LinkDelays delays, Delay passing)
    {
        this.graph = graph;
        this.passing = passing;
        start = new int[graph.Nodes.Length + 1];
        foreach (var link in graph.Links)
        {
            start[link.A + 1]++;
            start[link.B + 1]++;
        }
        for (var i = 0; i < graph.Nodes.Length; i++) start[i + 1] += start[i];
        linkAt = new int[start[^1]];
        farAt = new int[start[^1]];
        var next = start.AsSpan(0, graph.Nodes.Length).ToArray();
        for (var link = 0; link < graph.Links.Length; link++)
        {
            var (a, b) = (graph.Links[link].A, graph.Links[link].B);
            (linkAt[next[a]], farAt[next[a]++]) = (link, b);
            (linkAt[next[b]], farAt[next[b]++]) = (link, a);
        }
        distance = new int[graph.Nodes.Length];
        quick = new Ways(delays.Least, distance.Length);
        slow = new Ways(delays.Most, distance.Length);
    }

    /// <summary>The quickest way to any bundle, the slowest to any, and where they end; ends are -1 where no other host is
    /// reached.</summary>
    public (Delay Shortest, int Nearest, Delay Longest, int Farthest) From(int source)
    {
        Search(source);
        var (nearest, farthest) = (-1, -1);
        foreach (var node in queue)
        {
            if (node == source || !graph.Nodes[node].IsTerminal) continue;
            if (nearest < 0 || quick.Total[node] < quick.Total[nearest]) nearest = node;
            if (farthest < 0 || slow.Total[node] > slow.Total[farthest]) farthest = node;
        }
        var shortest = nearest < 0 ? default : Along(quick, source, nearest);
        var longest = farthest < 0 ? default : Along(slow, source, farthest);
        if (graph.Nodes[source].Members < 2) return (shortest, nearest, longest, farthest);
        // Hosts of one bundle meet at each switch they are linked to.
        for (var i = start[source]; i < start[source + 1]; i++)
        {
            if (graph.Nodes[farAt[i]].IsTerminal) continue;
            var least = quick.Of(linkAt[i]) + passing + quick.Of(linkAt[i]);
            var most = slow.Of(linkAt[i]) + passing + slow.Of(linkAt[i]);
            if (nearest < 0 || least.Total < shortest.Total) (shortest, nearest) = (least, source);
            if (farthest < 0 || most.Total > longest.Total) (longest, farthest) = (most, source);
        }
        return (shortest, nearest, longest, farthest);
    }

    private void Search(int source)
    {
        Array.Fill(distance, -1);
        queue.Clear();
        queue.Add(source);
        distance[source] = 0;
        quick.Total[source] = slow.Total[source] = 0;
        for (var at = 0; at < queue.Count; at++)
        {
            var node = queue[at];
            // Hosts never forward.
            if (node != source && graph.Nodes[node].IsTerminal) continue;
            var through = node == source ? 0 : passing.Total.Nanoseconds;
            for (var i = start[node]; i < start[node + 1]; i++)
            {
                var far = farAt[i];
                if (distance[far] >= 0 && distance[far] <= distance[node]) continue;
                var least = quick.Total[node] + through + quick.Nanoseconds[linkAt[i]];
                var most = slow.Total[node] + through + slow.Nanoseconds[linkAt[i]];
                var isNew = distance[far] < 0;
                if (isNew) queue.Add(far);
                distance[far] = distance[node] + 1;
                if (isNew || least < quick.Total[far]) (quick.Total[far], quick.LastLink[far]) = (least, linkAt[i]);
                if (isNew || most > slow.Total[far]) (slow.Total[far], slow.LastLink[far]) = (most, linkAt[i]);
            }
        }
    }

    private Delay Along(Ways ways, int source, int to)
    {
        var delay = default(Delay);
        for (var node = to; node != source;)
        {
            var link = ways.LastLink[node];
            delay += ways.Of(link);
            node = graph.Links[link].A == node ? graph.Links[link].B : graph.Links[link].A;
            if (node != source) delay += passing;
        }
        return delay;
    }

    /// <summary>The best way found to each node by one measure: its delay in nanoseconds and its last link.</summary>
    private sealed class Ways(Delay?[] delays, int nodes)
    {
        public double[] Nanoseconds { get; } = [.. delays.Select(d => d?.Total.Nanoseconds ?? 0)];

        public double[] Total { get; } = new double[nodes];

        public int[] LastLink { get; } = new int[nodes];

        public Delay Of(int link) => delays[link] ?? default;
    }
}
