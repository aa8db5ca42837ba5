namespace Lanewright.Engineering.Load;

/// <summary>The arcs of a flow problem between bundles of hosts: a bundle is two nodes, one that sends and one that takes, as hosts forward
/// nothing.</summary>
internal sealed class FlowArcs
{
    private readonly long[] rates;
    private readonly int[] placeOf;

    /// <summary>Lays them out.</summary>
    public FlowArcs(FabricGraph graph, HoseEnds ends)
    {
        var nodes = graph.Nodes.Length;
        rates = [.. ends.Nodes.Select(ends.RateOf)];
        (Source, Sink, NodeCount) = (2 * nodes, (2 * nodes) + 1, (2 * nodes) + 2);
        var pairs = new List<(int From, int To, long Forth, long Back)>();
        foreach (var bundle in ends.Nodes) pairs.Add((Source, bundle, 0, 0));
        foreach (var bundle in ends.Nodes) pairs.Add((nodes + bundle, Sink, 0, 0));
        for (var link = 0; link < graph.Links.Length; link++)
        {
            var (a, b) = (graph.Links[link].A, graph.Links[link].B);
            if (graph.IsDown(a) || graph.IsDown(b)) continue;
            var bits = graph.Links[link].Rate.BitsPerSecond * graph.Links[link].Count;
            int Taking(int node) => graph.Nodes[node].IsTerminal ? nodes + node : node;
            if (!graph.Nodes[a].IsTerminal && !graph.Nodes[b].IsTerminal)
            {
                pairs.Add((a, b, bits, bits));
                continue;
            }
            pairs.Add((a, Taking(b), bits, 0));
            pairs.Add((b, Taking(a), bits, 0));
        }
        First = new int[NodeCount + 1];
        foreach (var pair in pairs)
        {
            First[pair.From + 1]++;
            First[pair.To + 1]++;
        }
        for (var i = 0; i < NodeCount; i++) First[i + 1] += First[i];
        var next = First[..^1];
        (Target, Reverse, Capacity) = (new int[First[^1]], new int[First[^1]], new long[First[^1]]);
        placeOf = new int[pairs.Count];
        for (var i = 0; i < pairs.Count; i++)
        {
            var (forth, back) = (next[pairs[i].From]++, next[pairs[i].To]++);
            (Target[forth], Target[back]) = (pairs[i].To, pairs[i].From);
            (Reverse[forth], Reverse[back]) = (back, forth);
            (Capacity[forth], Capacity[back]) = (pairs[i].Forth, pairs[i].Back);
            placeOf[i] = forth;
        }
    }

    /// <summary>Bundles there are.</summary>
    public int BundleCount => rates.Length;

    /// <summary>Nodes there are, two for each of the fabric and the two where flow begins and ends.</summary>
    public int NodeCount { get; }

    /// <summary>Where flow begins.</summary>
    public int Source { get; }

    /// <summary>Where it ends.</summary>
    public int Sink { get; }

    /// <summary>Where the arcs of each node start; one entry more than nodes.</summary>
    public int[] First { get; }

    /// <summary>The node each arc leads to.</summary>
    public int[] Target { get; }

    /// <summary>The arc that runs against each.</summary>
    public int[] Reverse { get; }

    /// <summary>What each arc carries, in bits per second; nothing at bundles without a side.</summary>
    public long[] Capacity { get; }

    /// <summary>What a bundle sends or takes at most, in bits per second.</summary>
    public long RateOf(int bundle) => rates[bundle];

    /// <summary>The arc over which a bundle sends.</summary>
    public int SendArc(int bundle) => placeOf[bundle];

    /// <summary>The arc over which a bundle takes.</summary>
    public int TakeArc(int bundle) => placeOf[rates.Length + bundle];
}
