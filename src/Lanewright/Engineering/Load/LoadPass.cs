namespace Lanewright.Engineering.Load;

/// <summary>Sends the demand for one block of destinations after another down the shortest paths, and sums what each arc
/// carries.</summary>
internal sealed class LoadPass
{
    private const int Lanes = PathBlock.Lanes;

    private readonly FabricArcs arcs;
    private readonly FabricTraffic traffic;
    private readonly DirectDemand direct;
    private readonly PathBlock block;
    private readonly PathCounts? paths;
    private readonly double[] flow;
    private readonly double[] column;
    private readonly double[] scratch;
    private readonly int[] hopArcs;
    private readonly uint[] hopLanes;

    /// <summary>Makes room for passes over the arcs of one graph.</summary>
    public LoadPass(FabricGraph graph, FabricArcs arcs, FabricTraffic traffic, DirectDemand direct, SplitRule rule)
    {
        this.arcs = arcs;
        this.traffic = traffic;
        this.direct = direct;
        block = new PathBlock(arcs);
        paths = rule == SplitRule.PathWeighted ? new PathCounts(arcs, block, areLinks: false) : null;
        flow = new double[arcs.NodeCount * Lanes];
        column = new double[traffic.Ends.Length];
        scratch = new double[graph.OriginCount];
        hopArcs = new int[arcs.MostArcs + 1];
        hopLanes = new uint[arcs.MostArcs + 1];
        ArcGigabits = new double[arcs.Target.Length];
    }

    /// <summary>What each arc carries so far, in Gb/s.</summary>
    public double[] ArcGigabits { get; }

    /// <summary>Demand that found no path so far, in Gb/s.</summary>
    public double UnroutedGigabits { get; private set; }

    /// <summary>Adds the demand for up to <see cref="PathBlock.Lanes"/> destinations.</summary>
    public void Add(ReadOnlySpan<Destination> destinations)
    {
        block.Search(destinations);
        Array.Clear(flow);
        for (var lane = 0; lane < destinations.Length; lane++) Inject(destinations[lane], lane);
        paths?.Count(destinations);
        for (var level = block.LevelCount - 1; level > 0; level--)
        {
            block.Mark(level - 1);
            for (var entry = block.LevelStarts[level]; entry < block.LevelStarts[level + 1]; entry++)
            {
                if (paths is null) DivideByHops(block.NodeOf(entry), block.LanesOf(entry));
                else DivideByPaths(block.NodeOf(entry), block.LanesOf(entry), paths);
            }
            block.Unmark(level - 1);
        }
        for (var lane = 0; lane < destinations.Length; lane++) Arrive(destinations[lane], lane);
    }

    /// <summary>Adds the demand for a bundle of hosts that hangs on no switch.</summary>
    public void AddApart(int terminal)
    {
        traffic.Column(terminal, column, scratch);
        direct.Remove(terminal, traffic.Ends, column);
        UnroutedGigabits += column.Sum();
    }

    private void Inject(Destination destination, int lane)
    {
        foreach (var terminal in destination.Terminals)
        {
            traffic.Column(terminal, column, scratch);
            direct.Remove(terminal, traffic.Ends, column);
            var total = 0.0;
            for (var i = 0; i < column.Length; i++)
            {
                if (column[i] == 0) continue;
                if (((block.LanesReached(traffic.Ends[i]) >> lane) & 1) == 0)
                {
                    UnroutedGigabits += column[i];
                    continue;
                }
                flow[(traffic.Ends[i] * Lanes) + lane] += column[i];
                total += column[i];
            }
            // By one link everything comes down that link; over several it is known only when all has arrived.
            if (destination.HasOneLink) ArcGigabits[arcs.Reverse[arcs.First[terminal]]] += total;
        }
    }

    private void Arrive(Destination destination, int lane)
    {
        if (destination.HasOneLink) return;
        for (var arc = destination.Arcs.Start.Value; arc < destination.Arcs.End.Value; arc++)
        {
            // Two links of unlike rate to one switch share what arrives there by their numbers.
            var share = arcs.Count[arc] / (double)destination.CountTo(arcs.Target[arc], arcs);
            ArcGigabits[arcs.Reverse[arc]] += flow[(arcs.Target[arc] * Lanes) + lane] * share;
        }
    }

    /// <summary>Divides what a node has equally over its next-hop links.</summary>
    private void DivideByHops(int node, uint lanes)
    {
        var has = LaneRow.Load(flow, node).Keep(lanes);
        if (has.Sum() == 0) return;
        var hops = block.NextHops(node, lanes, hopArcs, hopLanes);
        var inAllLanes = 0.0;
        var inSome = LaneRow.All(0);
        for (var i = 0; i < hops; i++)
        {
            double count = arcs.Count[hopArcs[i]];
            if (hopLanes[i] == lanes) inAllLanes += count;
            else inSome += LaneRow.All(count).Keep(hopLanes[i]);
        }
        var share = (has / (LaneRow.All(inAllLanes) + inSome)).Keep(lanes);
        var sum = share.Sum();
        for (var i = 0; i < hops; i++)
        {
            var arc = hopArcs[i];
            double count = arcs.Count[arc];
            var part = (hopLanes[i] == lanes ? share : share.Keep(hopLanes[i])) * LaneRow.All(count);
            ArcGigabits[arc] += hopLanes[i] == lanes ? sum * count : part.Sum();
            (LaneRow.Load(flow, arcs.Target[arc]) + part).Store(flow, arcs.Target[arc]);
        }
    }

    /// <summary>Divides what a node has over its next-hop links in proportion to the paths behind each.</summary>
    private void DivideByPaths(int node, uint lanes, PathCounts counts)
    {
        var has = LaneRow.Load(flow, node).Keep(lanes);
        if (has.Sum() == 0) return;
        var hops = block.NextHops(node, lanes, hopArcs, hopLanes);
        var behind = LaneRow.All(0);
        for (var i = 0; i < hops; i++) behind += counts.WeightOf(hopArcs[i]).Keep(hopLanes[i]);
        var share = (has / behind).Keep(lanes);
        for (var i = 0; i < hops; i++)
        {
            var arc = hopArcs[i];
            var part = share * counts.WeightOf(arc).Keep(hopLanes[i]);
            ArcGigabits[arc] += part.Sum();
            (LaneRow.Load(flow, arcs.Target[arc]) + part).Store(flow, arcs.Target[arc]);
        }
    }
}
