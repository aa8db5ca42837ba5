namespace Lanewright.Engineering.Load;

/// <summary>What each node divides its traffic by, towards the destinations of a block, by lane: its next-hop links, or the shortest
/// paths behind it. Of paths only ratios within a distance are used, so a distance whose numbers grow out of hand is scaled down as a
/// whole.</summary>
internal sealed class PathCounts(FabricArcs arcs, PathBlock block, bool areLinks)
{
    /// <summary>Far below what a double holds, so that sixteen lanes of one more distance still fit.</summary>
    private const double TooMany = 1e100;

    private readonly int[] hopArcs = new int[arcs.MostArcs + 1];
    private readonly uint[] hopLanes = new uint[arcs.MostArcs + 1];

    /// <summary>The counts, a row a node.</summary>
    public double[] Rows { get; } = new double[arcs.NodeCount * PathBlock.Lanes];

    /// <summary>What an arc to a node weighs when traffic is divided.</summary>
    public LaneRow WeightOf(int arc) =>
        areLinks ? LaneRow.All(arcs.Count[arc]) : LaneRow.Load(Rows, arcs.Target[arc]) * LaneRow.All(arcs.Count[arc]);

    /// <summary>Counts for the destinations that the block has searched.</summary>
    public void Count(ReadOnlySpan<Destination> destinations)
    {
        Array.Clear(Rows);
        for (var lane = 0; lane < destinations.Length; lane++)
            for (var arc = destinations[lane].Arcs.Start.Value; arc < destinations[lane].Arcs.End.Value; arc++)
                Rows[(arcs.Target[arc] * PathBlock.Lanes) + lane] += arcs.Count[arcs.Reverse[arc]];
        for (var level = 1; level < block.LevelCount; level++)
        {
            block.Mark(level - 1);
            var most = 0.0;
            for (var entry = block.LevelStarts[level]; entry < block.LevelStarts[level + 1]; entry++)
            {
                var node = block.NodeOf(entry);
                var hops = block.NextHops(node, block.LanesOf(entry), hopArcs, hopLanes);
                var row = LaneRow.All(0);
                for (var i = 0; i < hops; i++) row += WeightOf(hopArcs[i]).Keep(hopLanes[i]);
                (LaneRow.Load(Rows, node) + row).Store(Rows, node);
                most = Math.Max(most, row.Sum());
            }
            block.Unmark(level - 1);
            if (most > TooMany && !areLinks) Scale(level, 1 / most);
        }
    }

    private void Scale(int level, double by)
    {
        for (var entry = block.LevelStarts[level]; entry < block.LevelStarts[level + 1]; entry++)
        {
            var row = LaneRow.Load(Rows, block.NodeOf(entry));
            var others = row.Keep(~block.LanesOf(entry));
            (row.Keep(block.LanesOf(entry)) * LaneRow.All(by) + others).Store(Rows, block.NodeOf(entry));
        }
    }
}
