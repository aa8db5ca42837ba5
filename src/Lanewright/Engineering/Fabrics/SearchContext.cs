using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What the searches through all shapes share.</summary>
/// <param name="Demand">What is wanted.</param>
/// <param name="Space">The switches there are.</param>
/// <param name="Floor">Lower bounds.</param>
/// <param name="Pricer">Exact prices.</param>
/// <param name="PeerLinks">Links between the two of a collapsed pair.</param>
/// <param name="Effort">How long to look.</param>
/// <param name="Draw">What single switches draw.</param>
internal sealed record SearchContext(
    FabricDemand Demand, SwitchSpace Space, CostFloor Floor, DesignPricer Pricer, int PeerLinks, SizingEffort Effort, SwitchDraw Draw)
{
    private readonly Dictionary<int, List<LeafConfig>> configs = [];
    private readonly Dictionary<(int Kind, int HostsPerLeaf), List<(int Place, long Leaves, long LeafYears)>> places = [];
    private readonly Dictionary<(SwitchBuild, PortUse, PortUse), LeafConfig> middles = [];
    private readonly Dictionary<PortUse, List<CoreChoice>> cores = [];
    private readonly Dictionary<(int Kind, SwitchBuild, PortUse, int HostsPerLeaf), LeafLevel> leafLevels = [];

    private readonly Dictionary<(int Kind, SwitchBuild Upper), double> leavesUnder = [];
    private readonly Dictionary<int, List<(LeafConfig Config, double Least, int Place)>> leastByUplink = [];
    private readonly Dictionary<int, SharedRoom> leastRoom = [];
    private ImmutableArray<SwitchBuild>? builds;

    public WantedFabric Wanted => Demand.Wanted;

    /// <summary>Switches that keep by themselves what one rack may draw and bear.</summary>
    public ImmutableArray<SwitchBuild> Builds => builds ??= [.. Space.All.Where(b => BrokenLimits.OfOne(b, Wanted).Length == 0)];

    /// <summary>Remembers why switches do not do that are too much for a rack; it speaks only where nothing else does.</summary>
    public void NoteTooMuch(Incumbent incumbent)
    {
        foreach (var build in Space.All.OrderBy(b => b.ModelPrice))
            if (BrokenLimits.OfOne(build, Wanted) is { Length: > 0 } reason) incumbent.Note(double.MaxValue, reason);
    }

    /// <summary>Every way to use a switch of fixed form as a leaf of a kind of host.</summary>
    public List<LeafConfig> ConfigsOf(int kind)
    {
        if (configs.TryGetValue(kind, out var found)) return found;
        var rate = Demand.Hosts[kind].Demand.Rate;
        List<LeafConfig> all =
        [
            .. from build in Builds
               where build.Cards.IsEmpty
               from host in Space.Uses(build, rate, Wanted)
               let ends = new LinkEnds(Demand.Hosts[kind].Port, host)
               where !double.IsNaN(Floor.Edge(ends, 1, 0))
               from up in Space.FabricUses(build, Wanted)
               from isApart in Demand.WaysToStand(kind, build)
               select new LeafConfig(build, host, up, Space.Most(build, host))
               {
                   IsApart = isApart,
                   Step = new RatioStep(rate, up.Mode.Rate, Wanted.OversubscriptionOf(0)),
               },
        ];
        foreach (var config in all) config.Least = LeastOf(kind, config);
        return configs[kind] = all;
    }

    private double LeastOf(int kind, LeafConfig config)
    {
        for (var hosts = Math.Min(config.MostHosts, Demand.Finals[kind]); hosts > 0; hosts--)
        {
            if (config.Step.Steps(hosts, 1) > config.UplinksBeside(hosts)) continue;
            config.MostUseful = hosts;
            return LeafFloor(kind, config, hosts);
        }
        return double.PositiveInfinity;
    }

    /// <summary>What leaves of a kind take at the least of what all share.</summary>
    public SharedRoom LeastRoom(int kind)
    {
        if (leastRoom.TryGetValue(kind, out var found)) return found;
        var all = ConfigsOf(kind).Where(c => c.MostUseful > 0).Select(c => RoomOf(kind, c, c.MostUseful)).ToList();
        return leastRoom[kind] = all.Count == 0 ? default : new SharedRoom(all.Min(r => r.Units), all.Min(r => r.Watts));
    }

    /// <summary>What leaves with so many hosts each take of what all share, with the least that modules of their links to hosts
    /// draw.</summary>
    public SharedRoom RoomOf(int kind, LeafConfig config, int hostsPerLeaf)
    {
        var (hosts, ports) = (Demand.Finals[kind], (long)Demand.Hosts[kind].Demand.Ports);
        var leaves = SharedRoom.Of(config.Build, (hosts + hostsPerLeaf - 1) / hostsPerLeaf * ports);
        return double.IsInfinity(Demand.WattsLeft)
            ? leaves
            : leaves + new SharedRoom(0, hosts * ports * Floor.EdgeWatts(new LinkEnds(Demand.Hosts[kind].Port, config.HostPorts)));
    }

    /// <summary>Whether switches and the least that leaves take beside them keep the rack units wished and the heat that the hall carries
    /// away; remembers why not.</summary>
    /// <param name="uppers">What the switches above take.</param>
    /// <param name="kind">The kind of leaf that is counted beside; -1 for none.</param>
    /// <param name="leaves">What its leaves take.</param>
    /// <param name="incumbent">What is told.</param>
    public bool KeepsRoom(SharedRoom uppers, int kind, SharedRoom leaves, Incumbent incumbent)
    {
        if (Wanted.RackUnits is null && double.IsInfinity(Demand.WattsLeft)) return true;
        var all = uppers + leaves;
        for (var other = 0; other < Demand.Hosts.Length; other++)
            if (other != kind) all += LeastRoom(other);
        if (Demand.HasRoom(all)) return true;
        incumbent.NoteRoom(all);
        return false;
    }

    /// <summary>What the leaves of a kind cost at the least under upper switches of a model, links to hosts and upward included; infinite
    /// where none has ports in common with it.</summary>
    public double LeavesUnder(int kind, SwitchBuild upper)
    {
        if (leavesUnder.TryGetValue((kind, upper), out var found)) return found;
        var best = double.PositiveInfinity;
        foreach (var (config, least, place) in LeastByUplink(kind))
        {
            if (least >= best) break;
            long ports = Demand.Hosts[kind].Demand.Ports;
            // However the hosts are dealt out, the uplinks of all leaves together carry no less.
            var links = config.Step.Steps(Demand.Finals[kind], 1) * ports;
            var linkYears = Enumerable.Range(0, Wanted.Years).Sum(y => config.Step.Steps(Demand.CountsIn(y)[kind], 1)) * ports;
            foreach (var use in Space.Uses(upper, config.UpPorts.Mode.Rate, Wanted))
            {
                var ends = new LinkEnds(config.UpPorts, use);
                if (!ends.IsPlanned) continue;
                var cost = least + Floor.Between(ends).From(place).Cost(links, linkYears);
                if (cost < best) best = cost;
            }
        }
        return leavesUnder[(kind, upper)] = best;
    }

    /// <summary>The cheapest leaves of a kind for each way to open ports upward, cheapest first.</summary>
    private List<(LeafConfig Config, double Least, int Place)> LeastByUplink(int kind)
    {
        if (leastByUplink.TryGetValue(kind, out var found)) return found;
        return leastByUplink[kind] =
        [
            .. ConfigsOf(kind).Where(c => !double.IsInfinity(c.Least)).GroupBy(c => c.UpPorts)
                .Select(g => (Config: g.OrderBy(c => c.Least).First(), Least: g.Min(c => c.Least), Place: g.Min(PlaceAbove)))
                .OrderBy(c => c.Least),
        ];
    }

    /// <summary>Place in the grid of lengths of the shortest way from leaves of a kind to any upper tier.</summary>
    public int PlaceAbove(LeafConfig config) =>
        config.IsApart ? Math.Min(Floor.PlaceApart, Floor.PlaceAcross) : Floor.PlaceAcross;

    /// <summary>A switch between two tiers, with the uplinks left beside so many ports below.</summary>
    public LeafConfig MiddleConfig(SwitchBuild build, PortUse down, PortUse up)
    {
        if (middles.TryGetValue((build, down, up), out var found)) return found;
        return middles[(build, down, up)] = new LeafConfig(build, down, up, Space.Most(build, down))
        {
            Step = new RatioStep(down.Mode.Rate, up.Mode.Rate, Wanted.OversubscriptionOf(1)),
        };
    }

    /// <summary>Every way to use a switch as a core over links that go up in one way, cheapest first; of those with cages alike none that
    /// is dearer and in nothing better.</summary>
    public List<CoreChoice> CoresOver(PortUse up)
    {
        if (cores.TryGetValue(up, out var found)) return found;
        var all =
            from build in Builds
            from use in Space.Uses(build, up.Mode.Rate, Wanted)
            let ends = new LinkEnds(up, use)
            where ends.IsPlanned
            let trunks = Floor.Trunks(ends)
            where !trunks.IsEmpty
            orderby Floor.Switches(build, 1, Wanted.Years), build.Name
            select new CoreChoice(build, use, Space.Most(build, use), trunks);
        var kept = new List<CoreChoice>();
        foreach (var core in all)
            if (!kept.Any(k => ReferenceEquals(k.Use.Cage, core.Use.Cage) && k.Use.Mode == core.Use.Mode && k.Most >= core.Most
                && IsNoHarderToPlace(k.Build, core.Build)))
                kept.Add(core);
        return cores[up] = kept;
    }

    /// <summary>Whether a switch fits wherever another does: units, watts, weight and what its modules may draw. What exists already is
    /// free for one model and not for another, so nothing is said then.</summary>
    private bool IsNoHarderToPlace(SwitchBuild one, SwitchBuild other) =>
        Demand.Free.IsEmpty && one.Units <= other.Units
        && (Wanted.RackPower is null || one.Maximum <= other.Maximum)
        && (Wanted.RackWeight is null || one.Weight <= other.Weight)
        && (one.Model.ModuleBudget is not { } budget || (other.Model.ModuleBudget is { } second && budget >= second));

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
    public int FarthestPlace(int kind, LeafConfig config, int hostsPerLeaf) =>
        config.IsApart ? PlaceAbove(config) : LeavesByPlace(kind, hostsPerLeaf)[^1].Place;

    /// <summary>By how much uplinks cost more than the lower bound says when every leaf is as near to the upper tier as its own rack
    /// is.</summary>
    /// <param name="kind">The kind of host.</param>
    /// <param name="row">The leaves.</param>
    /// <param name="linksPerLeaf">Uplinks of one leaf.</param>
    public double UplinkSurplus(int kind, LeafRow row, int linksPerLeaf)
    {
        // Leaves apart may stand as near as any rack of theirs, which the lower bound takes already.
        if (row.Config.IsApart) return 0;
        var reach = Floor.Between(new LinkEnds(row.Config.UpPorts, row.UpperPorts));
        var (placed, leaves, years) = (0.0, 0L, 0L);
        foreach (var (place, count, leafYears) in LeavesByPlace(kind, row.HostsPerLeaf))
        {
            var cost = reach.From(place).Cost(count * linksPerLeaf, leafYears * linksPerLeaf);
            if (double.IsNaN(cost)) return double.PositiveInfinity;
            (placed, leaves, years) = (placed + cost, leaves + count, years + leafYears);
        }
        return Math.Max(0, placed - reach.From(Floor.PlaceAcross).Cost(leaves * linksPerLeaf, years * linksPerLeaf));
    }

    /// <summary>Leaves by the place in the grid of lengths of the shortest way from their rack to an upper tier, nearest first; with the
    /// years they run.</summary>
    private List<(int Place, long Leaves, long LeafYears)> LeavesByPlace(int kind, int hostsPerLeaf)
    {
        if (places.TryGetValue((kind, hostsPerLeaf), out var found)) return found;
        var blocks = (Demand.Finals[kind] + hostsPerLeaf - 1) / hostsPerLeaf;
        var byPlace = new SortedDictionary<int, (long Leaves, long Years)>();
        for (var block = 0; block < blocks; block++)
        {
            var start = (long)block * hostsPerLeaf;
            var years = Enumerable.Range(0, Wanted.Years).Count(y => start < Demand.CountsIn(y)[kind]);
            for (var port = 0; port < Demand.Hosts[kind].Demand.Ports; port++)
            {
                var place = Floor.NearestAbove(Demand.Hall.HostRacks[Demand.RackOfLeaf(kind, block, hostsPerLeaf, port)]);
                var before = byPlace.GetValueOrDefault(place);
                byPlace[place] = (before.Leaves + 1, before.Years + years);
            }
        }
        return places[(kind, hostsPerLeaf)] = [.. byPlace.Select(p => (p.Key, p.Value.Leaves, p.Value.Years))];
    }

    /// <summary>Leaves of a kind and their links to hosts, at the least: without places.</summary>
    public double LeafFloor(int kind, LeafConfig config, int hostsPerLeaf)
    {
        ref var floor = ref config.Floors[hostsPerLeaf];
        if (!double.IsNaN(floor)) return floor;
        var host = Demand.Hosts[kind];
        var blocks = (Demand.Finals[kind] + hostsPerLeaf - 1) / hostsPerLeaf;
        long ports = host.Demand.Ports;
        var ends = new LinkEnds(host.Port, config.HostPorts);
        var edge = config.IsApart
            ? Floor.EdgeApart(ends, kind)
            : Floor.Edge(ends, Demand.Finals[kind] * ports, HostYears(kind) * ports);
        floor = double.IsNaN(edge)
            ? double.PositiveInfinity
            : Floor.Switches(config.Build, blocks * ports, BlockYears(kind, hostsPerLeaf) * ports) + edge;
        return floor;
    }

    /// <summary>Leaves with what they and their links to hosts take in their places, where that is more than the lower bounds say; of
    /// infinite cost when they do not fit there.</summary>
    /// <param name="kind">The kind of host.</param>
    /// <param name="row">The leaves.</param>
    /// <param name="shape">The shape they are part of.</param>
    /// <param name="incumbent">What is told why they do not fit.</param>
    public LeafRow InPlace(int kind, LeafRow row, FabricShape shape, Incumbent incumbent)
    {
        // Where leaves apart stand depends on what else does, so that they have no price of their own.
        if (row.Config.IsApart) return row;
        var (level, fault, racks) = LevelOf(kind, row, shape);
        if (fault.Length > 0) incumbent.Note(row.Least, fault);
        else if (Draw.OfRacks(racks, row) is var (watts, tooHot))
        {
            incumbent.NoteDraw(row.Least, watts, tooHot);
            level = PartPrice.None;
        }
        return row with
        {
            Least = row.Least + Math.Max(0, level.Cost - LeafFloor(kind, row.Config, row.HostsPerLeaf)),
            Watts = row.Watts + Math.Max(0, level.Watts - RoomOf(kind, row.Config, row.HostsPerLeaf).Watts),
        };
    }

    private LeafLevel LevelOf(int kind, LeafRow row, FabricShape shape)
    {
        var key = (kind, row.Config.Build, row.Config.HostPorts, row.HostsPerLeaf);
        if (leafLevels.TryGetValue(key, out var found)) return found;
        var leaves = Demand.Hosts.Select(_ => row.Choice);
        var design = new FabricDesign { Shape = shape, Leaves = [.. leaves], OnlyKind = kind };
        if (Pricer.Price(design, out var fault) is not { } priced) return leafLevels[key] = new LeafLevel(PartPrice.None, fault, []);
        // What leaves break with their hosts alone, they break in any design.
        if (BrokenLimits.Of(priced, Wanted) is { Length: > 0 } broken) return leafLevels[key] = new LeafLevel(PartPrice.None, broken, []);
        ImmutableArray<LeafRack> racks = Wanted.RackPower is null ? [] : [.. LeafRack.Of(priced.End)];
        return leafLevels[key] = new LeafLevel(new PartPrice((double)priced.Total.Hundredths - 1, priced.End.MostWatts), "", racks);
    }
}
