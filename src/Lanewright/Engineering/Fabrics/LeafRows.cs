namespace Lanewright.Engineering.Fabrics;

/// <summary>Lists the leaves of a kind of host under so many upper switches of a model. Of the fills that make the same number of leaves
/// it keeps the most even, the fullest, and those that go evenly into racks.</summary>
internal sealed class LeafRows(SearchContext context, int kind, int planes, SwitchBuild upper, int uppers)
{
    private readonly HostBuild host = context.Demand.Hosts[kind];
    private readonly int final = context.Demand.Finals[kind];

    /// <summary>All leaves that cost less.</summary>
    public List<LeafRow> Below(double limit)
    {
        var rows = new List<LeafRow>();
        foreach (var config in context.ConfigsOf(kind))
        {
            if (config.UplinksBeside(1) < uppers) continue;
            foreach (var use in SwitchSpace.Uses(upper, config.UpPorts.Mode.Rate, context.Wanted))
                if (new LinkEnds(config.UpPorts, use).IsPlanned) Add(rows, config, use, limit);
        }
        return rows;
    }

    private void Add(List<LeafRow> rows, LeafConfig config, PortUse use, double limit)
    {
        var most = context.Space.Most(upper, use);
        var ratio = context.Wanted.OversubscriptionOf(0);
        var inPlane = host.Demand.Ports / planes;
        var isFullest = true;
        for (var hosts = Math.Min(config.MostHosts, final); hosts > 0; hosts--)
        {
            var parallel = UplinkRule.Parallel(
                hosts, host.Demand.Rate, uppers, context.Wanted.Survive, config.UpPorts.Mode.Rate, ratio);
            if (parallel == 0) return;
            if ((long)parallel * uppers > config.UplinksBeside(hosts)) continue;
            var blocks = (final + hosts - 1) / hosts;
            var upperLinks = (long)blocks * inPlane * parallel;
            if (upperLinks > most) continue;
            if (!isFullest && !IsWorthwhile(hosts, blocks)) continue;
            isFullest = false;
            var leaves = context.LeafFloor(kind, config, hosts);
            if (leaves >= limit) return;
            var links = upperLinks * planes * uppers;
            var linkYears = context.BlockYears(kind, hosts) * inPlane * parallel * planes * uppers;
            var least = leaves + context.Floor.Fabric(new LinkEnds(config.UpPorts, use), links, linkYears);
            if (double.IsNaN(least)) return;
            if (least < limit) rows.Add(new LeafRow(config, use, hosts, parallel, blocks, (int)upperLinks, least));
        }
    }

    private bool IsWorthwhile(int hosts, int blocks)
    {
        var perRack = host.Demand.PerRack;
        return hosts == 1 || (final + hosts - 2) / (hosts - 1) > blocks || hosts % perRack == 0 || perRack % hosts == 0;
    }
}
