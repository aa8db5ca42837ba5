namespace Lanewright.Engineering.Fabrics;

/// <summary>What the tiers above the leaves of pods cost at the least.</summary>
internal sealed class PodFloors
{
    /// <summary>A hair that a quotient may be above a whole number.</summary>
    private const double Rounding = 1e-9;

    private readonly SearchContext context;
    private readonly int planes;
    private readonly double trunkBits;

    /// <summary>Takes what is wanted.</summary>
    /// <param name="context">What the searches share.</param>
    /// <param name="planes">Fabrics side by side.</param>
    public PodFloors(SearchContext context, int planes)
    {
        this.context = context;
        this.planes = planes;
        // Bits each second that leaves of one plane send up at the least.
        trunkBits = Enumerable.Range(0, context.Demand.Hosts.Length)
            .Sum(k => (double)context.Demand.Finals[k] * context.Demand.Hosts[k].Demand.Ports / planes
                * context.Demand.Hosts[k].Demand.Rate.BitsPerSecond) / context.Wanted.OversubscriptionOf(0).Value;
    }

    /// <summary>Ways up from an aggregation switch, with what all above the leaves costs at least, cheapest first.</summary>
    public List<(PortUse Up, double Floor)> UpsOf(SwitchBuild build) =>
    [
        .. context.Space.FabricUses(build, context.Wanted)
            .Select(u => (Up: u, Floor: MiddleFloor(build) + CoreFloor(u)))
            .Where(u => !double.IsInfinity(u.Floor))
            .OrderBy(u => u.Floor),
    ];

    /// <summary>Aggregation switches of pods, which come as the hosts grow.</summary>
    public double Middles(SwitchBuild build, int kind, PodRow row, int pods, int count)
    {
        var leaf = row.Choice(pods);
        var years = 0L;
        for (var year = 0; year < context.Wanted.Years; year++) years += leaf.PodsFor(context.Demand.CountsIn(year)[kind]);
        return context.Floor.Switches(build, (long)pods * planes * count, years * planes * count);
    }

    /// <summary>Switches that stand from the start.</summary>
    public double Standing(SwitchBuild build, long count) => context.Floor.Switches(build, count, count * context.Wanted.Years);

    /// <summary>Switches of which nothing is known yet but that so many are needed at the end.</summary>
    public double Switches(SwitchBuild build, long count) =>
        context.Floor.Switches(build, count, context.Demand.IsSteady ? count * context.Wanted.Years : 0);

    /// <summary>Links between aggregation switches and cores.</summary>
    public double Trunks(CoreChoice core, double links) =>
        core.Trunks.Cost(links, context.Demand.IsSteady ? links * context.Wanted.Years : 0);

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
}
