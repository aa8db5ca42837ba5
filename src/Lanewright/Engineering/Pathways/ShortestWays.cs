namespace Lanewright.Engineering.Pathways;

/// <summary>The shortest way between any two racks, found when first asked for. Those told of beforehand are found together, a
/// search a rack; for the rest the search from a rack serves all that are asked for next from it. All answers are kept.</summary>
public sealed class ShortestWays
{
    private readonly WaySearch search;
    private readonly Dictionary<WayQuestion, CableWay?> known = [];
    private readonly Dictionary<(int Rack, int FarHall, int Side), List<int>> wanted = [];
    private readonly Dictionary<(int Rack, int FarHall, int Side), (double[] Metres, int[] By, int Source)> searched = [];
    private (int Rack, int FarHall, int Side) held = (-1, -1, -1);

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
            var key = KeyOf(question);
            if (!wanted.TryGetValue(key, out var targets)) wanted[key] = targets = [];
            targets.Add(question.To);
        }
    }

    /// <summary>The shortest way; null where none leads there.</summary>
    public CableWay? Between(WayQuestion question)
    {
        if (known.TryGetValue(question, out var found)) return found;
        FindExpected();
        if (known.TryGetValue(question, out found)) return found;
        var key = KeyOf(question);
        if (key != held && !(searched.TryGetValue(key, out var kept) && Take(kept)))
        {
            search.From(key.Rack, key.FarHall, key.Side);
            Keep(key);
        }
        held = key;
        return known[question] = search.To(question.To);
    }

    /// <summary>Searches from all racks that were told of, as many at once as there are processors; the answers are the same in any
    /// order.</summary>
    private void FindExpected()
    {
        if (wanted.Count == 0) return;
        var racks = wanted.ToArray();
        var found = new CableWay?[racks.Length][];
        wanted.Clear();
        Parallel.For(0, racks.Length, () => new WaySearch(Net), (i, _, own) =>
        {
            var (key, targets) = racks[i];
            own.From(key.Rack, key.FarHall, key.Side);
            found[i] = [.. targets.Select(own.To)];
            return own;
        }, _ => { });
        for (var i = 0; i < racks.Length; i++)
        {
            var (key, targets) = racks[i];
            for (var k = 0; k < targets.Count; k++) known[new WayQuestion(key.Rack, targets[k], key.Side)] = found[i][k];
        }
    }

    /// <summary>What is asked for without notice may well be asked for again from the same rack.</summary>
    private void Keep((int, int, int) key)
    {
        if ((searched.Count + 1) * (long)Net.Points.Length > MostKept) searched.Clear();
        searched[key] = search.Result();
    }

    private bool Take((double[] Metres, int[] By, int Source) kept)
    {
        search.Restore(kept);
        return true;
    }

    private (int Rack, int FarHall, int Side) KeyOf(WayQuestion question) =>
        (question.From, Net.Building.Racks[question.To].Hall.Index, question.Side);

    /// <summary>Points of searches kept at most: some tens of megabytes.</summary>
    private const long MostKept = 4_000_000;
}
