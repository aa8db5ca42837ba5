using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of fabrics from the radix alone, without a catalogue. Counts beyond any building raise an overflow.</summary>
public static class FabricCounts
{
    /// <summary>The largest folded Clos of switches alike.</summary>
    /// <param name="radix">Ports of each switch, all of one rate, after breakout.</param>
    /// <param name="tiers">Tiers of switches, from 1.</param>
    /// <param name="oversubscription">The ratio of each tier from the hosts up; the last holds above it; empty for one to one.</param>
    public static FoldedClos FoldedClos(int radix, int tiers, ImmutableArray<Ratio> oversubscription = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(radix, 2);
        ArgumentOutOfRangeException.ThrowIfLessThan(tiers, 1);
        var splits = Enumerable.Range(0, tiers - 1).Select(t => Split(radix, RatioOf(oversubscription, t))).ToImmutableArray();
        var children = splits.Select(s => s.Down).Append(radix).ToImmutableArray();
        var parents = splits.Select(s => s.Up).Prepend(1).ToImmutableArray();
        var tree = Tree(children, parents);
        var hostsPerPod = splits.IsEmpty ? radix : splits.Aggregate(1L, (all, s) => checked(all * s.Down));
        return new FoldedClos(
            tree.Nodes[0],
            tree.Nodes[1..],
            tree.Links[1..],
            tiers == 1 ? 1 : radix,
            hostsPerPod,
            splits.Aggregate(1L, (all, s) => checked(all * s.Up)),
            splits.Aggregate(Ratio.One, (all, s) => all * new Ratio(s.Down, s.Up)),
            splits.IsEmpty ? 0 : splits[0].Unused);
    }

    /// <summary>The folded Clos of whole pods that a number of host ports needs; null where the largest takes fewer. Switches of the top
    /// tier take as many links side by side from each pod as they have ports for and as spread equally.</summary>
    /// <param name="hostPorts">Ports of hosts.</param>
    /// <param name="radix">Ports of each switch, all of one rate, after breakout.</param>
    /// <param name="tiers">Tiers of switches, from 1.</param>
    /// <param name="oversubscription">The ratio of each tier from the hosts up; the last holds above it; empty for one to one.</param>
    public static FoldedClos? FoldedClosFor(long hostPorts, int radix, int tiers, ImmutableArray<Ratio> oversubscription = default)
    {
        var most = FoldedClos(radix, tiers, oversubscription);
        if (hostPorts > most.Hosts) return null;
        if (tiers == 1) return most with { Hosts = hostPorts, HostsPerPod = hostPorts };
        var pods = (hostPorts + most.HostsPerPod - 1) / most.HostsPerPod;
        var up = Split(radix, RatioOf(oversubscription, tiers - 2)).Up;
        var parallel = Enumerable.Range(1, (int)Math.Min(up, radix / pods)).Last(p => up % p == 0);
        var inPods = most.Switches[..^1].Select(all => all / most.Pods * pods).ToImmutableArray();
        return most with
        {
            Hosts = hostPorts,
            Switches = [.. inPods, most.Switches[^2] / most.Pods * up / parallel],
            LinksUp = [.. most.LinksUp.Select(all => all / most.Pods * pods)],
            Pods = pods,
        };
    }

    /// <summary>How a leaf's ports are shared between hosts and uplinks of the same rate: the most hosts at a ratio.</summary>
    public static LeafSplit Split(int radix, Ratio ratio) => Split(radix, 1, 1, ratio);

    /// <summary>The same by lanes, where hosts and uplinks use different numbers of lanes.</summary>
    public static LeafSplit Split(int lanes, int lanesDown, int lanesUp, Ratio ratio)
    {
        for (var down = lanes / lanesDown; down > 0; down--)
        {
            var up = UplinksFor(down, lanesDown, lanesUp, ratio);
            var used = (down * lanesDown) + (up * lanesUp);
            if (used <= lanes) return new LeafSplit(down, up, lanes - used);
        }
        return new LeafSplit(0, 0, lanes);
    }

    /// <summary>The largest fabric of two tiers with several links of each leaf to each spine.</summary>
    public static TwoTierCounts TwoTierMost(int leafRadix, int spineRadix, Ratio ratio, int parallel = 1)
    {
        var split = Split(leafRadix, ratio);
        // Uplinks have to spread equally: those that do not are left off, and hosts with them.
        var spines = split.Up / parallel;
        var down = (int)Math.Min(split.Down, spines * parallel * ratio.Numerator / ratio.Denominator);
        return new TwoTierCounts(spineRadix / parallel, spines, down, spines * parallel, parallel);
    }

    /// <summary>The fewest switches of two tiers for a number of host ports; null when no number of leaves and spines reaches it.</summary>
    /// <param name="hostPorts">Ports of hosts.</param>
    /// <param name="leafRadix">Ports of a leaf.</param>
    /// <param name="spineRadix">Ports of a spine.</param>
    /// <param name="ratio">Oversubscription of a leaf.</param>
    public static TwoTierCounts? TwoTierFor(int hostPorts, int leafRadix, int spineRadix, Ratio ratio)
    {
        TwoTierCounts? best = null;
        for (var spines = 1; spines < leafRadix; spines++)
        {
            for (var parallel = 1; spines * parallel < leafRadix; parallel++)
            {
                var up = spines * parallel;
                var down = (int)Math.Min(leafRadix - up, up * ratio.Numerator / ratio.Denominator);
                if (down == 0) continue;
                var leaves = (hostPorts + down - 1) / down;
                if ((long)leaves * parallel > spineRadix) continue;
                var found = new TwoTierCounts(leaves, spines, down, up, parallel);
                if (best is null || Size(found).CompareTo(Size(best)) < 0) best = found;
            }
        }
        return best;

        // The fewest switches, then the fewest links, then the fewest spines.
        static (int, long, int) Size(TwoTierCounts c) => (c.Leaves + c.Spines, c.FabricLinks, c.Spines);
    }

