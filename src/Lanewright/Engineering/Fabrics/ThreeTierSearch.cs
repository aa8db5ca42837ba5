using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Searches pods of leaves and aggregation switches under cores. Aggregation switch i of every pod is linked to the same
/// cores.</summary>
internal sealed class ThreeTierSearch
{
    /// <summary>So many designs wait to be priced in the order of their bounds; pricing some lowers the limit for all others.</summary>
    private const int MostPending = 64;

    private readonly SearchContext context;
    private readonly FabricShape shape;
    private readonly int planes;
    private readonly Incumbent incumbent;
    private readonly double trunkBits;
    private readonly List<(FabricDesign Design, double Bound)> pending = [];

    private ThreeTierSearch(SearchContext context, FabricShape shape, int planes, Incumbent incumbent)
    {
        this.context = context;
        this.shape = shape;
        this.planes = planes;
        this.incumbent = incumbent;
        // Bits each second that leaves of one plane send up at the least.
        trunkBits = Kinds.Sum(k => (double)context.Demand.Finals[k] * context.Demand.Hosts[k].Demand.Ports / planes
            * context.Demand.Hosts[k].Demand.Rate.BitsPerSecond) / context.Wanted.OversubscriptionOf(0).Value;
    }

    private IEnumerable<int> Kinds => Enumerable.Range(0, context.Demand.Hosts.Length);

    /// <summary>The best of a shape.</summary>
    /// <param name="context">What the searches share.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="planes">Fabrics side by side.</param>
    /// <param name="incumbent">What the shape has come to so far.</param>
    public static ShapeResult Run(SearchContext context, FabricShape shape, int planes, Incumbent incumbent)
    {
        if (context.Demand.Hosts.FirstOrDefault(h => h.Demand.Ports % planes != 0) is { } odd)
            return ShapeResult.None(odd.Demand.NotSpread($"{planes} planes"));
        return new ThreeTierSearch(context, shape, planes, incumbent).Run();
    }

    private ShapeResult Run()
    {
        if (Kinds.Any(k => context.ConfigsOf(k).All(c => double.IsInfinity(c.Least))))
            return ShapeResult.None("no switch that is allowed has ports for the hosts and uplinks enough for the ratio");
        var found = context.Space.All
            .Select(b => (Build: b, Leaves: Kinds.Sum(k => context.LeavesUnder(k, b))))
            .Where(m => !double.IsInfinity(m.Leaves))
            .Select(m => (m.Build, m.Leaves, Ups: UpsOf(m.Build)))
            .Where(m => m.Ups.Count > 0)
            .OrderBy(m => m.Leaves + m.Ups[0].Floor)
            .ToList();
        if (found.Count > 0)
        {
            incumbent.Deepen(found[0].Leaves + found[0].Ups[0].Floor, () =>
            {
                foreach (var (build, leaves, ups) in found)
                    if (incumbent.CouldWin(leaves + ups[0].Floor)) TryMiddle(build, leaves, ups);
                OfferPending();
            });
        }
        return incumbent.Result(
            $"no three tiers reach {Numerals.Whole(context.Demand.Finals.Sum())} hosts with the ratios and the switches allowed");
    }

    /// <summary>Aggregation switches by bandwidth alone: what comes from below and what goes up share their ports.</summary>
    private double MiddleFloor(SwitchBuild build)
    {
        var ratio = context.Wanted.OversubscriptionOf(1).Value;
        var below = context.Space.MostBits(build, context.Wanted) * ratio / (1 + ratio);
        var count = Math.Max(1 + context.Wanted.Survive, (long)Math.Ceiling((trunkBits / below) - Rounding));
        return below > 0 ? Switches(build, count * planes) : double.PositiveInfinity;
    }

