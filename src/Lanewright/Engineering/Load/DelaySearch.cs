namespace Lanewright.Engineering.Load;

/// <summary>Finds the least and the most delay over all ways of fewest links from one bundle of hosts to every other.</summary>
internal sealed class DelaySearch
{
    private readonly FabricGraph graph;
    private readonly LinkDelays delays;
    private readonly Delay passing;
    private readonly int[] start;
    private readonly int[] linkAt;
    private readonly int[] distance;
    private readonly Delay[] least;
    private readonly Delay[] most;
    private readonly List<int> queue = [];

    public DelaySearch(FabricGraph graph, LinkDelays delays, Delay passing)
    {
        this.graph = graph;
        this.delays = delays;
        this.passing = passing;
        start = new int[graph.Nodes.Length + 1];
        foreach (var link in graph.Links)
        {
            start[link.A + 1]++;
            start[link.B + 1]++;
        }
        for (var i = 0; i < graph.Nodes.Length; i++) start[i + 1] += start[i];
        linkAt = new int[start[^1]];
        var next = start.AsSpan(0, graph.Nodes.Length).ToArray();
        for (var link = 0; link < graph.Links.Length; link++)
        {
            linkAt[next[graph.Links[link].A]++] = link;
            linkAt[next[graph.Links[link].B]++] = link;
        }
        distance = new int[graph.Nodes.Length];
        least = new Delay[distance.Length];
        most = new Delay[distance.Length];
    }

    /// <summary>Every other bundle that is reached, and the bundle itself where it has several hosts.</summary>
    public IEnumerable<(int To, Delay Least, Delay Most)> From(int source)
    {
        Search(source);
        foreach (var node in queue)
            if (node != source && graph.Nodes[node].IsTerminal) yield return (node, least[node], most[node]);
        if (graph.Nodes[source].Members < 2) yield break;
        for (var i = start[source]; i < start[source + 1]; i++)
            if (!graph.Nodes[Far(linkAt[i], source)].IsTerminal)
                yield return (source, Step(delays.Least, linkAt[i]) + passing + Step(delays.Least, linkAt[i]),
                    Step(delays.Most, linkAt[i]) + passing + Step(delays.Most, linkAt[i]));
    }

    private void Search(int source)
    {
        Array.Fill(distance, -1);
        queue.Clear();
        queue.Add(source);
        distance[source] = 0;
        least[source] = most[source] = default;
        for (var at = 0; at < queue.Count; at++)
        {
            var node = queue[at];
            // Hosts never forward.
            if (node != source && graph.Nodes[node].IsTerminal) continue;
            var through = graph.Nodes[node].IsTerminal ? default : passing;
            for (var i = start[node]; i < start[node + 1]; i++)
            {
                var far = Far(linkAt[i], node);
                if (distance[far] >= 0 && distance[far] != distance[node] + 1) continue;
                var low = least[node] + through + Step(delays.Least, linkAt[i]);
                var high = most[node] + through + Step(delays.Most, linkAt[i]);
                var isNew = distance[far] < 0;
                if (isNew) queue.Add(far);
                distance[far] = distance[node] + 1;
                if (isNew || low.Total < least[far].Total) least[far] = low;
                if (isNew || high.Total > most[far].Total) most[far] = high;
            }
        }
    }

    private int Far(int link, int node) => graph.Links[link].A == node ? graph.Links[link].B : graph.Links[link].A;

    private static Delay Step(Delay?[] of, int link) => of[link] ?? default;
}
