using System.Collections.Immutable;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Gives the devices of a design their places and their ports.</summary>
internal sealed class LayoutMaker
{
    private readonly FabricDemand demand;
    private readonly FabricDesign design;
    private readonly ImmutableArray<int> counts;
    private readonly RackStacker racks;
    private readonly List<FabricGroup> groups = [];
    private readonly List<CageLayout> cages = [];
    private readonly List<FabricLinks> links = [];
    private readonly List<EdgeKey?> edges = [];
    private readonly int year;
    private readonly Dictionary<string, int> groupByName = new(StringComparer.Ordinal);

    private LayoutMaker(FabricDemand demand, FabricDesign design, int year, bool isSpread)
    {
        this.demand = demand;
        this.design = design;
        this.year = year;
        counts = demand.CountsIn(year);
        racks = new RackStacker(demand, design.MostInRack, isSpread);
    }

    /// <summary>The design as it stands in a year, or null with what is in the way.</summary>
    public static PlacedFabric? Place(FabricDemand demand, FabricDesign design, int year, out string fault)
    {
        var maker = new LayoutMaker(demand, design, year, isSpread: true);
        fault = maker.Place();
        if (fault.Length > 0)
        {
            // Where racks do not suffice for tiers in two racks each, switches stand as close as they may.
            maker = new LayoutMaker(demand, design, year, isSpread: false);
            fault = maker.Place();
        }
        if (fault.Length > 0) return null;
        var groups = maker.WithExisting();
        var layout = new FabricLayout(demand.Hall.Racks, demand.Hall.IsStandard, groups, [.. maker.links])
        {
            Standing = demand.Hall.Limits?.Site.Standing ?? [],
        };
        return new PlacedFabric(demand.Hall, layout, [.. maker.cages], maker.counts, [.. maker.edges])
        {
            HasLeavesApart = !design.IsBox && maker.Kinds.Any(k => design.Leaves[k].IsApart),
        };
    }

    private string Place()
    {
        for (var kind = 0; kind < demand.Hosts.Length; kind++) AddHosts(kind);
        if (design.IsBox) return AddBoxes();
        foreach (var kind in Kinds)
            if (AddLeaves(kind) is { Length: > 0 } fault) return fault;
        return design.Core is not null ? AddPods() : design.Upper is not null ? AddSpines() : "";
    }

    private void AddHosts(int kind)
    {
        var host = demand.Hosts[kind];
        groups.Add(demand.HostGroup(kind, design.OnlyKind < 0 || kind == design.OnlyKind ? year : -1));
        cages.Add(CageLayout.Of(host.Model, host.Cards));
        groupByName[host.Demand.Name] = groups.Count - 1;
    }

    /// <summary>Leaves stand at the top of the middle racks of the hosts they serve, or near them where those are full.</summary>
    private string AddLeaves(int kind)
    {
        var host = demand.Hosts[kind];
        var leaf = design.Leaves[kind];
        var blocks = leaf.BlocksFor(demand.Finals[kind]);
        var rackOf = Enumerable.Range(0, blocks)
            .SelectMany(b => Enumerable.Range(0, host.Demand.Ports).Select(p => demand.RackOfLeaf(kind, b, leaf.HostsPerLeaf, p)))
            .ToArray();
        if (racks.ForLeaves(kind, leaf, rackOf, out var fault) is not { } standing) return fault;
        var taking = new PortTaking(leaf.Build.Layout);
        var down = taking.Take(leaf.HostPorts, leaf.HostsPerLeaf);
        for (var port = 0; port < host.Demand.Ports; port++)
        {
            var places = ImmutableArray.CreateBuilder<FabricPlace>();
            for (var block = 0; block < leaf.BlocksFor(counts[kind]); block++)
                places.Add(standing[(block * host.Demand.Ports) + port]);
            var group = Add(LeafName(kind, port), SwitchRole.Leaf, leaf.Build, places.ToImmutable());
            var from = new FabricEnd([new FabricRun(kind, 0, counts[kind])], new PortFilter([host.Cages[port]]), host.Port.Mode);
            var to = new FabricEnd([Whole(group)], new PortFilter(down), leaf.HostPorts.Mode);
            Link(new FabricLinks(EdgeName(kind, port), from, to, host.Demand.Rate, leaf.HostsPerLeaf, 1),
                // Where racks of leaves are depends on what else stands apart, so that such a set is not remembered.
                leaf.IsApart ? null : new EdgeKey(kind, port, leaf.Build, leaf.HostPorts, leaf.HostsPerLeaf, year));
        }
        return "";
    }

