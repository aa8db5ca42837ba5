namespace Lanewright.Engineering.Load;

/// <summary>Breadth-first search towards a few destinations at once: each destination is a lane, each node keeps a bit a lane, so that
/// one look at an arc serves all lanes. What comes out is the order of nodes by distance and, for any node, its next hops by
/// lane.</summary>
internal sealed class PathBlock
{
    /// <summary>Destinations in a block: as many as one row of numbers that vector instructions take in four steps.</summary>
    public const int Lanes = 16;

    private readonly FabricArcs arcs;
    private readonly uint[] seen;
    private readonly uint[] marks;
    private readonly uint[] found;
    private int[] entryNode;
    private uint[] entryLanes;
    private int entryCount;

    /// <summary>Makes room for blocks over one graph.</summary>
    public PathBlock(FabricArcs arcs)
    {
        this.arcs = arcs;
        seen = new uint[arcs.NodeCount];
        marks = new uint[arcs.NodeCount];
        found = new uint[arcs.NodeCount];
        entryNode = new int[arcs.NodeCount + 1];
        entryLanes = new uint[arcs.NodeCount + 1];
    }

    /// <summary>Where the entries of each distance start; distance 1 is at index 0, and one entry more than distances.</summary>
    public List<int> LevelStarts { get; } = [];

    /// <summary>Distances there are; switches at which paths arrive have distance 1.</summary>
    public int LevelCount => LevelStarts.Count - 1;

    /// <summary>The node of an entry. A node has an entry for each distance at which some lanes find it.</summary>
    public int NodeOf(int entry) => entryNode[entry];

    /// <summary>The lanes in which the node of an entry has the distance of the entry.</summary>
    public uint LanesOf(int entry) => entryLanes[entry];

    /// <summary>The lanes in which a node has a path.</summary>
    public uint LanesReached(int node) => seen[node];

    /// <summary>Searches towards up to <see cref="Lanes"/> destinations.</summary>
    public void Search(ReadOnlySpan<Destination> destinations)
    {
        Array.Clear(seen);
        entryCount = 0;
        LevelStarts.Clear();
        LevelStarts.Add(0);
        for (var lane = 0; lane < destinations.Length; lane++)
            for (var arc = destinations[lane].Arcs.Start.Value; arc < destinations[lane].Arcs.End.Value; arc++)
                Find(arcs.Target[arc], 1u << lane);
        CloseLevel();
        for (var level = 0; LevelStarts[level + 1] > LevelStarts[level]; level++)
        {
            for (var entry = LevelStarts[level]; entry < LevelStarts[level + 1]; entry++)
            {
                // Hosts forward nothing: paths end at them.
                if (!arcs.IsTerminal[entryNode[entry]]) Expand(entryNode[entry], entryLanes[entry]);
            }
            CloseLevel();
        }
        // The last level is the one that found nothing.
        LevelStarts.RemoveAt(LevelStarts.Count - 1);
    }

    /// <summary>Marks the switches of a level that are wanted.</summary>
    public void Mark(int level, bool[] wanted)
    {
        for (var entry = LevelStarts[level]; entry < LevelStarts[level + 1]; entry++)
            if (wanted[entryNode[entry]] && !arcs.IsTerminal[entryNode[entry]]) marks[entryNode[entry]] = entryLanes[entry];
    }

    /// <summary>Marks the switches of a level, so that <see cref="NextHops"/> of the level behind it finds them.</summary>
    public void Mark(int level)
    {
        for (var entry = LevelStarts[level]; entry < LevelStarts[level + 1]; entry++)
            if (!arcs.IsTerminal[entryNode[entry]]) marks[entryNode[entry]] = entryLanes[entry];
    }

    /// <summary>Takes the marks of a level away.</summary>
    public void Unmark(int level)
    {
        for (var entry = LevelStarts[level]; entry < LevelStarts[level + 1]; entry++) marks[entryNode[entry]] = 0;
    }

    /// <summary>Lists arcs of a node that lead to a marked switch, with the lanes in which they do.</summary>
    /// <returns>How many were listed.</returns>
    public int NextHops(int node, uint lanes, int[] hopArcs, uint[] hopLanes)
    {
        var count = 0;
        var first = arcs.First[node];
        var reach = arcs.Target.AsSpan(first, arcs.First[node + 1] - first);
        unchecked
        {
            for (var i = 0; i < reach.Length; i++)
            {
                var shared = marks[reach[i]] & lanes;
                hopArcs[count] = first + i;
                hopLanes[count] = shared;
                count += shared != 0 ? 1 : 0;
            }
        }
        return count;
    }

    private void Expand(int node, uint lanes)
    {
        var targets = arcs.Target.AsSpan(arcs.First[node], arcs.First[node + 1] - arcs.First[node]);
        foreach (var target in targets)
        {
            var news = lanes & ~seen[target];
            if (news != 0) Find(target, news);
        }
    }

    private void Find(int node, uint lanes)
    {
        if (found[node] == 0)
        {
            if (entryCount == entryNode.Length)
            {
                Array.Resize(ref entryNode, entryCount * 2);
                Array.Resize(ref entryLanes, entryCount * 2);
            }
            entryNode[entryCount++] = node;
        }
        found[node] |= lanes;
    }

    /// <summary>Fixes the lanes of the entries found since the last level.</summary>
    private void CloseLevel()
    {
        for (var entry = LevelStarts[^1]; entry < entryCount; entry++)
        {
            var node = entryNode[entry];
            entryLanes[entry] = found[node];
            seen[node] |= found[node];
            found[node] = 0;
        }
        LevelStarts.Add(entryCount);
    }
}
