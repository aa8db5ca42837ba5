using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Pathways;
using Lanewright.Model;
using Lanewright.Model.Demands;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Everything of a plan that can fail as a whole: links, modules, switches, cables of several links, racks,
/// feeds and trays.</summary>
public sealed class PlanFailures
{
    private readonly FabricMap map;
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly ImmutableArray<FailureUnit>.Builder units = ImmutableArray.CreateBuilder<FailureUnit>();

    private PlanFailures(FabricMap map, LinkDesign design)
    {
        this.map = map;
        plan = map.Plan;
        this.design = design;
    }

    /// <summary>The units of a network, kind by kind, each in the order of the plan.</summary>
    public static ImmutableArray<FailureUnit> Of(FabricMap map, LinkDesign design)
    {
        var failures = new PlanFailures(map, design);
        failures.AddLinks();
        failures.AddModules();
        failures.AddSwitches();
        failures.AddCables();
        failures.AddRacks();
        failures.AddFeeds();
        failures.AddTrays();
        return failures.units.ToImmutable();
    }

    /// <summary>What a plan calls a failing part.</summary>
    public static FailureKind KindOf(FailingPart part) => part switch
    {
        FailingPart.Link => FailureKind.Link,
        FailingPart.Module => FailureKind.Module,
        FailingPart.Switch => FailureKind.Switch,
        FailingPart.Cable => FailureKind.Cable,
        FailingPart.Rack => FailureKind.Rack,
        FailingPart.Feed => FailureKind.Feed,
        _ => FailureKind.Tray,
    };

    private void AddLinks()
    {
        for (var link = 0; link < plan.Links.Count; link++)
            if (map.LinkOf(link) >= 0) Add(Ends(link), FailureKind.Link, OutageOf([link]));
    }

    /// <summary>Both ends of a cable assembly fail with the cable; only a module of its own is a thing of its own.</summary>
    private void AddModules()
    {
        var cages = new SortedDictionary<(int Device, short Cage), List<int>>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            if (map.LinkOf(link) < 0 || design.SolutionOf(link) is not { } solution) continue;
            if (solution.FromModule is not null) Note(cages, (plan.Links.FromDevice(link), plan.Links.FromPort(link).Cage), link);
            if (solution.ToModule is not null) Note(cages, (plan.Links.ToDevice(link), plan.Links.ToPort(link).Cage), link);
        }
        foreach (var ((device, cage), links) in cages)
            Add($"{plan.Devices.Name(device)}:{plan.Devices.Group(device).Layout.Slots[cage].Label}", FailureKind.Module, OutageOf(links));
    }

    private void AddSwitches()
    {
        for (var node = 0; node < map.Graph.Nodes.Length; node++)
            if (!map.Graph.Nodes[node].IsTerminal) Add(map.Name(node), FailureKind.Switch, Outage.OfNode(node));
    }

    /// <summary>A cable with one link is that link.</summary>
    private void AddCables()
    {
        var cables = new SortedDictionary<int, List<int>>();
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var cable = design.CableOf(link);
            if (map.LinkOf(link) >= 0 && cable >= 0 && design.Cables[cable].Links > 1) Note(cables, cable, link);
        }
        foreach (var links in cables.Values)
            Add($"{Ends(links[0])} and {Numerals.Whole(links.Count - 1)} more legs", FailureKind.Cable, OutageOf(links));
    }

    private void AddRacks()
    {
        var racks = new SortedDictionary<int, List<int>>();
        for (var device = 0; device < plan.Devices.Count; device++)
            if (map.NodeOf(device) >= 0 && plan.Devices.RackIndex(device) is >= 0 and var rack) Note(racks, rack, device);
        foreach (var (rack, devices) in racks) Add(plan.Building.Racks[rack].Name, FailureKind.Rack, OutageOfDevices(devices));
    }

    /// <summary>A device is down when all its feeds are: those its group names, or those that lead to its rack.</summary>
    private void AddFeeds()
    {
        var ofRack = plan.Power.SelectMany(f => f.Racks.Distinct(), (feed, rack) => (feed.Name, rack)).ToLookup(f => f.rack, f => f.Name);
        var alone = new SortedDictionary<string, List<int>>(Text.NaturalOrder.Instance);
        for (var device = 0; device < plan.Devices.Count; device++)
        {
            if (map.NodeOf(device) < 0) continue;
            var named = plan.Devices.Group(device).Feeds;
            var feeds = named.IsEmpty ? [.. ofRack[plan.Devices.RackIndex(device)]] : named;
            if (feeds.Length == 1) Note(alone, feeds[0], device);
        }
        foreach (var (feed, devices) in alone) Add(feed, FailureKind.Feed, OutageOfDevices(devices));
    }

    /// <summary>A tray or duct takes down every link whose cable lies anywhere in it.</summary>
    private void AddTrays()
    {
        if (plan.Building.Pathways.IsEmpty) return;
        var book = PathwayBook.Of(plan, design);
        var inPathway = plan.Building.Pathways.ToDictionary(p => p, _ => new List<int>());
        for (var link = 0; link < plan.Links.Count; link++)
        {
            if (map.LinkOf(link) < 0) continue;
            foreach (var pathway in book.PathwaysOf(link))
                inPathway[pathway].Add(link);
        }
        foreach (var pathway in plan.Building.Pathways)
            if (inPathway[pathway].Count > 0) Add(pathway.FullName, FailureKind.Tray, OutageOf(inPathway[pathway]));
    }

    private void Add(string name, FailureKind kind, Outage outage) => units.Add(new FailureUnit(name, kind, outage));

    private static void Note<T>(SortedDictionary<T, List<int>> lists, T key, int value)
        where T : notnull
    {
        if (!lists.TryGetValue(key, out var list)) lists[key] = list = [];
        list.Add(value);
    }

    private Outage OutageOf(List<int> links)
    {
        var down = new SortedDictionary<(int Link, int Member), int>();
        foreach (var link in links)
        {
            var host = map.IsAccess(map.Graph.Links[map.LinkOf(link)]) ? HostOf(link) : -1;
            var key = (map.LinkOf(link), host < 0 ? 0 : map.MemberOf(host));
            down[key] = down.GetValueOrDefault(key) + 1;
        }
        return new Outage([], [.. down.Select(d => new LinkOutage(d.Key.Link, d.Value, d.Key.Member))], []);
    }

    /// <summary>The end of a link that is a host; between two hosts each is a bundle of its own, and either will do.</summary>
    private int HostOf(int link) =>
        map.Network.IsSwitch(plan.Links.FromDevice(link)) ? plan.Links.ToDevice(link) : plan.Links.FromDevice(link);

    private Outage OutageOfDevices(List<int> devices)
    {
        var nodes = ImmutableArray.CreateBuilder<int>();
        var members = ImmutableArray.CreateBuilder<MemberOutage>();
        foreach (var node in devices.GroupBy(map.NodeOf).OrderBy(g => g.Key))
        {
            if (node.Count() == map.Devices(node.Key).Length) nodes.Add(node.Key);
            else members.AddRange(node.Select(d => new MemberOutage(node.Key, map.MemberOf(d), 1)));
        }
        return new Outage(nodes.ToImmutable(), [], members.ToImmutable());
    }

    private string Ends(int link) => $"{plan.Devices.Name(plan.Links.FromDevice(link))} to {plan.Devices.Name(plan.Links.ToDevice(link))}";
}
