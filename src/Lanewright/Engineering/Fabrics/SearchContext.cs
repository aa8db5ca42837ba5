using Lanewright.Model.Wanted;
using Lanewright.Quantities;

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
    private readonly Dictionary<(int Kind, int HostsPerLeaf), int> farthest = [];
    private readonly Dictionary<(SwitchBuild, PortUse, PortUse), LeafConfig> middles = [];
    private readonly Dictionary<BitRate, List<(SwitchBuild Build, PortUse Use, int Most)>> cores = [];
    private readonly Dictionary<(int Kind, SwitchBuild, PortUse, int HostsPerLeaf), double> leafLevels = [];

    public WantedFabric Wanted => Demand.Wanted;

    /// <summary>Every way to use a switch of fixed form as a leaf of a kind of host.</summary>
    public List<LeafConfig> ConfigsOf(int kind)
    {
        if (configs.TryGetValue(kind, out var found)) return found;
        var rate = Demand.Hosts[kind].Demand.Rate;
        List<LeafConfig> all =
        [
            .. from build in Space.Boxes
               from host in Space.Uses(build, rate, Wanted)
               let ends = new LinkEnds(Demand.Hosts[kind].Port, host)
               where !double.IsNaN(Floor.Edge(ends, 1, 0))
               from up in Space.FabricUses(build, Wanted)
               select new LeafConfig(build, host, up, Space.Most(build, host)),
        ];
        foreach (var config in all) config.Least = LeastOf(kind, config);
        return configs[kind] = all;
    }

    private double LeastOf(int kind, LeafConfig config)
    {
        var ratio = Wanted.OversubscriptionOf(0);
        for (var hosts = Math.Min(config.MostHosts, Demand.Finals[kind]); hosts > 0; hosts--)
        {
            var needed = UplinkRule.Parallel(hosts, Demand.Hosts[kind].Demand.Rate, 1, 0, config.UpPorts.Mode.Rate, ratio);
            if (needed <= config.UplinksBeside(hosts)) return LeafFloor(kind, config, hosts);
        }
        return double.PositiveInfinity;
    }

    /// <summary>A switch between two tiers, with the uplinks left beside so many ports below.</summary>
    public LeafConfig MiddleConfig(SwitchBuild build, PortUse down, PortUse up)
    {
        if (middles.TryGetValue((build, down, up), out var found)) return found;
        return middles[(build, down, up)] = new LeafConfig(build, down, up, Space.Most(build, down));
    }

    /// <summary>Every way to use a switch as a core at a rate, cheapest first; of those with cages alike none that is dearer with no more
    /// ports.</summary>
    public List<(SwitchBuild Build, PortUse Use, int Most)> CoresAt(BitRate rate)
    {
        if (cores.TryGetValue(rate, out var found)) return found;
        var all =
            from build in Space.All
            from use in Space.FabricUses(build, Wanted)
            where use.Mode.Rate == rate
            let cost = Floor.Switches(build, 1, Wanted.Years)
            orderby cost, build.Name
            select (Build: build, Use: use, Most: Space.Most(build, use));
        var kept = new List<(SwitchBuild Build, PortUse Use, int Most)>();
        foreach (var core in all)
            if (!kept.Any(k => ReferenceEquals(k.Use.Cage, core.Use.Cage) && k.Use.Mode == core.Use.Mode && k.Most >= core.Most)) kept.Add(core);
        return cores[rate] = kept;
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

    /// <summary>Place in the grid of lengths of the longest way that some uplink of leaves so full has to go at the least.</summary>
    public int FarthestPlace(int kind, int hostsPerLeaf)
    {
        if (farthest.TryGetValue((kind, hostsPerLeaf), out var found)) return found;
        var blocks = (Demand.Finals[kind] + hostsPerLeaf - 1) / hostsPerLeaf;
        var racks = new[] { 0, blocks / 2, blocks - 1 }.Select(b => Demand.RackOfBlock(kind, b, hostsPerLeaf)).Distinct();
        return farthest[(kind, hostsPerLeaf)] = racks.Max(r => Floor.NearestAbove(Demand.Hall.HostRacks[r]));
    }

    /// <summary>Leaves of a kind and their links to hosts, at the least: without places.</summary>
    public double LeafFloor(int kind, LeafConfig config, int hostsPerLeaf)
    {
        ref var floor = ref config.Floors[hostsPerLeaf];
        if (!double.IsNaN(floor)) return floor;
        var host = Demand.Hosts[kind];
        var blocks = (Demand.Finals[kind] + hostsPerLeaf - 1) / hostsPerLeaf;
        long ports = host.Demand.Ports;
        return floor = Floor.Switches(config.Build, blocks * ports, BlockYears(kind, hostsPerLeaf) * ports)
            + Floor.Edge(new LinkEnds(host.Port, config.HostPorts), Demand.Finals[kind] * ports, HostYears(kind) * ports);
    }

    /// <summary>By how much leaves with their links to hosts cost more in their places than the lower bound says; infinite when they do not
    /// fit there.</summary>
    public double LeafSurplus(int kind, LeafRow row, FabricShape shape) =>
        Math.Max(0, LeafLevel(kind, row, shape) - LeafFloor(kind, row.Config, row.HostsPerLeaf));

    private double LeafLevel(int kind, LeafRow row, FabricShape shape)
    {
        var key = (kind, row.Config.Build, row.Config.HostPorts, row.HostsPerLeaf);
        if (leafLevels.TryGetValue(key, out var found)) return found;
        var leaves = Demand.Hosts.Select(_ => row.Choice);
        var design = new FabricDesign { Shape = shape, Leaves = [.. leaves], OnlyKind = kind };
        var cost = Pricer.Price(design, out _) is { } priced ? (double)priced.Total.Hundredths - 1 : double.PositiveInfinity;
        return leafLevels[key] = cost;
    }
}
