namespace Lanewright.Engineering.Load;

/// <summary>The largest flow from bundles of hosts on one side to those on the other, in whole bits per second. Bundles may take their side
/// one after another: what flows already stays, and only what more can flow is looked for.</summary>
internal sealed class CutFlow
{
    private readonly FlowArcs arcs;
    private readonly long[] room;
    private readonly int[] level;
    private readonly int[] next;

    private CutFlow(FlowArcs arcs, long[] room, long value)
    {
        this.arcs = arcs;
        this.room = room;
        Value = value;
        (level, next) = (new int[arcs.NodeCount], new int[arcs.NodeCount]);
    }

    /// <summary>What flows, in bits per second.</summary>
    public long Value { get; private set; }

    /// <summary>A fabric whose bundles have no side yet.</summary>
    public static CutFlow Of(FabricGraph graph, HoseEnds ends)
    {
        var arcs = new FlowArcs(graph, ends);
        return new CutFlow(arcs, [.. arcs.Capacity], 0);
    }

    /// <summary>The flow with these bundles sending and all others receiving.</summary>
    public static long Across(CutFlow none, IEnumerable<int> sending)
    {
        var flow = none.Copy();
        var chosen = sending.ToHashSet();
        for (var bundle = 0; bundle < none.arcs.BundleCount; bundle++) flow.Open(bundle, chosen.Contains(bundle));
        flow.Augment();
        return flow.Value;
    }

    /// <summary>The same once more, to try something with.</summary>
    public CutFlow Copy() => new(arcs, [.. room], Value);

    /// <summary>Puts a bundle, by its place among the ends, on a side, and lets flow what then can.</summary>
    public void Place(int bundle, bool sends)
    {
        Open(bundle, sends);
        Augment();
    }

    private void Open(int bundle, bool sends) => room[sends ? arcs.SendArc(bundle) : arcs.TakeArc(bundle)] = arcs.RateOf(bundle);

    private void Augment()
    {
        while (Layer())
        {
            for (var node = 0; node < next.Length; node++) next[node] = arcs.First[node];
            for (var sent = Push(arcs.Source, long.MaxValue); sent > 0; sent = Push(arcs.Source, long.MaxValue)) Value += sent;
        }
    }

    private bool Layer()
    {
        Array.Fill(level, -1);
        level[arcs.Source] = 0;
        var queue = new Queue<int>([arcs.Source]);
        while (queue.TryDequeue(out var node))
        {
            for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++)
            {
                if (room[arc] == 0 || level[arcs.Target[arc]] >= 0) continue;
                level[arcs.Target[arc]] = level[node] + 1;
                queue.Enqueue(arcs.Target[arc]);
            }
        }
        return level[arcs.Sink] >= 0;
    }

    /// <summary>Sends along one way that the layers allow; as deep as the way is long.</summary>
    private long Push(int node, long wanted)
    {
        if (node == arcs.Sink) return wanted;
        for (; next[node] < arcs.First[node + 1]; next[node]++)
        {
            var arc = next[node];
            if (room[arc] == 0 || level[arcs.Target[arc]] != level[node] + 1) continue;
            var sent = Push(arcs.Target[arc], Math.Min(wanted, room[arc]));
            if (sent == 0) continue;
            room[arc] -= sent;
            room[arcs.Reverse[arc]] += sent;
            return sent;
        }
        return 0;
    }
}
