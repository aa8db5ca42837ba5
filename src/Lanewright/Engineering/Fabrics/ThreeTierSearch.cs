using System.Collections.Immutable;
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
    private readonly double[] leastOf;
    private readonly double leaves;
    private readonly double trunkBits;

    private ThreeTierSearch(SearchContext context, FabricShape shape, int planes)
    {
        this.context = context;
        this.shape = shape;
        this.planes = planes;
        incumbent = new Incumbent(context.Demand, context.Pricer);
        leastOf = [.. Kinds.Select(k => context.ConfigsOf(k).Select(c => c.Least).DefaultIfEmpty(double.PositiveInfinity).Min())];
        leaves = leastOf.Sum();
        // Bits each second that leaves of one plane send up at the least.
        trunkBits = Kinds.Sum(k => (double)context.Demand.Finals[k] * context.Demand.Hosts[k].Demand.Ports / planes
            * context.Demand.Hosts[k].Demand.Rate.BitsPerSecond) / context.Wanted.OversubscriptionOf(0).Value;
    }

    private IEnumerable<int> Kinds => Enumerable.Range(0, context.Demand.Hosts.Length);

    /// <summary>The best of a shape.</summary>
    public static ShapeResult Run(SearchContext context, FabricShape shape, int planes)
    {
        if (context.Demand.Hosts.FirstOrDefault(h => h.Demand.Ports % planes != 0) is { } odd)
            return ShapeResult.None($"the {odd.Demand.Ports} ports of {odd.Demand.Name} do not spread over {planes} planes");
        return new ThreeTierSearch(context, shape, planes).Run();
    }

    private ShapeResult Run()
    {
        if (double.IsInfinity(leaves))
            return ShapeResult.None("no switch that is allowed has ports for the hosts and uplinks enough for the ratio");
        var found = context.Space.All
            .Select(b => (Build: b, Ups: UpsOf(b)))
            .Where(m => m.Ups.Count > 0)
            .OrderBy(m => m.Ups[0].Floor)
            .ToList();
        if (found.Count > 0)
        {
            incumbent.Deepen(leaves + found[0].Ups[0].Floor, () =>
            {
                foreach (var (build, ups) in found)
                    if (incumbent.CouldWin(leaves + ups[0].Floor)) TryMiddle(build, ups);
            });
        }
        return incumbent.Result(
            $"no three tiers reach {Numerals.Whole(context.Demand.Finals.Sum())} hosts with the ratios and the switches allowed");
    }

    /// <summary>Aggregation switches by bandwidth alone: what comes from below and what goes up share their ports.</summary>
    private double MiddleFloor(SwitchBuild build)
    {
        var ratio = context.Wanted.OversubscriptionOf(1).Value;
        var below = Capacity(build) * ratio / (1 + ratio);
        var count = Math.Max(1 + context.Wanted.Survive, (long)Math.Ceiling((trunkBits / below) - Rounding));
        return below > 0 ? Switches(build, count * planes) : double.PositiveInfinity;
    }

    /// <summary>Cores by bandwidth alone.</summary>
    private double CoreFloor(BitRate rate)
    {
        var bits = trunkBits / context.Wanted.OversubscriptionOf(1).Value / rate.BitsPerSecond;
        var fewest = (long)(1 + context.Wanted.Survive) * (1 + context.Wanted.Survive);
        return context.CoresAt(rate)
            .Select(c => Switches(c.Build, Math.Max(fewest, (long)Math.Ceiling((bits / c.Most) - Rounding)) * planes))
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
    }

    /// <summary>Ways up from an aggregation switch, with what all above the leaves costs at least, cheapest first.</summary>
    private List<(PortUse Up, double Floor)> UpsOf(SwitchBuild build) =>
    [
        .. context.Space.FabricUses(build, context.Wanted)
            .Select(u => (Up: u, Floor: MiddleFloor(build) + CoreFloor(u.Mode.Rate)))
            .Where(u => !double.IsInfinity(u.Floor))
            .OrderBy(u => u.Floor),
    ];

    private void TryMiddle(SwitchBuild build, List<(PortUse Up, double Floor)> ups)
    {
        var most = Kinds.Min(k => context.ConfigsOf(k).Max(c => c.UplinksBeside(1)));
        for (var count = 1 + context.Wanted.Survive; count <= most; count++)
        {
            if (!incumbent.CouldWin(leaves + Switches(build, (long)planes * count))) return;
            var floor = Math.Max(ups[0].Floor, Switches(build, (long)planes * count));
            var leafRows = Kinds
                .Select(k => new LeafRows(context, k, planes, build, count).Below(
                    incumbent.Limit - floor - (leaves - leastOf[k]), mayExceedUpper: true))
                .ToArray();
            if (leafRows.Any(r => r.Count == 0)) continue;
            foreach (var (up, least) in ups)
                if (incumbent.CouldWin(leaves + least)) TryRows(build, up, count, [.. leafRows.Select(r => Rows(r, build, up))]);
        }
    }

    /// <summary>Leaves as rows of pods, cheapest first.</summary>
    private List<PodRow> Rows(List<LeafRow> leafRows, SwitchBuild build, PortUse up) =>
    [
        .. leafRows
            .Select(r => new PodRow(r.Config, context.MiddleConfig(build, r.UpperPorts, up), r.HostsPerLeaf, r.Parallel, r.Blocks,
                r.UpperLinks / r.Blocks, r.Least))
            .OrderBy(r => r.Least),
    ];

    private void TryRows(SwitchBuild build, PortUse up, int count, List<PodRow>[] rows)
    {
        var cores = context.CoresAt(up.Mode.Rate).Where(c => new LinkEnds(up, c.Use).IsPlanned).ToList();
        if (cores.Count == 0) return;
        var most = cores.Max(c => c.Most);
        var others = leaves - leastOf[0] + Switches(build, (long)planes * count)
            + cores.Min(c => Switches(c.Build, (long)planes * count * (1 + context.Wanted.Survive)));
        for (var parallel = 1; parallel <= context.Space.Most(build, up); parallel++)
        {
            var fits = false;
            foreach (var row in rows[0])
            {
                if (!incumbent.CouldWin(row.Least + others)) break;
                if (PodsOf(row, up, parallel, 0) is not (var pods and > 0) || (long)pods * parallel > most) continue;
                fits = true;
                var least = row.Least + Switches(build, (long)pods * planes * count);
                if (!incumbent.CouldWin(least)) continue;
                if (rows.Length == 1) OfferCores(build, up, count, [(row, pods)], least, parallel, Cores(row, up, pods, parallel), cores);
                else TryOthers(build, up, count, rows, (row, pods, least), parallel, cores);
            }
            if (!fits) return;
        }
    }

    /// <summary>With several kinds of host, the first decides and each other takes the leaf that is cheapest by itself.</summary>
    private void TryOthers(SwitchBuild build, PortUse up, int count, List<PodRow>[] rows, (PodRow Row, int Pods, double Least) first,
        int parallel, List<(SwitchBuild Build, PortUse Use, int Most)> cores)
    {
        var chosen = new List<(PodRow Row, int Pods, double Least)> { first };
        foreach (var kind in rows.Skip(1))
        {
            var best = kind
                .Select(r => (Row: r, Pods: PodsOf(r, up, parallel, 0)))
                .Where(r => r.Pods > 0)
                .Select(r => (r.Row, r.Pods, Least: r.Row.Least + Switches(build, (long)r.Pods * planes * count)))
                .OrderBy(r => r.Least)
                .FirstOrDefault();
            if (best.Row is null) return;
            chosen.Add(best);
        }
        var least = chosen.Sum(c => c.Least);
        var perGroup = chosen.Max(c => Cores(c.Row, up, c.Pods, parallel));
        OfferCores(build, up, count, [.. chosen.Select(c => (c.Row, c.Pods))], least, parallel, perGroup, cores);
        incumbent.Skip(least);
    }

    /// <summary>The fewest pods: each as large as the ratio and the ports of its aggregation switches allow; 0 when none is.</summary>
    private int PodsOf(PodRow row, PortUse up, int parallel, int fewest)
    {
        var (low, high) = (fewest, Math.Min(row.Blocks, row.Below.MostHosts / row.PortsPerBlock));
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            var uplinks = CoresBelow(row, up, middle, parallel) * parallel;
            if (row.Below.UplinksBeside(middle * row.PortsPerBlock) >= uplinks) low = middle;
            else high = middle - 1;
        }
        return low == 0 ? 0 : (row.Blocks + low - 1) / low;
    }

    private int Cores(PodRow row, PortUse up, int pods, int parallel) => CoresBelow(row, up, row.BlocksPerPod(pods), parallel);

    /// <summary>Cores that each aggregation switch is linked to for so many blocks below, those that may be out included.</summary>
    private int CoresBelow(PodRow row, PortUse up, int blocks, int parallel) => context.Wanted.Survive + UplinkRule.Parallel(
        (long)blocks * row.PortsPerBlock, row.Config.UpPorts.Mode.Rate, parallel, 0, up.Mode.Rate, context.Wanted.OversubscriptionOf(1));

    private void OfferCores(SwitchBuild build, PortUse up, int count, ImmutableArray<(PodRow Row, int Pods)> rows, double least,
        int parallel, int perGroup, List<(SwitchBuild Build, PortUse Use, int Most)> cores)
    {
        var pods = rows.Sum(r => r.Pods);
        foreach (var core in cores)
        {
            if ((long)pods * parallel > core.Most) continue;
            var below = least + Switches(core.Build, (long)planes * count * perGroup);
            if (!incumbent.CouldWin(below)) continue;
            var links = (long)planes * pods * count * perGroup * parallel;
            var bound = below + context.Floor.Trunk(new LinkEnds(up, core.Use), links, context.Demand.IsSteady ? links * context.Wanted.Years : 0);
            if (double.IsNaN(bound) || !incumbent.CouldWin(bound)) continue;
            incumbent.Offer(new FabricDesign
            {
                Shape = shape,
                Planes = planes,
                Leaves = [.. rows.Select(r => r.Row.Choice(r.Pods))],
                Upper = new UpperChoice(build, count, [.. rows.Select(r => r.Row.Below.HostPorts)], up, parallel),
                Core = new UpperChoice(core.Build, perGroup, [core.Use]),
            }, bound);
        }
    }

    private double Capacity(SwitchBuild build) => context.Space.FabricUses(build, context.Wanted)
        .Select(u => (double)context.Space.Most(build, u) * u.Mode.Rate.BitsPerSecond)
        .DefaultIfEmpty(0)
        .Sum();

    /// <summary>Switches that all stand from the start; those of pods come later where hosts grow, which the energy of none bounds.</summary>
    private double Switches(SwitchBuild build, long count) =>
        context.Floor.Switches(build, count, context.Demand.IsSteady ? count * context.Wanted.Years : 0);

    /// <summary>A hair that a quotient may be above a whole number.</summary>
    private const double Rounding = 1e-9;
}
