using Lanewright.Model;
using Lanewright.Model.Links;

namespace Lanewright.Engineering.Pathways;

/// <summary>Which links a plan wants on ways of their own, two and two.</summary>
internal static class ApartPairing
{
    /// <summary>The pairs, each with the device both have in common, in the order of the sets that ask for them.</summary>
    public static IEnumerable<(int Device, int One, int Other)> Of(Plan plan) =>
        from statement in plan.Statements
        where statement.ApartFrom is not null
        from pair in Of(plan, statement, plan.Statements[statement.ApartFrom.GetValueOrDefault()])
        select pair;

    /// <summary>Links of both sets in turn are paired at each device that has some of both.</summary>
    private static IEnumerable<(int Device, int One, int Other)> Of(Plan plan, LinkStatement own, LinkStatement other)
    {
        var (ownLinks, otherLinks) = (LinksOf(plan, own), LinksOf(plan, other));
        var byDevice = own == other ? OfOne(plan, ownLinks) : OfTwo(plan, ownLinks, otherLinks);
        // Where one set has more, the rest keep apart from the last of the other.
        foreach (var (device, (ours, theirs)) in byDevice)
            for (var i = 0; i < Math.Max(ours.Count, theirs.Count) && theirs.Count > 0; i++)
                yield return (device, ours[Math.Min(i, ours.Count - 1)], theirs[Math.Min(i, theirs.Count - 1)]);
    }

    /// <summary>Where a set names itself, the devices of its first end are meant.</summary>
    private static SortedDictionary<int, (List<int> Own, List<int> Other)> OfOne(Plan plan, List<int> links)
    {
        var byDevice = new SortedDictionary<int, (List<int> Own, List<int> Other)>();
        foreach (var group in links.GroupBy(plan.Links.FromDevice))
            byDevice[group.Key] = ([.. group.Where((_, i) => i % 2 == 0)], [.. group.Where((_, i) => i % 2 == 1)]);
        return byDevice;
    }

    /// <summary>Otherwise those that both sets have.</summary>
    private static SortedDictionary<int, (List<int> Own, List<int> Other)> OfTwo(Plan plan, List<int> ownLinks, List<int> otherLinks)
    {
        var byDevice = new SortedDictionary<int, (List<int> Own, List<int> Other)>();
        var ends = otherLinks
            .SelectMany(l => new[] { plan.Links.FromDevice(l), plan.Links.ToDevice(l) }, (link, device) => (link, device))
            .ToLookup(e => e.device, e => e.link);
        foreach (var link in ownLinks)
        {
            foreach (var device in new[] { plan.Links.FromDevice(link), plan.Links.ToDevice(link) })
            {
                if (!ends.Contains(device)) continue;
                if (!byDevice.TryGetValue(device, out var lists)) byDevice[device] = lists = ([], [.. ends[device]]);
                lists.Own.Add(link);
            }
        }
        return byDevice;
    }

    private static List<int> LinksOf(Plan plan, LinkStatement statement) =>
        [.. Enumerable.Range(0, plan.Links.Count).Where(l => plan.Links.Statement(l) == statement.Index)];
}
