namespace Lanewright.Engineering.Pathways;

/// <summary>The shortest way between any two racks, found when first asked for. Those told of beforehand are found together, a
/// search a rack; for the rest the search from a rack serves all that are asked for next from it. All answers are kept.</summary>
public sealed class ShortestWays
{
    private readonly WaySearch search;
    private readonly Dictionary<WayQuestion, CableWay?> known = [];
    private readonly Dictionary<WayStart, List<WayQuestion>> wanted = [];
    private readonly Dictionary<WayStart, (double[] Metres, int[] By, int Source)> searched = [];
    private WayStart held = new(-1, -1, -1, double.NaN);

    /// <summary>Searches in a graph.</summary>
    public ShortestWays(WayNet net)
    {
        Net = net;
        search = new WaySearch(net);
    }

    /// <summary>The graph.</summary>
    public WayNet Net { get; }

    /// <summary>Tells of ways that will be asked for, so that each rack is searched from once.</summary>
    public void Expect(IEnumerable<WayQuestion> questions)
    {
        foreach (var question in questions)
        {
            if (known.ContainsKey(question)) continue;
            foreach (var start in WayStart.AllOf(Net, question))
            {
                if (!wanted.TryGetValue(start, out var targets)) wanted[start] = targets = [];
                targets.Add(question);
            }
        }
    }

    /// <summary>The shortest way; null where none leads there.</summary>
    public CableWay? Between(WayQuestion question)
    {
        if (known.TryGetValue(question, out var found)) return found;
        FindExpected();
        if (known.TryGetValue(question, out found)) return found;
        foreach (var start in WayStart.AllOf(Net, question))
        {
            Hold(start);
            found = Shorter(question, found, search.To(question));
        }
        return known[question] = found;
    }

    /// <summary>Searches from all racks that were told of, as many at once as there are processors; the answers are the same in any
    /// order.</summary>
    private void FindExpected()
    {
        if (wanted.Count == 0) return;
        var starts = wanted.ToArray();
        var found = new CableWay?[starts.Length][];
        wanted.Clear();
        Parallel.For(0, starts.Length, () => new WaySearch(Net), (i, _, own) =>
        {
            var (start, targets) = starts[i];
            own.From(start);
            found[i] = [.. targets.Select(own.To)];
            return own;
        }, _ => { });
        for (var i = 0; i < starts.Length; i++)
        {
            var targets = starts[i].Value;
            for (var k = 0; k < targets.Count; k++)
                known[targets[k]] = Shorter(targets[k], known.GetValueOrDefault(targets[k]), found[i][k]);
        }
    }

    /// <summary>The shorter of two ways from height to height; of two as long the first.</summary>
    private CableWay? Shorter(WayQuestion question, CableWay? one, CableWay? other)
    {
        if (one is null || other is null) return one ?? other;
        return Net.MetresOf(other, question) < Net.MetresOf(one, question) ? other : one;
    }

    /// <summary>Searches from a rack, or takes up what was found from it before.</summary>
    private void Hold(WayStart start)
    {
        if (start == held) return;
        held = start;
        if (searched.TryGetValue(start, out var kept))
        {
            search.Restore(kept);
            return;
        }
        search.From(start);
        // What is asked for without notice may well be asked for again from the same rack.
        if ((searched.Count + 1) * (long)Net.Points.Length > MostKept) searched.Clear();
        searched[start] = search.Result();
    }

    /// <summary>Points of searches kept at most: some tens of megabytes.</summary>
    private const long MostKept = 4_000_000;
}
