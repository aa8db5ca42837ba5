using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Searches pods of leaves and aggregation switches under cores. Aggregation switch i of every pod is linked to the same
/// cores.</summary>
internal sealed class ThreeTierSearch
{
    private readonly SearchContext context;
    private readonly FabricShape shape;
    private readonly int planes;
    private readonly Incumbent incumbent;
    private readonly PodFloors floors;
    private readonly PodCounts counts;
    private readonly PodOffers offers;
    private readonly PodKinds kinds;

    private ThreeTierSearch(SearchContext context, FabricShape shape, int planes, Incumbent incumbent)
    {
        this.context = context;
        this.shape = shape;
        this.planes = planes;
        this.incumbent = incumbent;
        floors = new PodFloors(context, planes);
        counts = new PodCounts(context.Wanted.Survive);
        offers = new PodOffers(shape, planes, floors, incumbent);
        kinds = new PodKinds(context, planes, floors, offers, incumbent);
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
        context.NoteTooMuch(incumbent);
        if (Kinds.Any(k => context.ConfigsOf(k).All(c => double.IsInfinity(c.Least))))
            return incumbent.Result("no switch that is allowed has ports for the hosts and uplinks enough for the ratio");
        var found = context.Builds
            .Select(b => (Build: b, Leaves: Kinds.Sum(k => context.LeavesUnder(k, b))))
            .Where(m => !double.IsInfinity(m.Leaves))
            .Select(m => (m.Build, m.Leaves, Ups: floors.UpsOf(m.Build)))
            .Where(m => m.Ups.Count > 0)
            .OrderBy(m => m.Leaves + m.Ups[0].Floor)
            .ToList();
        if (found.Count > 0)
        {
            incumbent.Deepen(found[0].Leaves + found[0].Ups[0].Floor, () =>
            {
                foreach (var (build, leaves, ups) in found)
                    if (incumbent.CouldWin(leaves + ups[0].Floor)) TryMiddle(build, leaves, ups);
                offers.Price();
            });
        }
        return incumbent.Result(
            $"no three tiers reach {Numerals.Whole(context.Demand.Finals.Sum())} hosts with the ratios and the switches allowed");
    }

    private void TryMiddle(SwitchBuild build, double leaves, List<(PortUse Up, double Floor)> ups)
    {
        var most = Kinds.Min(k => context.ConfigsOf(k).Max(c => c.UplinksBeside(1)));
        for (var count = 1 + context.Wanted.Survive; count <= most; count++)
        {
            // One pod, and a core for each of its switches, at the least.
            var fewest = SharedRoom.Of(build, (long)planes * count) + new SharedRoom((long)planes * count, 0);
            if (!context.KeepsRoom(fewest, -1, default, incumbent)) return;
            var floor = Math.Max(ups[0].Floor, floors.Switches(build, (long)planes * count));
            if (!incumbent.CouldWin(leaves + floor)) return;
            var leafRows = Kinds.Select(k => PlacedRows(build, count, k, incumbent.Limit - floor - OthersUnder(build, k))).ToArray();
            if (leafRows.Any(r => r.Count == 0)) continue;
            foreach (var (up, least) in ups)
                if (incumbent.CouldWin(leaves + least))
                {
                    var rows = leafRows.Select((r, kind) => Rows(kind, r, build, up, count)).ToArray();
                    if (context.CoresOver(up).Count == 0 || rows.Any(r => r.Count == 0)) continue;
                    if (rows.Length == 1) TryRows(build, up, count, rows[0]);
                    else kinds.Try(build, up, count, rows);
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
        var perPort = context.CoresOver(up).Select(c => (floors.Standing(c.Build, 1) / c.Most) + floors.Trunks(c, 1))
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
            if (counts.PodsOf(row, 1) is not (var fewest and > 0)) continue;
            var ports = middle.Step.Steps((long)row.Blocks * row.PortsPerBlock, 1) * count * planes;
            var above = perPort * ports;
            var bound = row.Least + floors.Middles(build, kind, row, fewest, count) + above;
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
                if (counts.PodsOf(row, parallel) is not (var fewest and > 0)) continue;
                // Smaller pods need more aggregation switches and may need fewer cores.
                foreach (var pods in PodCounts.PodsFrom(row, fewest))
                {
                    if ((long)pods * parallel > most) break;
                    var least = row.Least + floors.Middles(build, 0, row, pods, count);
                    if (!incumbent.CouldWin(least + row.Above)) break;
                    offers.Add(build, up, count, [(row, pods)], least, parallel, counts.Cores(row, pods, parallel), cores);
                }
            }
            if (!fits) return;
        }
    }
}
