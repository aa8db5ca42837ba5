namespace Lanewright.Engineering.Load;

/// <summary>A traffic matrix laid on a graph that may have lost members: parts of a bundle share its demand by their members, nodes
/// that are down want nothing, and a host that lost links sends no more than those it has left carry.</summary>
internal sealed class FabricTraffic
{
    private readonly FabricGraph graph;
    private readonly TrafficMatrix traffic;
    private readonly double[]? kept;

    /// <summary>Lays a matrix on a graph.</summary>
    /// <exception cref="ArgumentException">A demand ends at a switch or outside the graph.</exception>
    public FabricTraffic(FabricGraph graph, TrafficMatrix traffic)
    {
        this.graph = graph;
        this.traffic = traffic;
        var ends = traffic.Ends.ToArray();
        foreach (var end in ends)
            if (end >= graph.OriginCount || !graph.Nodes[end].IsTerminal)
                throw new ArgumentException($"node {end} has a demand and is no bundle of hosts", nameof(traffic));
        var parts = graph.IsSplit
            ? Enumerable.Range(0, graph.Nodes.Length).Where(n => Array.BinarySearch(ends, graph.OriginOfNode(n)) >= 0)
            : ends;
        Ends = [.. parts.Where(n => !graph.IsDown(n))];
        kept = graph.Whole is { } whole ? [.. Ends.Select(end => HostSending.Kept(graph, whole, traffic, end))] : null;
    }

    /// <summary>Bundles that are up and take part, rising.</summary>
    public int[] Ends { get; }

    /// <summary>Whether anything is sent to a node.</summary>
    public bool Reaches(int node) => traffic.Reaches(graph.OriginOfNode(node));

    /// <summary>Whether a host that is up sends less than it would, as links of its own are down.</summary>
    public bool IsLess => kept is not null && kept.Any(k => k < 1);

    /// <summary>All that hosts which are up still send to others that are up, in Gb/s.</summary>
    public double Sent
    {
        get
        {
            var (sum, scratch) = (0.0, new double[graph.OriginCount]);
            foreach (var to in Ends.Where(Reaches))
            {
                Array.Clear(scratch);
                traffic.AddColumn(graph.OriginOfNode(to), scratch);
                for (var i = 0; i < Ends.Length; i++)
                {
                    var part = graph.IsSplit ? PartOf(Ends[i], to) : 1;
                    sum += scratch[graph.OriginOfNode(Ends[i])] * part * (kept?[i] ?? 1);
                }
            }
            return sum;
        }
    }

    /// <summary>What is wanted and not sent, in Gb/s: by or to hosts that are down, or by hosts whose links left carry no more.</summary>
    public double Unsent => Math.Max(0, traffic.TotalGigabits - Sent);

    /// <summary>Sets a vector over <see cref="Ends"/> to what each sends to one node, in Gb/s.</summary>
    /// <param name="to">The receiving node of the graph.</param>
    /// <param name="byEnd">The answer.</param>
    /// <param name="scratch">Room for one number a node of the whole fabric.</param>
    public void Column(int to, Span<double> byEnd, Span<double> scratch)
    {
        scratch.Clear();
        traffic.AddColumn(graph.OriginOfNode(to), scratch);
        if (!graph.IsSplit)
        {
            for (var i = 0; i < Ends.Length; i++) byEnd[i] = scratch[Ends[i]];
        }
        else
        {
            for (var i = 0; i < Ends.Length; i++) byEnd[i] = scratch[graph.OriginOfNode(Ends[i])] * PartOf(Ends[i], to);
        }
        for (var i = 0; kept is not null && i < Ends.Length; i++) byEnd[i] *= kept[i];
    }

    /// <summary>The part of the demand between two bundles that falls on two parts of them.</summary>
    private double PartOf(int from, int to)
    {
        double sending = graph.Nodes[from].Members;
        double receiving = graph.Nodes[to].Members;
        double all = graph.MembersOfOrigin(from);
        if (graph.OriginOfNode(from) != graph.OriginOfNode(to)) return sending / all * (receiving / graph.MembersOfOrigin(to));
        if (all == 1) return 1;
        // Among the members of one bundle nobody sends to himself.
        return sending * (from == to ? receiving - 1 : receiving) / (all * (all - 1));
    }
}