    private string AddBoxes()
    {
        var build = design.Leaves[0].Build;
        if (racks.Boxes(design.Leaves[0], design.Planes, out var fault) is not { } places) return fault;
        for (var plane = 0; plane < design.Planes; plane++)
        {
            var box = Add(Name("box", plane, design.Planes), SwitchRole.Box, build, [places[plane]]);
            var taking = new PortTaking(build.Layout);
            for (var kind = 0; kind < demand.Hosts.Length; kind++)
            {
                var host = demand.Hosts[kind];
                for (var port = plane; port < host.Demand.Ports; port += design.Planes)
                {
                    var down = taking.Take(design.Leaves[kind].HostPorts, demand.Finals[kind]);
                    if (down.Length * design.Leaves[kind].HostPorts.Mode.Ways < demand.Finals[kind])
                        return $"{build.Name} has too few ports of {host.Demand.Rate}";
                    var from = new FabricEnd([new FabricRun(kind, 0, counts[kind])], new PortFilter([host.Cages[port]]), host.Port.Mode);
                    var to = new FabricEnd([Whole(box)], new PortFilter(down), design.Leaves[kind].HostPorts.Mode);
                    Link(new FabricLinks(EdgeName(kind, port), from, to, host.Demand.Rate, counts[kind], 1));
                }
            }
            if (design.PeerLinks > 0 && plane == 1) AddPeers(box, taking);
        }
        return "";
    }

    /// <summary>Both of a pair give their peers the same cages, as both have given hosts the same.</summary>
    private void AddPeers(int box, PortTaking taking)
    {
        var use = design.Leaves[0].UpPorts;
        var ports = new PortFilter(taking.Take(use, design.PeerLinks));
        var from = new FabricEnd([Whole(box - 1)], ports, use.Mode);
        var to = new FabricEnd([Whole(box)], ports, use.Mode);
        Link(new FabricLinks("peers", from, to, use.Mode.Rate, 0, design.PeerLinks));
    }

    private string AddSpines()
    {
        if (design.Upper is not { } upper) return "";
        for (var plane = 0; plane < design.Planes; plane++)
        {
            if (racks.Next(upper.Build, upper.Count, out var fault) is not { } places) return fault;
            var spine = Add(Name("spine", plane, design.Planes), SwitchRole.Spine, upper.Build, places);
            var taking = new PortTaking(upper.Build.Layout);
            foreach (var kind in Kinds)
            {
                var leaf = design.Leaves[kind];
                var down = taking.Take(upper.Down[kind], leaf.BlocksFor(demand.Finals[kind]) * InPlane(kind) * leaf.Parallel);
                var from = LeafEnd(kind, plane, 0, leaf.BlocksFor(counts[kind]), upper.Count * leaf.Parallel);
                Link(new FabricLinks(Name(FabricName(kind), plane, design.Planes), from,
                    new FabricEnd([Whole(spine)], new PortFilter(down), upper.Down[kind].Mode), leaf.UpPorts.Mode.Rate, 0, leaf.Parallel));
            }
        }
        return "";
    }

    private string AddPods()
    {
        if (design is not { Upper: { } upper, Core: { } core }) return "";
        var pods = new PodPlan(demand, design);
        for (var plane = 0; plane < design.Planes; plane++)
        {
            if (racks.Next(core.Build, upper.Count * core.Count, out var fault) is not { } corePlaces) return fault;
            if (racks.PodRacks(pods, upper.Build, upper.Count, out fault) is not { } podPlaces) return fault;
            var first = groups.Count;
            var present = pods.PresentFor(counts);
            for (var j = 0; j < upper.Count; j++)
                Add(Name(Name("agg", plane, design.Planes), j, upper.Count), SwitchRole.Aggregation, upper.Build,
                    [.. present.Select(pod => podPlaces[pod][j])]);
            var cores = Add(Name("core", plane, design.Planes), SwitchRole.Core, core.Build, corePlaces);
            AddPodLinks(plane, first, pods, present);
            if (AddCoreLinks(plane, first, cores, pods) is { Length: > 0 } few) return few;
        }
        return "";
    }

    private void AddPodLinks(int plane, int firstAggregation, PodPlan pods, ImmutableArray<int> present)
    {
        if (design.Upper is not { } upper) return;
        for (var nth = 0; nth < present.Length; nth++)
        {
            var (kind, pod) = pods.KindOf(present[nth]);
            var leaf = design.Leaves[kind];
            var start = pod * leaf.BlocksPerPod;
            var blocks = Math.Min(leaf.BlocksPerPod, leaf.BlocksFor(counts[kind]) - start);
            var taking = new PortTaking(upper.Build.Layout);
            var down = taking.Take(upper.Down[kind], leaf.BlocksPerPod * InPlane(kind) * leaf.Parallel);
            var to = Enumerable.Range(0, upper.Count).Select(j => new FabricRun(firstAggregation + j, nth, 1));
            var name = Name(Name(FabricName(kind), plane, design.Planes) + "-pod", present[nth], int.MaxValue);
            Link(new FabricLinks(name, LeafEnd(kind, plane, start, blocks, upper.Count * leaf.Parallel),
                new FabricEnd([.. to], new PortFilter(down), upper.Down[kind].Mode), leaf.UpPorts.Mode.Rate, 0, leaf.Parallel));
        }
    }

