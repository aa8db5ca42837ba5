namespace Lanewright.Engineering.Load;

/// <summary>Looks for the division into halves that carries least: bundle after bundle takes a side. What flows between those that have one
/// only grows when others follow, so that a start that carries as much as the best division known is given up.</summary>
internal sealed class BisectionSearch
{
    /// <summary>Starts tried, and arcs looked at for them, before the search is left unfinished: some seconds.</summary>
    private const long MostStarts = 400_000;
    private const long MostWork = 100_000_000;

    private readonly int[] members;
    private readonly int[] order;
    private readonly int[] twinOf;
    private readonly bool[] isChosen;
    private readonly HalfSizes sizes;
    private readonly int arcs;
    private readonly double floor;
    private long starts;

    private BisectionSearch(FabricGraph graph, HoseEnds ends, int[] members, int[] order, double floor)
    {
        this.members = members;
        this.order = order;
        this.floor = floor;
        arcs = graph.Links.Length;
        sizes = new HalfSizes([.. order.Select(i => members[i])]);
        isChosen = new bool[order.Length];
        twinOf = Twins(graph, ends, order);
    }

    private long Best { get; set; }

    private bool IsUnfinished { get; set; }

    /// <summary>Searches.</summary>
    /// <param name="graph">The fabric.</param>
    /// <param name="ends">Bundles and their rates.</param>
    /// <param name="members">Hosts of each bundle.</param>
    /// <param name="order">Bundles in the order they take sides.</param>
    /// <param name="known">What a division is known to carry, in bits per second.</param>
    /// <param name="floor">What every division is known to carry.</param>
    /// <returns>What the best division found carries, and whether none carries less.</returns>
    public static (long Least, bool IsProven) Of(
        FabricGraph graph, HoseEnds ends, int[] members, int[] order, long known, double floor)
    {
        var search = new BisectionSearch(graph, ends, members, order, floor) { Best = known };
        var none = CutFlow.Of(graph, ends);
        // One side is called the first: a division and its mirror image carry the same, as every link carries as much both ways.
        none.Place(order[0], sends: false);
        search.Go(1, none, 0, members[order[0]]);
        return (search.Best, !search.IsUnfinished);
    }

    private void Go(int at, CutFlow flow, int chosen, int others)
    {
        if (flow.Value >= Best || Best <= floor || IsUnfinished) return;
        if (at == order.Length)
        {
            Best = flow.Value;
            return;
        }
        if (++starts > MostStarts || starts * arcs > MostWork)
        {
            IsUnfinished = true;
            return;
        }
        var own = members[order[at]];
        // Of bundles that may change places, those on the second side come last.
        var mayStay = twinOf[at] < 0 || !isChosen[twinOf[at]];
        foreach (var sends in new[] { chosen < others, chosen >= others })
        {
            if (!sends && !mayStay) continue;
            if (!IsPossible(at + 1, chosen + (sends ? own : 0))) continue;
            var then = flow.Copy();
            then.Place(order[at], sends);
            isChosen[at] = sends;
            Go(at + 1, then, chosen + (sends ? own : 0), others + (sends ? 0 : own));
        }
        isChosen[at] = false;
    }

    private bool IsPossible(int from, int chosen) =>
        sizes.CanMake(from, sizes.Half - chosen) || sizes.CanMake(from, members.Sum() - sizes.Half - chosen);

    /// <summary>For each place in the order, the last one before whose bundle has as many hosts on the same switches by the same links; -1
    /// where there is none.</summary>
    private static int[] Twins(FabricGraph graph, HoseEnds ends, int[] order)
    {
        var last = new Dictionary<string, int>(StringComparer.Ordinal);
        var twins = new int[order.Length];
        for (var at = 0; at < order.Length; at++)
        {
            var node = ends.Nodes[order[at]];
            var ways = graph.LinksOf(node).Select(l => graph.Links[l])
                .Select(l => (l.A == node ? l.B : l.A, l.Rate.BitsPerSecond, l.Count)).Order();
            var place = $"{graph.Nodes[node].Members} {ends.RateOf(node)} {string.Join(' ', ways)}";
            twins[at] = last.TryGetValue(place, out var before) ? before : -1;
            last[place] = at;
        }
        return twins;
    }
}
