using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>A switch whose links to the tier above are not spread equally over it.</summary>
/// <param name="Device">The switch.</param>
/// <param name="Upper">Switches above it that it or its kin are linked to.</param>
/// <param name="Fewest">Links to the one it has fewest to; 0 where it misses one that its kin reach.</param>
/// <param name="FewestTo">That one.</param>
/// <param name="Most">Links to the one it has most to.</param>
/// <param name="MostTo">That one.</param>
public sealed record UnevenUplinks(int Device, int Upper, int Fewest, int FewestTo, int Most, int MostTo)
{
    /// <summary>All such switches of a network, in order of the devices.</summary>
    public static ImmutableArray<UnevenUplinks> Of(PlanNetwork network)
    {
        var uneven = ImmutableArray.CreateBuilder<UnevenUplinks>();
        foreach (var group in network.Plan.Devices.Groups)
        {
            if (group.Count == 0 || !network.IsSwitch(group.First)) continue;
            var uppers = Enumerable.Range(group.First, group.Count).Select(d => LinksByUpper(network, d)).ToList();
            var kin = KinOf(uppers);
            for (var i = 0; i < uppers.Count; i++)
            {
                if (uppers[i].Count == 0) continue;
                var all = kin[i];
                var fewest = all.MinBy(u => (uppers[i].GetValueOrDefault(u), u));
                var most = all.MaxBy(u => (uppers[i].GetValueOrDefault(u), -u));
                var (few, many) = (uppers[i].GetValueOrDefault(fewest), uppers[i].GetValueOrDefault(most));
                if (few != many) uneven.Add(new UnevenUplinks(group.First + i, all.Count, few, fewest, many, most));
            }
        }
        return uneven.ToImmutable();
    }

    private static SortedDictionary<int, int> LinksByUpper(PlanNetwork network, int device)
    {
        var links = new SortedDictionary<int, int>();
        foreach (var link in network.UpLinks(device))
        {
            var upper = network.FarDevice(link, device);
            links[upper] = links.GetValueOrDefault(upper) + 1;
        }
        return links;
    }

    /// <summary>For each switch of a group the upper switches that it and those it shares one with are linked to: a pod has its
    /// own.</summary>
    private static List<SortedSet<int>> KinOf(List<SortedDictionary<int, int>> uppers)
    {
        var setOf = new Dictionary<int, SortedSet<int>>();
        foreach (var own in uppers)
        {
            var together = new SortedSet<int>(own.Keys);
            foreach (var set in own.Keys.Select(u => setOf.GetValueOrDefault(u)).OfType<SortedSet<int>>().Distinct().ToList())
                together.UnionWith(set);
            foreach (var upper in together) setOf[upper] = together;
        }
        return [.. uppers.Select(own => own.Count == 0 ? [] : setOf[own.Keys.First()])];
    }
}
