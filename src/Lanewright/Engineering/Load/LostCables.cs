namespace Lanewright.Engineering.Load;

/// <summary>Which physical links an outage takes: two causes that name the same one take it once.</summary>
internal static class LostCables
{
    /// <summary>The numbers of the physical links that are down, by link.</summary>
    public static SortedDictionary<int, SortedSet<int>> Of(FabricGraph whole, Outage outage)
    {
        var lost = new SortedDictionary<int, SortedSet<int>>();
        foreach (var run in outage.Links)
        {
            var all = whole.Links[run.Link].Count;
            if (!lost.TryGetValue(run.Link, out var cables)) lost[run.Link] = cables = [];
            for (var i = 0; i < Math.Min(run.Count, all); i++) cables.Add((run.First + i) % all);
        }
        return lost;
    }

    /// <summary>How many each member of a bundle lost of a link of which every member has so many.</summary>
    public static IEnumerable<(int Member, int Count)> ByMember(SortedSet<int> cables, int each) =>
        cables.GroupBy(cable => cable / each).Select(member => (member.Key, member.Count()));
}
