using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Chooses leaves and pods for several kinds of host under aggregation switches of one model.</summary>
internal sealed class PodKinds(SearchContext context, int planes, PodFloors floors, PodOffers offers, Incumbent incumbent)
{
    private readonly PodCounts counts = new(context.Wanted.Survive);

    /// <summary>Several kinds of host share nothing but the cores and how many of them each aggregation switch is linked to. Once that is
    /// said, each kind has a price of its own.</summary>
    public void Try(SwitchBuild build, PortUse up, int count, List<PodRow>[] rows)
    {
        var byLeast = rows.Select(r => r.OrderBy(row => row.Least).ToList()).ToArray();
        for (var parallel = 1; parallel <= context.Space.Most(build, up); parallel++)
        {
            var open = byLeast.Select(k => Reaching(k, parallel)).ToArray();
            if (open.Any(k => k.Count == 0)) continue;
            var most = open.Min(k => k.Max(r => r.Most));
            for (var perGroup = open.Max(k => k.Min(r => r.Fewest)); perGroup <= most; perGroup++)
                if (!TryCores(build, up, count, open, parallel, (int)perGroup)) break;
        }
    }

    /// <summary>Leaves that leave ports enough for so many links in parallel to each core they need.</summary>
    private List<PodReach> Reaching(List<PodRow> rows, int parallel) =>
    [
        .. rows.Select(r => new PodReach(r, counts.CoresBelow(r, 1, parallel), r.Below.UplinksBeside(r.PortsPerBlock) / parallel))
            .Where(r => r.Fewest <= r.Most),
    ];

    /// <summary>The cheapest leaves and pods of each kind below so many cores; false when more cores cannot win either.</summary>
    private bool TryCores(SwitchBuild build, PortUse up, int count, List<PodReach>[] rows, int parallel, int perGroup)
    {
        var cores = context.CoresOver(up);
        var groups = (long)planes * count;
        var standing = cores.Min(c => floors.Standing(c.Build, groups * perGroup));
        var perPod = cores.Min(c => floors.Trunks(c, groups * perGroup * parallel));
        if (!incumbent.CouldWin(rows.Sum(r => r[0].Row.Least + floors.Switches(build, groups) + perPod) + standing)) return false;
        // The cheapest of kinds not chosen yet is below any of theirs.
        var limit = incumbent.Limit - standing - rows.Sum(r => r[0].Row.Least);
        var chosen = new List<PodChoice>[rows.Length];
        for (var kind = rows.Length - 1; kind >= 0; kind--)
        {
            limit += rows[kind][0].Row.Least;
            chosen[kind] = Cheapest(build, kind, rows[kind], count, parallel, perGroup, perPod, kind == 0 ? int.MaxValue : 2, limit);
            if (chosen[kind].Count == 0) return true;
            limit -= chosen[kind][0].Total;
        }
        var others = chosen.Skip(1).Select(c => c[0]).ToList();
        var beside = others.Sum(c => c.Total);
        foreach (var first in chosen[0])
        {
            if (!incumbent.CouldWin(first.Total + beside + standing)) break;
            ImmutableArray<PodChoice> all = [first, .. others];
            offers.Add(build, up, count, [.. all.Select(c => (c.Row, c.Pods))], all.Sum(c => c.Least), parallel, perGroup, cores);
        }
        // Dearer leaves of the other kinds are not tried: with those of one kind it costs no less than this.
        var dearer = chosen.Skip(1).Where(c => c.Count > 1).Select(c => c[1].Total - c[0].Total).DefaultIfEmpty(double.PositiveInfinity);
        incumbent.Skip(chosen[0][0].Total + beside + standing + dearer.Min());
        return true;
    }

    /// <summary>The cheapest leaves of a kind in the fewest pods that leave each aggregation switch links to so many cores, cheapest
    /// first.</summary>
    private List<PodChoice> Cheapest(SwitchBuild build, int kind, List<PodReach> rows, int count, int parallel, int perGroup, double perPod,
        int wanted, double limit)
    {
        var found = new List<PodChoice>();
        foreach (var (row, fewest, most) in rows)
        {
            if (row.Least >= limit || (found.Count >= wanted && row.Least >= found[wanted - 1].Total)) break;
            if (perGroup < fewest || perGroup > most) continue;
            incumbent.Look();
            if (counts.PodsUnder(row, parallel, perGroup) is not (var pods and > 0)) continue;
            var least = row.Least + floors.Middles(build, kind, row, pods, count);
            var total = least + (perPod * pods);
            if (total >= limit || (found.Count >= wanted && total >= found[wanted - 1].Total)) continue;
            found.Add(new PodChoice(row, pods, least, total));
            if (found.Count < wanted) continue;
            found.Sort((one, other) => one.Total.CompareTo(other.Total));
            if (found.Count > wanted) found.RemoveAt(wanted);
        }
        found.Sort((one, other) => one.Total.CompareTo(other.Total));
        return found;
    }
}
