using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What the searches through all shapes share.</summary>
/// <param name="Demand">What is wanted.</param>
/// <param name="Space">The switches there are.</param>
/// <param name="Floor">Lower bounds.</param>
/// <param name="Pricer">Exact prices.</param>
/// <param name="PeerLinks">Links between the two of a collapsed pair.</param>
internal sealed record SearchContext(FabricDemand Demand, SwitchSpace Space, CostFloor Floor, DesignPricer Pricer, int PeerLinks)
{
    private readonly Dictionary<int, List<LeafConfig>> configs = [];
    private readonly Dictionary<(int Kind, SwitchBuild, PortUse, int HostsPerLeaf), double> leafLevels = [];

    public WantedFabric Wanted => Demand.Wanted;

    /// <summary>Every way to use a switch of fixed form as a leaf of a kind of host.</summary>
    public List<LeafConfig> ConfigsOf(int kind)
    {
        if (configs.TryGetValue(kind, out var found)) return found;
        var rate = Demand.Hosts[kind].Demand.Rate;
        return configs[kind] =
        [
            .. from build in Space.Boxes
               from host in SwitchSpace.Uses(build, rate, Wanted)
               let ends = new LinkEnds(Demand.Hosts[kind].Port, host)
               where !double.IsNaN(Floor.Edge(ends, 1, 0))
               from up in SwitchSpace.FabricUses(build, Wanted)
               select new LeafConfig(build, host, up, Space.Most(build, host)),
        ];
    }

    /// <summary>Blocks of leaves added up over the years they run.</summary>
    public long BlockYears(int kind, int hostsPerLeaf)
    {
        var sum = 0L;
        for (var year = 0; year < Wanted.Years; year++) sum += (Demand.CountsIn(year)[kind] + hostsPerLeaf - 1) / hostsPerLeaf;
        return sum;
    }

    /// <summary>Hosts of a kind added up over the years.</summary>
    public long HostYears(int kind)
    {
        var sum = 0L;
        for (var year = 0; year < Wanted.Years; year++) sum += Demand.CountsIn(year)[kind];
        return sum;
    }

    /// <summary>Leaves of a kind and their links to hosts, at the least: without places.</summary>
    public double LeafFloor(int kind, LeafConfig config, int hostsPerLeaf)
    {
        var host = Demand.Hosts[kind];
        var blocks = (Demand.Finals[kind] + hostsPerLeaf - 1) / hostsPerLeaf;
        long ports = host.Demand.Ports;
        return Floor.Switches(config.Build, blocks * ports, BlockYears(kind, hostsPerLeaf) * ports)
            + Floor.Edge(new LinkEnds(host.Port, config.HostPorts), Demand.Finals[kind] * ports, HostYears(kind) * ports);
    }

    /// <summary>The same exactly: placed. Infinite when it does not fit.</summary>
    public double LeafLevel(int kind, LeafRow row, FabricShape shape)
    {
        var key = (kind, row.Config.Build, row.Config.HostPorts, row.HostsPerLeaf);
        if (leafLevels.TryGetValue(key, out var found)) return found;
        var leaves = Demand.Hosts.Select(_ => row.Choice);
        var design = new FabricDesign { Shape = shape, Leaves = [.. leaves], OnlyKind = kind };
        var cost = Pricer.Price(design, out _) is { } priced ? (double)priced.Total.Hundredths - 1 : double.PositiveInfinity;
        return leafLevels[key] = cost;
    }
}
