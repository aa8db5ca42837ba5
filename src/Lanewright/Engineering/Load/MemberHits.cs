namespace Lanewright.Engineering.Load;

/// <summary>Which members of one bundle of hosts lost what.</summary>
internal sealed class MemberHits(int members)
{
    private readonly SortedDictionary<int, SortedDictionary<int, int>> losses = [];
    private readonly SortedSet<int> gone = [];

    /// <summary>Takes members down.</summary>
    public void TakeDown(int first, int count)
    {
        for (var i = 0; i < Math.Min(count, members); i++) gone.Add((first + i) % members);
    }

    /// <summary>Lets a member lose so many of its physical links of one link.</summary>
    public void Lose(int link, int member, int count)
    {
        if (!losses.TryGetValue(member, out var mine)) losses[member] = mine = [];
        mine[link] = count;
    }

    /// <summary>Members that are up, grouped by what they lost; the unhurt first, then in the order of their first member.</summary>
    public List<(IReadOnlyDictionary<int, int> Losses, int Members)> Groups()
    {
        var groups = new Dictionary<string, (IReadOnlyDictionary<int, int> Losses, int Members)>();
        var order = new List<string>();
        foreach (var (member, mine) in losses)
        {
            if (gone.Contains(member)) continue;
            var key = string.Join(';', mine.Select(m => $"{m.Key}:{m.Value}"));
            if (!groups.ContainsKey(key)) order.Add(key);
            groups[key] = (mine, groups.GetValueOrDefault(key).Members + 1);
        }
        var unhurt = members - gone.Count - groups.Values.Sum(g => g.Members);
        List<(IReadOnlyDictionary<int, int>, int)> result = [];
        if (unhurt > 0) result.Add((new Dictionary<int, int>(), unhurt));
        result.AddRange(order.Select(key => groups[key]));
        return result;
    }
}
