namespace Lanewright.Engineering.Load;

/// <summary>Divisions into halves that are likely to carry little.</summary>
internal sealed class Divisions
{
    /// <summary>Bundles from which halves are grown.</summary>
    private const int MostSeeds = 24;

    /// <summary>Flows worked out at most while bundles change sides, and arcs looked at for them.</summary>
    private const int MostTrials = 600;
    private const long MostWork = 20_000_000;

    private readonly FabricGraph graph;
    private readonly HoseEnds ends;
    private readonly int[] members;
    private readonly CutFlow none;
    private readonly int trials;

    /// <summary>Takes a fabric.</summary>
    public Divisions(FabricGraph graph, HoseEnds ends, int[] members)
    {
        this.graph = graph;
        this.ends = ends;
        this.members = members;
        none = CutFlow.Of(graph, ends);
        trials = (int)Math.Min(MostTrials, MostWork / graph.Links.Length);
    }

    /// <summary>What the best division found carries, in bits per second; no more are looked for once one carries what all do.</summary>
    /// <param name="floor">What every division carries.</param>
    public long Least(double floor)
    {
        var (least, best) = (long.MaxValue, (HashSet<int>?)null);
        foreach (var order in Orders())
        {
            var side = Division(order);
            var carried = CutFlow.Across(none, side);
            if (carried >= least) continue;
            (least, best) = (carried, [.. side]);
            if (least <= floor) return least;
        }
        return best is null ? least : Improved(best, least, floor);
    }

    /// <summary>Bundles by distance from one of them: the order in which an exact search best takes them, too.</summary>
    public int[] From(int seed)
    {
        var distances = new FlowDistances(graph).To(ends.Nodes[seed], null);
        return [.. Enumerable.Range(0, members.Length).OrderBy(i => i == seed ? -1 : distances[ends.Nodes[i]]).ThenBy(i => i)];
    }

    /// <summary>As numbered; those of the lowest rates first, who cannot send much whatever is between; by distance from some; every
    /// other.</summary>
    private IEnumerable<int[]> Orders()
    {
        int[] asNumbered = [.. Enumerable.Range(0, members.Length)];
        yield return asNumbered;
        yield return [.. asNumbered.OrderBy(i => ends.RateOf(ends.Nodes[i]) / (double)members[i]).ThenBy(i => i)];
        var seeds = Math.Min(MostSeeds, members.Length);
        for (var i = 0; i < seeds; i++) yield return From(i * members.Length / seeds);
        yield return [.. asNumbered.OrderBy(i => i % 2).ThenBy(i => i)];
    }

    /// <summary>Half of the hosts, as many of the first bundles as will do.</summary>
    private List<int> Division(int[] order)
    {
        var sizes = new HalfSizes([.. order.Select(i => members[i])]);
        var chosen = new List<int>();
        var left = sizes.Half;
        for (var i = 0; i < order.Length; i++)
        {
            if (!sizes.CanMake(i + 1, left - members[order[i]])) continue;
            left -= members[order[i]];
            chosen.Add(order[i]);
        }
        return chosen;
    }

    /// <summary>Lets bundles of as many hosts change sides as long as that makes it less.</summary>
    private long Improved(HashSet<int> side, long least, double floor)
    {
        var left = trials;
        for (var isBetter = true; isBetter;)
        {
            isBetter = false;
            for (var one = 0; one < members.Length && least > floor; one++)
            {
                if (!side.Contains(one)) continue;
                for (var two = 0; two < members.Length; two++)
                {
                    if (side.Contains(two) || members[two] != members[one]) continue;
                    if (left-- <= 0) return least;
                    var carried = CutFlow.Across(none, side.Where(i => i != one).Append(two));
                    if (carried >= least) continue;
                    side.Remove(one);
                    side.Add(two);
                    (least, isBetter) = (carried, true);
                    break;
                }
            }
        }
        return least;
    }
}
