namespace Lanewright.Engineering.Load;

/// <summary>Demand laid out by source, what has no path left out and counted.</summary>
internal sealed class FlowDemand
{
    private FlowDemand(int[] sources, double[][] bySource, double unroutedGigabits)
    {
        Sources = sources;
        BySource = bySource;
        UnroutedGigabits = unroutedGigabits;
    }

    /// <summary>Bundles that send, rising.</summary>
    public int[] Sources { get; }

    /// <summary>What each source sends to each node, in Gb/s.</summary>
    public double[][] BySource { get; }

    /// <summary>Demand without a path, in Gb/s.</summary>
    public double UnroutedGigabits { get; }

    /// <summary>Lays out the demand on a graph.</summary>
    public static FlowDemand Of(FabricGraph graph, FabricTraffic traffic)
    {
        var rows = traffic.Ends.ToDictionary(end => end, _ => new double[graph.Nodes.Length]);
        var (column, scratch) = (new double[traffic.Ends.Length], new double[graph.OriginCount]);
        var distances = new FlowDistances(graph);
        var unrouted = 0.0;
        foreach (var to in traffic.Ends.Where(traffic.Reaches))
        {
            traffic.Column(to, column, scratch);
            var reached = distances.To(to, null);
            for (var i = 0; i < column.Length; i++)
            {
                if (column[i] == 0) continue;
                if (double.IsFinite(reached[traffic.Ends[i]])) rows[traffic.Ends[i]][to] = column[i];
                else unrouted += column[i];
            }
        }
        int[] sources = [.. traffic.Ends.Where(end => rows[end].Any(d => d > 0))];
        return new FlowDemand(sources, [.. sources.Select(s => rows[s])], unrouted);
    }
}