    /// <summary>Cores and the links to them by bandwidth alone.</summary>
    private double CoreFloor(PortUse up)
    {
        var bits = trunkBits / context.Wanted.OversubscriptionOf(1).Value / up.Mode.Rate.BitsPerSecond;
        var links = (long)Math.Ceiling(bits - Rounding) * planes;
        var fewest = (long)(1 + context.Wanted.Survive) * (1 + context.Wanted.Survive);
        return context.CoresOver(up)
            .Select(c => Trunks(c, links)
                + Switches(c.Build, Math.Max(fewest, (long)Math.Ceiling((bits / c.Most) - Rounding)) * planes))
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
    }

    /// <summary>Links between aggregation switches and cores.</summary>
    private double Trunks(CoreChoice core, double links) =>
        core.Trunks.Cost(links, context.Demand.IsSteady ? links * context.Wanted.Years : 0);

    /// <summary>Ways up from an aggregation switch, with what all above the leaves costs at least, cheapest first.</summary>
    private List<(PortUse Up, double Floor)> UpsOf(SwitchBuild build) =>
    [
        .. context.Space.FabricUses(build, context.Wanted)
            .Select(u => (Up: u, Floor: MiddleFloor(build) + CoreFloor(u)))
            .Where(u => !double.IsInfinity(u.Floor))
            .OrderBy(u => u.Floor),
    ];

    private void TryMiddle(SwitchBuild build, double leaves, List<(PortUse Up, double Floor)> ups)
    {
        var most = Kinds.Min(k => context.ConfigsOf(k).Max(c => c.UplinksBeside(1)));
        for (var count = 1 + context.Wanted.Survive; count <= most; count++)
        {
            // One pod, and a core for each of its switches, at the least.
            var fewest = SharedRoom.Of(build, (long)planes * count) + new SharedRoom((long)planes * count, 0);
            if (!context.KeepsRoom(fewest, -1, default, incumbent)) return;
            var floor = Math.Max(ups[0].Floor, Switches(build, (long)planes * count));
            if (!incumbent.CouldWin(leaves + floor)) return;
            var leafRows = Kinds.Select(k => PlacedRows(build, count, k, incumbent.Limit - floor - OthersUnder(build, k))).ToArray();
            if (leafRows.Any(r => r.Count == 0)) continue;
            foreach (var (up, least) in ups)
                if (incumbent.CouldWin(leaves + least))
                {
                    var rows = leafRows.Select((r, kind) => Rows(kind, r, build, up, count)).ToArray();
                    if (context.CoresOver(up).Count == 0 || rows.Any(r => r.Count == 0)) continue;
                    if (rows.Length == 1) TryRows(build, up, count, rows[0]);
                    else TryKinds(build, up, count, rows);
                }
        }
    }

    /// <summary>Leaves that cost less than a limit in their places, which is remembered from one upper tier to the next.</summary>
    private List<LeafRow> PlacedRows(SwitchBuild build, int count, int kind, double limit) =>
    [
        .. new LeafRows(context, kind, planes, build, count, incumbent).Below(limit, mayExceedUpper: true)
            // Aggregation switches stand in the racks of upper tiers, so no uplink is shorter than the way to the nearest of those.
            .Select(r => r with { Least = r.Least + context.UplinkSurplus(kind, r, r.Parallel * count) })
            .Where(r => r.Least < limit)
            .Select(r => context.InPlace(kind, r, shape, incumbent))
            .Where(r => r.Least < limit),
    ];

    private double OthersUnder(SwitchBuild build, int kind) => Kinds.Where(k => k != kind).Sum(k => context.LeavesUnder(k, build));