    /// <summary>A generalised fat tree by its branching: nodes and links of each level.</summary>
    /// <param name="children">Children of a node of level 1 upward.</param>
    /// <param name="parents">Parents of a node of level 0 upward.</param>
    public static TreeCounts Tree(ImmutableArray<int> children, ImmutableArray<int> parents)
    {
        if (children.Length != parents.Length) throw new ArgumentException("as many numbers of children as of parents", nameof(parents));
        var nodes = ImmutableArray.CreateBuilder<long>();
        for (var level = 0; level <= children.Length; level++)
        {
            var below = children.Skip(level).Aggregate(1L, (all, n) => checked(all * n));
            nodes.Add(parents.Take(level).Aggregate(below, (all, n) => checked(all * n)));
        }
        var links = parents.Select((p, level) => checked(nodes[level] * p));
        return new TreeCounts(nodes.ToImmutable(), [.. links]);
    }

    /// <summary>Ports that silicon gives when its lanes are shared out.</summary>
    /// <param name="lanes">Lanes of the silicon.</param>
    /// <param name="laneRate">Rate of a lane.</param>
    /// <param name="portRate">Rate of a port; one below the lane's takes a whole lane.</param>
    /// <param name="portLimit">Ports the silicon can have; null when lanes are the only limit.</param>
    public static BreakoutCounts Breakout(int lanes, BitRate laneRate, BitRate portRate, int? portLimit = null)
    {
        var lanesPerPort = (int)Math.Max(1, (portRate.BitsPerSecond + laneRate.BitsPerSecond - 1) / laneRate.BitsPerSecond);
        var ports = Math.Min(lanes / lanesPerPort, portLimit ?? int.MaxValue);
        return new BreakoutCounts(ports, portRate * ports, lanes - (ports * lanesPerPort));
    }

    /// <summary>A chassis as the folded Clos inside it.</summary>
    /// <param name="chipRadix">Ports of each chip.</param>
    /// <param name="frontPorts">Ports at the front of all cards together.</param>
    public static ChassisCounts Chassis(int chipRadix, int frontPorts)
    {
        var front = Split(chipRadix, Ratio.One).Down;
        var line = (frontPorts + front - 1) / front;
        return new ChassisCounts(front, line, ((line * front) + chipRadix - 1) / chipRadix, (long)chipRadix * front);
    }

    /// <summary>Rails: leaf i of a unit takes accelerator i of each server.</summary>
    /// <param name="radix">Ports of each switch.</param>
    /// <param name="rails">Accelerators of each server.</param>
    /// <param name="tiers">1 for switches that never meet, 2 with spines.</param>
    public static RailCounts Rails(int radix, int rails, int tiers = 2)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tiers, 2);
        if (tiers == 1) return new RailCounts(radix, radix * rails, radix * rails, rails, 1, rails, 0);
        var servers = Split(radix, Ratio.One).Down;
        // Each spine takes one link of each leaf.
        var units = radix / rails;
        return new RailCounts(units * servers, units * servers * rails, servers * rails, rails, units, units * rails, radix - servers);
    }

    /// <summary>The same for so many servers, with no more than they need; null when they do not fit.</summary>
    /// <param name="servers">Servers.</param>
    /// <param name="radix">Ports of each switch.</param>
    /// <param name="rails">Accelerators of each server.</param>
    /// <param name="tiers">1 for switches that never meet, 2 with spines.</param>
    public static RailCounts? RailsFor(int servers, int radix, int rails, int tiers = 2)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tiers, 2);
        if (tiers == 1)
            return servers > radix ? null : new RailCounts(servers, servers * rails, radix * rails, rails, 1, rails, 0);
        var perUnit = Split(radix, Ratio.One).Down;
        var units = (servers + perUnit - 1) / perUnit;
        var leaves = checked(units * rails);
        if (leaves > radix) return null;
        var uplinks = radix - perUnit;
        // As many links side by side to each spine as its ports allow all leaves, and spread evenly.
        var parallel = Enumerable.Range(1, radix / leaves).Last(p => uplinks % p == 0);
        return new RailCounts(servers, checked(servers * rails), perUnit * rails, rails, units, leaves, uplinks / parallel);
    }

    /// <summary>Planes of two tiers side by side, one for each port of a host; null when one plane cannot take the hosts.</summary>
    /// <param name="hosts">Hosts.</param>
    /// <param name="hostPorts">Ports of each, and so planes.</param>
    /// <param name="radix">Ports of each switch, after breakout.</param>
    /// <param name="ratio">Oversubscription of a leaf.</param>
    public static PlaneCounts? Planes(int hosts, int hostPorts, int radix, Ratio ratio) =>
        TwoTierFor(hosts, radix, radix, ratio) is { } plane ? new PlaneCounts(hostPorts, plane, (long)hosts * hostPorts) : null;

    private static Ratio RatioOf(ImmutableArray<Ratio> ratios, int tier) =>
        ratios.IsDefaultOrEmpty ? Ratio.One : ratios[Math.Min(tier, ratios.Length - 1)];

    private static int UplinksFor(int down, int lanesDown, int lanesUp, Ratio ratio)
    {
        var below = (long)down * lanesDown * ratio.Denominator;
        var each = ratio.Numerator * lanesUp;
        return (int)((below + each - 1) / each);
    }
}
