namespace Lanewright.Engineering.Load;

/// <summary>How many links lie between hosts, by shortest path.</summary>
/// <param name="Shortest">The fewest between two bundles that are joined.</param>
/// <param name="Longest">The most between two bundles that are joined.</param>
/// <param name="Mean">The mean over ordered pairs of bundles that are joined.</param>
/// <param name="PairsApart">Ordered pairs of bundles without a path.</param>
public sealed record HopCounts(int Shortest, int Longest, double Mean, long PairsApart)
{
    /// <summary>Counts between all bundles of hosts that are up; null when no two are joined. A cable between two hosts is one
    /// link.</summary>
    public static HopCounts? Of(FabricGraph graph)
    {
        var terminals = Enumerable.Range(0, graph.Nodes.Length).Where(n => graph.Nodes[n].IsTerminal && !graph.IsDown(n)).ToArray();
        var direct = graph.DirectPairs();
        var byHops = new SortedDictionary<int, long>();
        foreach (var _ in direct) byHops[1] = byHops.GetValueOrDefault(1) + 1;
        var block = new PathBlock(graph.Arcs);
        foreach (var destinations in Destination.Of(graph.Arcs, terminals).Chunk(PathBlock.Lanes))
        {
            block.Search(destinations);
            for (var level = 1; level < block.LevelCount; level++)
                for (var entry = block.LevelStarts[level]; entry < block.LevelStarts[level + 1]; entry++)
                    Count(graph, block, entry, level + 1, destinations, direct, byHops);
        }
        if (byHops.Count == 0) return null;
        var pairs = byHops.Values.Sum();
        var mean = byHops.Sum(h => h.Key * (double)h.Value) / pairs;
        return new HopCounts(byHops.Keys.First(), byHops.Keys.Last(), mean, ((long)terminals.Length * (terminals.Length - 1)) - pairs);
    }

    private static void Count(
        FabricGraph graph, PathBlock block, int entry, int hops, Destination[] destinations, HashSet<(int, int)> direct,
        SortedDictionary<int, long> byHops)
    {
        var node = block.NodeOf(entry);
        if (!graph.Nodes[node].IsTerminal) return;
        for (var lane = 0; lane < destinations.Length; lane++)
        {
            if (((block.LanesOf(entry) >> lane) & 1) == 0) continue;
            var others = destinations[lane].Terminals.Count(t => t != node && !direct.Contains((node, t)));
            if (others > 0) byHops[hops] = byHops.GetValueOrDefault(hops) + others;
        }
    }
}