    /// <summary>Leaves as rows of pods, cheapest first; without those that ports alone rule out.</summary>
    private List<PodRow> Rows(int kind, List<LeafRow> leafRows, SwitchBuild build, PortUse up, int count)
    {
        var others = OthersUnder(build, kind);
        // Cores and the links to them cost so much for each port that goes up, at the least.
        var perPort = context.CoresOver(up).Select(c => (Standing(c.Build, 1) / c.Most) + Trunks(c, 1))
            .DefaultIfEmpty(double.PositiveInfinity).Min();
        var rows = new List<PodRow>();
        foreach (var leaf in leafRows)
        {
            var middle = context.MiddleConfig(build, leaf.UpperPorts, up);
            var row = new PodRow(
                leaf.Config, middle, leaf.HostsPerLeaf, leaf.Parallel, leaf.Blocks, leaf.UpperLinks / leaf.Blocks, leaf.Least);
            if (row.FewestPods == int.MaxValue) continue;
            var middles = SharedRoom.Of(build, (long)planes * row.FewestPods * count);
            if (!context.KeepsRoom(middles, kind, new SharedRoom(leaf.Units, leaf.Watts), incumbent)) continue;
            // Pods have to leave ports for uplinks, and one link to each core leaves the most.
            if (PodsOf(row, 1) is not (var fewest and > 0)) continue;
            var ports = middle.Step.Steps((long)row.Blocks * row.PortsPerBlock, 1) * count * planes;
            var above = perPort * ports;
            var bound = row.Least + Middles(build, kind, row, fewest, count) + above;
            if (incumbent.CouldWin(bound + others)) rows.Add(row with { Bound = bound, Above = above });
        }
        rows.Sort((a, b) => a.Bound.CompareTo(b.Bound));
        return rows;
    }

    private void TryRows(SwitchBuild build, PortUse up, int count, List<PodRow> rows)
    {
        var cores = context.CoresOver(up);
        var most = cores.Max(c => c.Most);
        for (var parallel = 1; parallel <= context.Space.Most(build, up); parallel++)
        {
            var fits = false;
            foreach (var row in rows)
            {
                if (!incumbent.CouldWin(row.Bound)) break;
                if ((long)row.FewestPods * parallel > most) continue;
                fits = true;
                if (PodsOf(row, parallel) is not (var fewest and > 0)) continue;
                // Smaller pods need more aggregation switches and may need fewer cores.
                foreach (var pods in PodsFrom(row, fewest))
                {
                    if ((long)pods * parallel > most) break;
                    var least = row.Least + Middles(build, 0, row, pods, count);
                    if (!incumbent.CouldWin(least + row.Above)) break;
                    OfferCores(build, up, count, [(row, pods)], least, parallel, Cores(row, pods, parallel), cores);
                }
            }
            if (!fits) return;
        }
    }

