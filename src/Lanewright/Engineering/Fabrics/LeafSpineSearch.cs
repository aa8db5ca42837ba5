using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Searches leaves under spines. Upper tiers are tried in the order of their lower bounds; under each, every leaf.</summary>
internal sealed class LeafSpineSearch
{
    private readonly SearchContext context;
    private readonly FabricShape shape;
    private readonly int planes;
    private readonly Incumbent incumbent;

    private LeafSpineSearch(SearchContext context, FabricShape shape, int planes, Incumbent incumbent)
    {
        this.context = context;
        this.shape = shape;
        this.planes = planes;
        this.incumbent = incumbent;
    }

    /// <summary>The best of a shape.</summary>
    /// <param name="context">What the searches share.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="planes">Fabrics side by side.</param>
    /// <param name="incumbent">What the shape has come to so far.</param>
    public static ShapeResult Run(SearchContext context, FabricShape shape, int planes, Incumbent incumbent)
    {
        if (context.Demand.Hosts.FirstOrDefault(h => h.Demand.Ports % planes != 0) is { } odd)
            return ShapeResult.None(odd.Demand.NotSpread($"{planes} planes"));
        return new LeafSpineSearch(context, shape, planes, incumbent).Run();
    }

    /// <summary>A hair by which a quotient may miss what it is exactly equal to.</summary>
    private const double Rounding = 1e-9;

    private IEnumerable<int> Kinds => Enumerable.Range(0, context.Demand.Hosts.Length);

    private ShapeResult Run()
    {
        context.NoteTooMuch(incumbent);
        if (Kinds.Any(k => context.ConfigsOf(k).All(c => double.IsInfinity(c.Least))))
            return incumbent.Result("no switch that is allowed has ports for the hosts and uplinks enough for the ratio");
        var most = Kinds.Min(k => context.ConfigsOf(k).Max(c => c.UplinksBeside(1)));
        var uppers =
            from build in context.Builds
            let capacity = context.Space.MostBits(build, context.Wanted)
            let leaves = Kinds.Sum(k => context.LeavesUnder(k, build))
            where !double.IsInfinity(leaves)
            from count in Enumerable.Range(1, most)
            where capacity * (count - context.Wanted.Survive) >= LeastBelow * (1 - Rounding)
                && context.KeepsRoom(SharedRoom.Of(build, (long)planes * count), -1, default, incumbent)
            select (Build: build, Count: count, Least: UpperFloor(build, count) + leaves);
        var found = uppers.OrderBy(u => u.Least).ToList();
        if (found.Count > 0)
        {
            incumbent.Deepen(found[0].Least, () =>
            {
                foreach (var (build, count, least) in found)
                    if (incumbent.CouldWin(least)) Try(build, count);
            });
        }
        return incumbent.Result(
            $"no two tiers reach {Numerals.Whole(context.Demand.Finals.Sum())} hosts with the ratio and the switches allowed");
    }

    private double UpperFloor(SwitchBuild build, int count) =>
        context.Floor.Switches(build, (long)planes * count, (long)planes * count * context.Wanted.Years);

    private void Try(SwitchBuild build, int count)
    {
        var upper = UpperFloor(build, count);
        var rows = new List<LeafRow>[context.Demand.Hosts.Length];
        for (var kind = 0; kind < rows.Length; kind++)
        {
            var others = Kinds.Where(k => k != kind).Sum(k => context.LeavesUnder(k, build));
            rows[kind] = new LeafRows(context, kind, planes, build, count, incumbent).Below(incumbent.Limit - upper - others);
            if (rows[kind].Count == 0) return;
        }
        if (rows.Length > 1)
        {
            new MixedLeaves(context, shape, planes, build, count, incumbent).Try(rows, upper);
            return;
        }
        foreach (var row in rows[0].OrderBy(r => r.Least))
        {
            if (!incumbent.CouldWin(upper + row.Least)) return;
            // Uplinks are priced by the racks of their leaves, and links to hosts in their places, before a design is placed as a whole.
            var exact = upper + row.Least + context.UplinkSurplus(0, row, row.Parallel * count);
            if (incumbent.CouldWin(exact)) exact += context.InPlace(0, row, shape, incumbent).Least - row.Least;
            if (incumbent.CouldWin(exact)) incumbent.Offer(DesignOf(build, count, [row]), exact);
        }
    }

    private FabricDesign DesignOf(SwitchBuild build, int count, LeafRow[] rows) => new()
    {
        Shape = shape,
        Planes = planes,
        Leaves = [.. rows.Select(r => r.Choice)],
        Upper = new UpperChoice(build, count, [.. rows.Select(r => r.UpperPorts)]),
    };

    /// <summary>Bandwidth from below, divided by the ratio, in bits each second: what all spines of a plane together have to
    /// carry.</summary>
    private double LeastBelow => Kinds.Sum(k =>
        (double)context.Demand.Finals[k] * context.Demand.Hosts[k].Demand.Ports / planes
        * context.Demand.Hosts[k].Demand.Rate.BitsPerSecond)
        / context.Wanted.OversubscriptionOf(0).Value;
}
