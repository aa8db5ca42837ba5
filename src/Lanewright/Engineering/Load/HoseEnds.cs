using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>The bundles of hosts that take part in a hose question, and what each may send and receive.</summary>
internal sealed class HoseEnds
{
    private readonly FabricGraph graph;
    private readonly Dictionary<int, long> rates;
    private readonly HashSet<(int, int)> direct;

    private HoseEnds(FabricGraph graph, Dictionary<int, long> rates)
    {
        this.graph = graph;
        this.rates = rates;
        Nodes = [.. rates.Keys.Order()];
        direct = graph.DirectPairs();
    }

    /// <summary>The bundles, rising.</summary>
    public int[] Nodes { get; }

    /// <summary>Lays terminals of the whole fabric on a graph that may have lost members.</summary>
    public static HoseEnds Of(FabricGraph graph, ImmutableArray<Terminal> terminals)
    {
        var whole = new Dictionary<int, long>();
        foreach (var terminal in terminals)
            whole[terminal.Node] = whole.GetValueOrDefault(terminal.Node) + (terminal.Rate * terminal.Members).BitsPerSecond;
        var rates = new Dictionary<int, long>();
        for (var node = 0; node < graph.Nodes.Length; node++)
        {
            if (graph.IsDown(node) || !whole.TryGetValue(graph.OriginOfNode(node), out var rate)) continue;
            if (!graph.Nodes[node].IsTerminal) throw new ArgumentException($"node {node} is no bundle of hosts", nameof(terminals));
            rates[node] = (long)Math.Round(rate / (double)graph.MembersOfOrigin(node) * graph.Nodes[node].Members);
        }
        return new HoseEnds(graph, rates);
    }

    /// <summary>The same with lower rates for some bundles.</summary>
    public HoseEnds Trimmed(Func<int, double> shareOf) =>
        new(graph, rates.ToDictionary(r => r.Key, r => (long)Math.Floor(r.Value * shareOf(r.Key))));

    /// <summary>What a bundle may send, and receive, in bits per second.</summary>
    public long RateOf(int node) => rates[node];

    /// <summary>Whether one bundle may send to another through the fabric. A bundle of one does not send to itself.</summary>
    public bool MaySend(int from, int to) =>
        rates.ContainsKey(from) && rates.ContainsKey(to) && (from != to || graph.Nodes[from].Members > 1) && !direct.Contains((from, to));
}
