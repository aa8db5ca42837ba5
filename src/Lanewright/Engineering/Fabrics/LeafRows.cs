namespace Lanewright.Engineering.Fabrics;

/// <summary>Lists the leaves of a kind of host under so many upper switches of a model. Where hosts are of one kind, leaves are filled to
/// any number of them; of several kinds, most evenly or by whole racks, as each fill of one goes with each of the others. What ratio is
/// asked for leaves none out: it would be missing where a looser one is asked, and the answer would cost more for less.</summary>
internal sealed class LeafRows(SearchContext context, int kind, int planes, SwitchBuild upper, int uppers, Incumbent incumbent)
{
    private readonly HostBuild host = context.Demand.Hosts[kind];
    private readonly SharedRoom upperRoom = SharedRoom.Of(upper, (long)planes * uppers);
    private readonly int final = context.Demand.Finals[kind];
    private readonly bool isOneOfSeveral = context.Demand.Hosts.Length > 1;

    /// <summary>All leaves that cost less.</summary>
    /// <param name="limit">Hundredths they have to stay below.</param>
    /// <param name="mayExceedUpper">Whether the upper switches may have too few ports for all, because there are several sets of
    /// them.</param>
    public List<LeafRow> Below(double limit, bool mayExceedUpper = false)
    {
        var rows = new List<LeafRow>();
        foreach (var config in context.ConfigsOf(kind))
        {
            if (config.Least >= limit || config.UplinksBeside(1) < uppers) continue;
            var fullest = Fullest(config);
            if (fullest == 0 || context.LeafFloor(kind, config, fullest) >= limit) continue;
            foreach (var use in context.Space.Uses(upper, config.UpPorts.Mode.Rate, context.Wanted))
                if (new LinkEnds(config.UpPorts, use).IsPlanned)
                    Add(rows, config, use, fullest, limit, mayExceedUpper ? int.MaxValue : context.Space.Most(upper, use));
        }
        return rows;
    }

    /// <summary>The most hosts for which a leaf has uplinks enough. Fewer hosts need no more uplinks and leave no fewer.</summary>
    private int Fullest(LeafConfig config)
    {
        if (config.Fullest.TryGetValue(uppers, out var known)) return known;
        var (low, high) = (0, Math.Min(config.MostHosts, final));
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            var parallel = Parallel(config, middle);
            if (parallel > 0 && (long)parallel * uppers <= config.UplinksBeside(middle)) low = middle;
            else high = middle - 1;
        }
        config.Fullest[uppers] = low;
        return low;
    }

    private int Parallel(LeafConfig config, int hosts) =>
        uppers <= context.Wanted.Survive ? 0 : (int)config.Step.Steps(hosts, uppers - context.Wanted.Survive);

    private void Add(List<LeafRow> rows, LeafConfig config, PortUse use, int fullest, double limit, int most)
    {
        var inPlane = host.Demand.Ports / planes;
        // Whatever the fill, the uplinks of all leaves together carry no less.
        if ((long)((double)final / fullest * inPlane * Parallel(config, 1)) > most) return;
        var binds = context.Draw.Binds(config.Build);
        var place = context.PlaceAbove(config);
        var reach = context.Floor.Between(new LinkEnds(config.UpPorts, use));
        for (var hosts = fullest; hosts > 0; hosts--)
        {
            var leaves = context.LeafFloor(kind, config, hosts);
            // Leaves that are less full are more, and take more room.
            var room = context.RoomOf(kind, config, hosts);
            if (leaves >= limit || !context.KeepsRoom(upperRoom, kind, room, incumbent)) return;
            var blocks = (final + hosts - 1) / hosts;
            if (isOneOfSeveral && !IsEvenOrByRacks(hosts, blocks)) continue;
            var parallel = Parallel(config, hosts);
            var upperLinks = (long)blocks * inPlane * parallel;
            if (upperLinks > most) continue;
            var links = upperLinks * planes * uppers;
            var linkYears = context.BlockYears(kind, hosts) * inPlane * parallel * planes * uppers;
            if (reach.From(context.FarthestPlace(kind, config, hosts)).IsEmpty) continue;
            var least = leaves + reach.From(place).Cost(links, linkYears);
            if (double.IsNaN(least)) return;
            room += new SharedRoom(0, links * reach.From(place).LeastWatts);
            if (least >= limit || !context.KeepsRoom(upperRoom, kind, room, incumbent)) continue;
            var row = new LeafRow(config, use, hosts, parallel, blocks, (int)upperLinks, least)
            {
                Units = room.Units,
                Watts = room.Watts,
                Uplinks = parallel * uppers,
            };
            if (binds && context.Draw.OfLeaf(kind, row.Choice, use, uppers) is var (watts, tooHot))
                incumbent.NoteDraw(least, watts, tooHot);
            else
                rows.Add(row);
        }
    }

    private bool IsEvenOrByRacks(int hosts, int blocks)
    {
        var perRack = host.Demand.PerRack;
        return hosts == 1 || (final + hosts - 2) / (hosts - 1) > blocks || hosts % perRack == 0 || perRack % hosts == 0;
    }
}