    /// <summary>Several kinds of host share nothing but the cores and how many of them each aggregation switch is linked to. Once that is
    /// said, each kind has a price of its own.</summary>
    private void TryKinds(SwitchBuild build, PortUse up, int count, List<PodRow>[] rows)
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
        .. rows.Select(r => new PodReach(r, CoresBelow(r, 1, parallel), r.Below.UplinksBeside(r.PortsPerBlock) / parallel))
            .Where(r => r.Fewest <= r.Most),
    ];

    /// <summary>The cheapest leaves and pods of each kind below so many cores; false when more cores cannot win either.</summary>
    private bool TryCores(SwitchBuild build, PortUse up, int count, List<PodReach>[] rows, int parallel, int perGroup)
    {
        var cores = context.CoresOver(up);
        var groups = (long)planes * count;
        var standing = cores.Min(c => Standing(c.Build, groups * perGroup));
        var perPod = cores.Min(c => Trunks(c, groups * perGroup * parallel));
        if (!incumbent.CouldWin(rows.Sum(r => r[0].Row.Least + Switches(build, groups) + perPod) + standing)) return false;
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
            OfferCores(build, up, count, [.. all.Select(c => (c.Row, c.Pods))], all.Sum(c => c.Least), parallel, perGroup, cores);
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
            if (PodsUnder(row, parallel, perGroup) is not (var pods and > 0)) continue;
            var least = row.Least + Middles(build, kind, row, pods, count);
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

    /// <summary>The fewest pods whose aggregation switches need no more than so many cores and have uplinks for all of them; 0 when no pod
    /// is so small.</summary>
    private int PodsUnder(PodRow row, int parallel, int perGroup) => Pods(row, blocks =>
        CoresBelow(row, blocks, parallel) <= perGroup && row.Below.UplinksBeside(blocks * row.PortsPerBlock) >= perGroup * parallel);

    /// <summary>The fewest pods: each as large as the ratio and the ports of its aggregation switches allow; 0 when none is.</summary>
    private int PodsOf(PodRow row, int parallel) => Pods(row, blocks =>
        row.Below.UplinksBeside(blocks * row.PortsPerBlock) >= CoresBelow(row, blocks, parallel) * parallel);

    /// <summary>The fewest pods of blocks that are as many as may be in one; 0 when not even one may.</summary>
    private static int Pods(PodRow row, Func<int, bool> mayBe)
    {
        var (low, high) = (0, Math.Min(row.Blocks, row.Below.MostHosts / row.PortsPerBlock));
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (mayBe(middle)) low = middle;
            else high = middle - 1;
        }
        return low == 0 ? 0 : (row.Blocks + low - 1) / low;
    }

    /// <summary>Numbers of pods from the fewest on, each of which makes the largest pod smaller.</summary>
    private static IEnumerable<int> PodsFrom(PodRow row, int fewest)
    {
        var last = 0;
        for (var blocks = row.BlocksPerPod(fewest); blocks >= 1; blocks--)
        {
            var pods = (row.Blocks + blocks - 1) / blocks;
            if (pods != last) yield return pods;
            last = pods;
        }
    }

    private int Cores(PodRow row, int pods, int parallel) => (int)CoresBelow(row, row.BlocksPerPod(pods), parallel);

    /// <summary>Cores that each aggregation switch is linked to for so many blocks below, those that may be out included.</summary>
    private long CoresBelow(PodRow row, int blocks, int parallel) =>
        context.Wanted.Survive + row.Below.Step.Steps((long)blocks * row.PortsPerBlock, parallel);

    private void OfferCores(SwitchBuild build, PortUse up, int count, ImmutableArray<(PodRow Row, int Pods)> rows, double least,
        int parallel, int perGroup, List<CoreChoice> cores)
    {
        var pods = rows.Sum(r => r.Pods);
        foreach (var core in cores)
        {
            if ((long)pods * parallel > core.Most) continue;
            var below = least + Standing(core.Build, (long)planes * count * perGroup);
            if (!incumbent.CouldWin(below)) continue;
            var links = (long)planes * pods * count * perGroup * parallel;
            var bound = below + Trunks(core, links);
            if (!incumbent.CouldWin(bound)) continue;
            var design = new FabricDesign
            {
                Shape = shape,
                Planes = planes,
                Leaves = [.. rows.Select(r => r.Row.Choice(r.Pods))],
                Upper = new UpperChoice(build, count, [.. rows.Select(r => r.Row.Below.HostPorts)], up, parallel),
                Core = new UpperChoice(core.Build, perGroup, [core.Use]),
            };
            pending.Add((design, bound));
        }
        if (pending.Count >= MostPending) OfferPending();
    }

    /// <summary>Prices what was found, cheapest first.</summary>
    private void OfferPending()
    {
        foreach (var (design, bound) in pending.OrderBy(p => p.Bound)) incumbent.Offer(design, bound);
        pending.Clear();
    }

    /// <summary>Aggregation switches of pods, which come as the hosts grow.</summary>
    private double Middles(SwitchBuild build, int kind, PodRow row, int pods, int count)
    {
        var leaf = row.Choice(pods);
        var years = 0L;
        for (var year = 0; year < context.Wanted.Years; year++) years += leaf.PodsFor(context.Demand.CountsIn(year)[kind]);
        return context.Floor.Switches(build, (long)pods * planes * count, years * planes * count);
    }

    /// <summary>Switches that stand from the start.</summary>
    private double Standing(SwitchBuild build, long count) => context.Floor.Switches(build, count, count * context.Wanted.Years);

    /// <summary>Switches of which nothing is known yet but that so many are needed at the end.</summary>
    private double Switches(SwitchBuild build, long count) =>
        context.Floor.Switches(build, count, context.Demand.IsSteady ? count * context.Wanted.Years : 0);

    /// <summary>A hair that a quotient may be above a whole number.</summary>
    private const double Rounding = 1e-9;
}