    private string AddCoreLinks(int plane, int firstAggregation, int cores, PodPlan pods)
    {
        if (design is not { Upper: { } upper, Core: { } core }) return "";
        var below = pods.MostBelow();
        var taking = new PortTaking(upper.Build.Layout);
        taking.Take(upper.Down[below.Kind], below.Ports);
        var up = new PortFilter(taking.Take(upper.Up, core.Count * upper.Parallel));
        var down = new PortFilter(new PortTaking(core.Build.Layout).Take(core.Down[0], pods.Count * upper.Parallel));
        if (!LeavesUplinks(up.Numbers.Length * upper.Up.Mode.Ways, [.. up.Numbers]))
            return $"{upper.Build.Name} has too few ports for leaves of all kinds and for {core.Count * upper.Parallel} uplinks beside";
        for (var j = 0; j < upper.Count; j++)
            Link(new FabricLinks(Name(Name("trunk", plane, design.Planes), j, upper.Count),
                new FabricEnd([Whole(firstAggregation + j)], up, upper.Up.Mode),
                new FabricEnd([new FabricRun(cores, j * core.Count, core.Count)], down, core.Down[0].Mode),
                upper.Up.Mode.Rate, 0, upper.Parallel));
        return "";
    }

    /// <summary>Whether uplinks suffice, and lie in cages that the leaves of no kind take.</summary>
    private bool LeavesUplinks(int uplinks, ImmutableArray<int> cages)
    {
        if (design is not { Upper: { } upper, Core: { } core } || uplinks < core.Count * upper.Parallel) return false;
        return Kinds.All(kind =>
        {
            var leaf = design.Leaves[kind];
            var ports = leaf.BlocksPerPod * InPlane(kind) * leaf.Parallel;
            var down = new PortTaking(upper.Build.Layout).Take(upper.Down[kind], ports);
            return down.Length * upper.Down[kind].Mode.Ways >= ports && !down.Any(cages.Contains);
        });
    }

    /// <summary>The uplink side of leaves of a plane: their cages follow those of their hosts.</summary>
    private FabricEnd LeafEnd(int kind, int plane, int firstBlock, int blocks, int uplinks)
    {
        var leaf = design.Leaves[kind];
        var taking = new PortTaking(leaf.Build.Layout);
        taking.Take(leaf.HostPorts, leaf.HostsPerLeaf);
        var ports = taking.Take(leaf.UpPorts, uplinks);
        var runs = ImmutableArray.CreateBuilder<FabricRun>();
        for (var port = plane; port < demand.Hosts[kind].Demand.Ports; port += design.Planes)
            runs.Add(new FabricRun(groupByName[LeafName(kind, port)], firstBlock, blocks));
        return new FabricEnd(runs.ToImmutable(), new PortFilter(ports), leaf.UpPorts.Mode);
    }

    private IEnumerable<int> Kinds => Enumerable.Range(0, demand.Hosts.Length).Where(k => design.OnlyKind < 0 || k == design.OnlyKind);

    private int InPlane(int kind) => demand.Hosts[kind].Demand.Ports / design.Planes;

    private int Add(string name, SwitchRole role, SwitchBuild build, ImmutableArray<FabricPlace> places)
    {
        groups.Add(new FabricGroup(name, role, build.Model, build.Cards, 0, places));
        cages.Add(build.Layout);
        return groupByName[name] = groups.Count - 1;
    }

    private void Link(FabricLinks set, EdgeKey? edge = null)
    {
        links.Add(set);
        edges.Add(edge);
    }

    private FabricRun Whole(int group) => new(group, 0, groups[group].Places.Length);

    /// <summary>What exists already is used first: in the order of the groups.</summary>
    private ImmutableArray<FabricGroup> WithExisting()
    {
        if (demand.Free.IsEmpty) return [.. groups];
        var left = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < groups.Count; i++)
        {
            if (groups[i].Role == SwitchRole.Host) continue;
            var model = groups[i].Model;
            var there = left.TryGetValue(model.Name, out var rest) ? rest : (int)demand.Free.CountOf(model);
            var used = Math.Min(there, groups[i].Places.Length);
            left[model.Name] = there - used;
            groups[i] = groups[i] with { Existing = used };
        }
        return [.. groups];
    }

    private string LeafName(int kind, int port) => Name(ForKind("leaf", kind), port, demand.Hosts[kind].Demand.Ports);

    private string EdgeName(int kind, int port) => Name(ForKind("edge", kind), port, demand.Hosts[kind].Demand.Ports);

    private string FabricName(int kind) => ForKind("fabric", kind);

    private string ForKind(string name, int kind) => demand.Hosts.Length == 1 ? name : name + "-" + demand.Hosts[kind].Demand.Name;

    /// <summary>A letter where the alphabet suffices: devices are numbered, and a number more would read as one of theirs.</summary>
    private static string Name(string name, int index, int of)
    {
        const string letters = "abcdefghijklmnopqrstuvwxyz";
        if (of == 1) return name;
        return name + "-" + (of <= letters.Length ? letters[index..(index + 1)] : "x" + Quantities.Numerals.Whole(index + 1));
    }
}
