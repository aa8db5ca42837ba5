using Lanewright.Engineering.Load;

namespace Lanewright.Tests.Load.Support;

/// <summary>Loads by writing down every shortest path, physical link by physical link, and giving each its chance: the product of what
/// each hop offers (per hop), or one over their number (by paths). Nothing is shared with the engine but its inputs.</summary>
internal sealed class PathByPath
{
    private const int Apart = 1000;

    private readonly FabricGraph graph;
    private readonly int[,] steps;
    private readonly List<(int To, int Side)>[] cables;

    public PathByPath(FabricGraph graph)
    {
        this.graph = graph;
        steps = Steps(graph);
        cables = [.. graph.Nodes.Select(_ => new List<(int, int)>())];
        for (var i = 0; i < graph.Links.Length; i++)
        {
            for (var cable = 0; cable < graph.Links[i].Count; cable++)
            {
                cables[graph.Links[i].A].Add((graph.Links[i].B, i * 2));
                cables[graph.Links[i].B].Add((graph.Links[i].A, (i * 2) + 1));
            }
        }
    }

    /// <summary>What each directed link carries, and what finds no path.</summary>
    public (double[] Sides, double Unrouted) Loads(Func<int, int, double> demand, bool perHop)
    {
        var sides = new double[graph.Links.Length * 2];
        var unrouted = 0.0;
        var ends = Enumerable.Range(0, graph.Nodes.Length).Where(n => graph.Nodes[n].IsTerminal).ToList();
        foreach (var from in ends)
        {
            foreach (var to in ends)
            {
                var wanted = demand(from, to);
                if (wanted == 0) continue;
                var paths = Shortest(from, to, perHop);
                if (paths.Count == 0) unrouted += wanted;
                foreach (var (path, chance) in paths)
                    foreach (var side in path) sides[side] += wanted * chance;
            }
        }
        return (sides, unrouted);
    }

    /// <summary>All ways of the least length; among the hosts of one bundle they go up and come back.</summary>
    public List<(int[] Path, double Chance)> Shortest(int from, int to, bool perHop)
    {
        var least = from == to ? cables[from].Select(c => 1 + steps[c.To, to]).DefaultIfEmpty(Apart).Min() : steps[from, to];
        if (least >= Apart) return [];
        var found = Ways(from, to, least).ToList();
        return [.. found.Select(path => (path, perHop
            ? path.Select((side, i) => 1.0 / Choices(found, path, i)).Aggregate((a, b) => a * b)
            : 1.0 / found.Count))];
    }

    /// <summary>Least numbers of steps between all nodes by the method of Floyd and Warshall, through switches only.</summary>
    private static int[,] Steps(FabricGraph graph)
    {
        var n = graph.Nodes.Length;
        var steps = new int[n, n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++) steps[i, j] = i == j ? 0 : Apart;
        foreach (var link in graph.Links)
            if (link.Count > 0) steps[link.A, link.B] = steps[link.B, link.A] = 1;
        for (var via = 0; via < n; via++)
            for (var i = 0; i < n && !graph.Nodes[via].IsTerminal; i++)
                for (var j = 0; j < n; j++) steps[i, j] = Math.Min(steps[i, j], steps[i, via] + steps[via, j]);
        return steps;
    }

    /// <summary>Cables that lead on from where a path is after some hops: those of all ways from there.</summary>
    private int Choices(List<int[]> ways, int[] path, int hop)
    {
        var here = NodeBefore(path[hop]);
        var next = ways.Where(w => NodeBefore(w[hop]) == here).Select(w => w[hop]).Distinct();
        return next.Sum(side => graph.Links[side / 2].Count);
    }

    private int NodeBefore(int side) => side % 2 == 0 ? graph.Links[side / 2].A : graph.Links[side / 2].B;

    private IEnumerable<int[]> Ways(int from, int to, int length)
    {
        foreach (var (next, side) in cables[from])
        {
            if (steps[next, to] != length - 1 || (length > 1 && graph.Nodes[next].IsTerminal)) continue;
            if (length == 1) yield return [side];
            else
                foreach (var rest in Ways(next, to, length - 1)) yield return [side, .. rest];
        }
    }
}
