using Lanewright.Model.Wanted;

namespace Lanewright.Tests.Fabrics.Support;

/// <summary>Counts every fabric of invented switches, one after another, with nothing left out for being hopeless.</summary>
internal static class FabricBruteForce
{
    /// <summary>The least price of two tiers, and null when there is none.</summary>
    /// <param name="kinds">Hosts and ports of each kind.</param>
    /// <param name="switches">The switches.</param>
    /// <param name="ratio">The most oversubscription of a leaf.</param>
    /// <param name="out">Spines that may be out.</param>
    /// <param name="linkPrice">Price of each link, those of hosts included.</param>
    /// <param name="worth">What a switch counts.</param>
    public static long? LeafSpine(IReadOnlyList<(int Hosts, int Ports)> kinds, IReadOnlyList<SyntheticSwitch> switches, Ratio ratio,
        int @out, int linkPrice, Func<SyntheticSwitch, long> worth)
    {
        long? best = null;
        foreach (var spine in switches)
        {
            for (var spines = 1; spines <= switches.Max(s => s.Radix); spines++)
            {
                // For each kind every leaf, by the ports it takes of a spine: one has to be chosen of each.
                var byPorts = new Dictionary<int, long> { [0] = 0 };
                foreach (var (hosts, ports) in kinds)
                {
                    var next = new Dictionary<int, long>();
                    foreach (var (used, cost) in Leaves(hosts, ports, switches, ratio, spines, @out, linkPrice, worth))
                    {
                        foreach (var (before, paid) in byPorts)
                        {
                            var all = before + used;
                            if (all > spine.Radix) continue;
                            if (!next.TryGetValue(all, out var other) || paid + cost < other) next[all] = paid + cost;
                        }
                    }
                    byPorts = next;
                }
                foreach (var paid in byPorts.Values)
                {
                    var total = paid + (spines * worth(spine));
                    if (best is null || total < best) best = total;
                }
            }
        }
        return best;
    }

    /// <summary>The least price of three tiers over every size of even pods, and null when there is none.</summary>
    public static long? ThreeTier(int hosts, IReadOnlyList<SyntheticSwitch> switches, Ratio leafRatio, Ratio podRatio, int linkPrice)
    {
        long? best = null;
        foreach (var leaf in switches)
        {
            foreach (var middle in switches)
            {
                foreach (var core in switches)
                {
                    foreach (var total in Pods(hosts, leaf, middle, core, leafRatio, podRatio, linkPrice))
                        if (best is null || total < best) best = total;
                }
            }
        }
        return best;
    }

    private static IEnumerable<(int Ports, long Cost)> Leaves(int hosts, int ports, IReadOnlyList<SyntheticSwitch> switches, Ratio ratio,
        int spines, int @out, int linkPrice, Func<SyntheticSwitch, long> worth)
    {
        foreach (var leaf in switches)
        {
            for (var down = 1; down < leaf.Radix; down++)
            {
                for (var parallel = 1; down + (spines * parallel) <= leaf.Radix; parallel++)
                {
                    if (down * ratio.Denominator > ratio.Numerator * parallel * (spines - @out)) continue;
                    var leaves = (hosts + down - 1) / down * ports;
                    var links = (long)(hosts * ports) + ((long)leaves * spines * parallel);
                    yield return (leaves * parallel, (leaves * worth(leaf)) + (links * linkPrice));
                }
            }
        }
    }

    private static IEnumerable<long> Pods(int hosts, SyntheticSwitch leaf, SyntheticSwitch middle, SyntheticSwitch core, Ratio leafRatio,
        Ratio podRatio, int linkPrice)
    {
        for (var down = 1; down < leaf.Radix; down++)
        {
            for (var middles = 1; down + middles <= leaf.Radix; middles++)
            {
                var parallel = 1;
                while (down * leafRatio.Denominator > leafRatio.Numerator * parallel * middles) parallel++;
                if (down + (middles * parallel) > leaf.Radix) continue;
                var leaves = (hosts + down - 1) / down;
                for (var up = 1; up < middle.Radix; up++)
                {
                    for (var size = 1; size <= leaves; size++)
                    {
                        var pods = (leaves + size - 1) / size;
                        var perPod = (leaves + pods - 1) / pods;
                        var groups = Groups(perPod, parallel, up, podRatio);
                        if (pods * up > core.Radix || (perPod * parallel) + (up * groups) > middle.Radix) continue;
                        var links = hosts + ((long)leaves * middles * parallel) + ((long)pods * middles * groups * up);
                        yield return (leaves * (long)leaf.Price) + (pods * middles * (long)middle.Price)
                            + (middles * groups * (long)core.Price) + (links * linkPrice);
                    }
                }
            }
        }
    }

    /// <summary>Cores that an aggregation switch has to reach with so many links to each.</summary>
    private static int Groups(int leaves, int parallel, int up, Ratio ratio)
    {
        var cores = 1;
        while (leaves * parallel * ratio.Denominator > ratio.Numerator * up * cores) cores++;
        return cores;
    }
}
