namespace Lanewright.Engineering.Load;

/// <summary>Finds which traffic crosses a link, and how much of it: outwards from the link, against the direction of traffic.</summary>
internal sealed class CrossingPass
{
    private const int Lanes = PathBlock.Lanes;

    private readonly FabricArcs arcs;
    private readonly PathBlock block;
    private readonly PathCounts counts;
    private readonly double[] crossing;
    private readonly bool[] isActive;
    private readonly List<int> active = [];
    private readonly int[] hopArcs;
    private readonly uint[] hopLanes;

    /// <summary>Makes room for passes over one graph.</summary>
    public CrossingPass(FabricGraph graph, SplitRule rule)
    {
        arcs = graph.Arcs;
        block = new PathBlock(arcs);
        counts = new PathCounts(arcs, block, areLinks: rule == SplitRule.PerHop);
        crossing = new double[arcs.NodeCount * Lanes];
        isActive = new bool[arcs.NodeCount];
        hopArcs = new int[arcs.MostArcs + 1];
        hopLanes = new uint[arcs.MostArcs + 1];
    }

    /// <summary>Searches towards a block of destinations.</summary>
    public void Search(ReadOnlySpan<Destination> destinations)
    {
        block.Search(destinations);
        counts.Count(destinations);
    }

    /// <summary>Lists the traffic to the destinations that crosses an arc, in the order of the receivers.</summary>
    public void List(int arc, ReadOnlySpan<Destination> destinations, List<Crossing> result)
    {
        var tail = arcs.Target[arcs.Reverse[arc]];
        Arrive(arc, destinations);
        for (var level = 1; level < block.LevelCount; level++)
        {
            block.Mark(level - 1, isActive);
            for (var entry = block.LevelStarts[level]; entry < block.LevelStarts[level + 1]; entry++)
                if (block.NodeOf(entry) != tail) Gather(entry, -1);
            block.Unmark(level - 1);
            block.Mark(level - 1);
            for (var entry = block.LevelStarts[level]; entry < block.LevelStarts[level + 1]; entry++)
                if (block.NodeOf(entry) == tail) Gather(entry, arc);
            block.Unmark(level - 1);
        }
        Collect(arc, destinations, result);
        foreach (var node in active)
        {
            isActive[node] = false;
            crossing.AsSpan(node * Lanes, Lanes).Clear();
        }
        active.Clear();
    }

    /// <summary>Starts at the switch where an arc brings traffic down to a bundle that has several.</summary>
    private void Arrive(int arc, ReadOnlySpan<Destination> destinations)
    {
        if (!arcs.IsTerminal[arcs.Target[arc]]) return;
        for (var lane = 0; lane < destinations.Length; lane++)
        {
            if (destinations[lane].HasOneLink || destinations[lane].Terminals[0] != arcs.Target[arc]) continue;
            var tail = arcs.Target[arcs.Reverse[arc]];
            crossing[(tail * Lanes) + lane] = arcs.Count[arc] / (double)destinations[lane].CountTo(tail, arcs);
            Activate(tail);
        }
    }

    private void Activate(int node)
    {
        if (isActive[node]) return;
        isActive[node] = true;
        active.Add(node);
    }

    private void Gather(int entry, int wantedArc)
    {
        var (node, lanes) = (block.NodeOf(entry), block.LanesOf(entry));
        var hops = block.NextHops(node, lanes, hopArcs, hopLanes);
        if (hops == 0) return;
        var sum = LaneRow.All(0);
        for (var i = 0; i < hops; i++)
        {
            var behind = LaneRow.Load(crossing, arcs.Target[hopArcs[i]]);
            if (hopArcs[i] == wantedArc) behind += LaneRow.All(1);
            sum += (behind * counts.WeightOf(hopArcs[i])).Keep(hopLanes[i]);
        }
        if (sum.Sum() == 0) return;
        (LaneRow.Load(crossing, node) + (sum / LaneRow.Load(counts.Rows, node)).Keep(lanes)).Store(crossing, node);
        Activate(node);
    }

    private void Collect(int arc, ReadOnlySpan<Destination> destinations, List<Crossing> result)
    {
        active.Sort();
        for (var lane = 0; lane < destinations.Length; lane++)
        {
            foreach (var receiver in destinations[lane].Terminals)
            {
                // The one link down to a bundle carries all that comes to it.
                var isOnlyWay = destinations[lane].HasOneLink && arcs.Target[arc] == receiver;
                if (isOnlyWay)
                {
                    for (var node = 0; node < arcs.NodeCount; node++)
                    {
                        var isReached = ((block.LanesReached(node) >> lane) & 1) != 0;
                        if (arcs.IsTerminal[node] && isReached) result.Add(new Crossing(node, receiver, 1));
                    }
                    continue;
                }
                foreach (var node in active)
                {
                    var fraction = crossing[(node * Lanes) + lane];
                    if (arcs.IsTerminal[node] && fraction > 0) result.Add(new Crossing(node, receiver, fraction));
                }
            }
        }
    }
}
