using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Which switches reach each other, and which bundles of hosts hang on which of these islands. Hosts join no islands, as they
/// forward nothing.</summary>
internal sealed class Islands
{
    private readonly FabricGraph graph;
    private readonly int[][] islandsOf;
    private readonly int islandCount;
    private readonly Lazy<int[]> groups;

    /// <summary>Finds the islands of a graph.</summary>
    public Islands(FabricGraph graph)
    {
        this.graph = graph;
        var arcs = graph.Arcs;
        // A direct link between two bundles is an island of its own.
        islandCount = arcs.NodeCount + arcs.DirectLinks.Length;
        var joined = new UnionFind(arcs.NodeCount);
        for (var node = 0; node < arcs.NodeCount; node++)
        {
            if (arcs.IsTerminal[node]) continue;
            for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++)
                if (!arcs.IsTerminal[arcs.Target[arc]]) joined.Join(node, arcs.Target[arc]);
        }
        var found = new SortedSet<int>[arcs.NodeCount];
        for (var node = 0; node < arcs.NodeCount; node++)
        {
            if (!arcs.IsTerminal[node]) continue;
            found[node] = [];
            for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++) found[node].Add(joined.Find(arcs.Target[arc]));
        }
        for (var i = 0; i < arcs.DirectLinks.Length; i++)
        {
            var link = graph.Links[arcs.DirectLinks[i]];
            found[link.A].Add(arcs.NodeCount + i);
            found[link.B].Add(arcs.NodeCount + i);
        }
        islandsOf = [.. found.Select(f => f is null ? [] : f.ToArray())];
        groups = new(Groups);
    }

    /// <summary>How many hosts <see cref="Cut"/> finds.</summary>
    /// <param name="before">The islands of the whole fabric.</param>
    public int MembersCut(Islands before) => Cut(before).Sum(n => graph.Nodes[n].Members);

    /// <summary>Bundles of hosts that are up and hang on no part of the largest island left of those their own group hung on
    /// before.</summary>
    /// <param name="before">The islands of the whole fabric.</param>
    public IEnumerable<int> Cut(Islands before)
    {
        var group = before.groups.Value;
        var members = new Dictionary<(int Group, int Island), int>();
        var terminals = Enumerable.Range(0, islandsOf.Length).Where(n => graph.Nodes[n].IsTerminal && !graph.IsDown(n)).ToList();
        foreach (var node in terminals)
            foreach (var island in islandsOf[node])
            {
                var key = (group[graph.OriginOfNode(node)], island);
                members[key] = members.GetValueOrDefault(key) + graph.Nodes[node].Members;
            }
        var largest = members.GroupBy(m => m.Key.Group)
            .ToDictionary(g => g.Key, g => g.OrderByDescending(m => m.Value).ThenBy(m => m.Key.Island).First().Key.Island);
        return terminals
            .Where(n => !largest.TryGetValue(group[graph.OriginOfNode(n)], out var island) || !islandsOf[n].Contains(island));
    }

    /// <summary>Whether two bundles of hosts hang on one island.</summary>
    public bool AreJoined(int one, int other) => islandsOf[one].AsSpan().IndexOfAny(islandsOf[other]) >= 0;

    /// <summary>For each bundle, the group of bundles that share islands with it, directly or through others.</summary>
    private int[] Groups()
    {
        var joined = new UnionFind(islandsOf.Length + islandCount);
        for (var node = 0; node < islandsOf.Length; node++)
            foreach (var island in islandsOf[node]) joined.Join(node, islandsOf.Length + island);
        return [.. Enumerable.Range(0, islandsOf.Length).Select(joined.Find)];
    }
}
