namespace Lanewright.Engineering.Pathways;

/// <summary>The shortest way between any two racks, found when first asked for. The search from a rack serves all that are asked for next
/// from the same rack, and the answers of all racks are kept.</summary>
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
        var key = KeyOf(question);
        var isExpected = wanted.Remove(key, out var targets);
        if (key != held && !(searched.TryGetValue(key, out var kept) && Take(kept)))
        {
            search.From(key.Rack, key.FarHall, key.Side);
            if (!isExpected) Keep(key);
        }
        held = key;
        foreach (var target in targets ?? []) known[question with { To = target }] = search.To(target);
        return known[question] = search.To(question.To);
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
