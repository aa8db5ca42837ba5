using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Pathways;
using Lanewright.Model;
using Lanewright.Model.Demands;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Everything of a plan that can fail as a whole: links, modules, switches, cables of several links, racks,
/// feeds, trays, trunks, panels, ways between halls, and spans and ducts between sites.</summary>
public sealed class PlanFailures
{
    private readonly FabricMap map;
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly PatchedLinks patches;
    private readonly PathwayBook pathways;
    private readonly ImmutableArray<FailureUnit>.Builder units = ImmutableArray.CreateBuilder<FailureUnit>();

    private PlanFailures(FabricMap map, LinkDesign design, PlanBooks books)
    {
        this.map = map;
        plan = map.Plan;
        this.design = design;
        patches = new PatchedLinks(plan, books.Plant);
        pathways = books.Pathways.Value;
    }

    /// <summary>The units of a network, kind by kind, each in the order of the plan.</summary>
    public static ImmutableArray<FailureUnit> Of(FabricMap map, LinkDesign design, PlanBooks books)
    {
        var failures = new PlanFailures(map, design, books);
        failures.AddLinks();
        failures.AddModules();
        failures.AddSwitches();
        failures.AddCables();
        failures.AddRacks();
        failures.AddFeeds();
        failures.AddTrays();
        failures.AddTrunks();
        failures.AddPanels();
        failures.AddRoutes();
        failures.AddCuts();
        return failures.units.ToImmutable();
    }

    /// <summary>What a rate of failure calls a kind of thing; null for fibre between sites, which has a rate of its own.</summary>
    public static FailingPart? PartOf(FailureKind kind) => kind switch
    {
        FailureKind.Link => FailingPart.Link,
        FailureKind.Module => FailingPart.Module,
        FailureKind.Switch => FailingPart.Switch,
        FailureKind.Cable => FailingPart.Cable,
        FailureKind.Rack => FailingPart.Rack,
        FailureKind.Feed => FailingPart.Feed,
        FailureKind.Trunk => FailingPart.Trunk,
        FailureKind.Panel => FailingPart.Panel,
        FailureKind.Route => FailingPart.Route,
        FailureKind.Tray => FailingPart.Tray,
        _ => null,
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
            Add($"{plan.Devices.Name(device)}:{plan.Devices.Group(device).Layout.Slots[cage].Label}", FailureKind.Module, OutageOf(links),
                ModuleOf(links[0], plan.Links.FromDevice(links[0]) == device));
    }

    private string? ModuleOf(int link, bool isFirstEnd) =>
        (isFirstEnd ? design.SolutionOf(link)?.FromModule : design.SolutionOf(link)?.ToModule)?.Name;

    private void AddSwitches()
    {
        for (var node = 0; node < map.Graph.Nodes.Length; node++)
            if (!map.Graph.Nodes[node].IsTerminal)
                Add(map.Name(node), FailureKind.Switch, Outage.OfNode(node), ModelOf(map.Devices(node)[0]));
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
            Add($"{Ends(links[0])} and {Numerals.Whole(links.Count - 1)} more legs", FailureKind.Cable, OutageOf(links),
                design.SolutionOf(links[0])?.Cable.Name);
    }

    /// <summary>A rack takes down its devices, and what is patched through its panels.</summary>
    private void AddRacks()
    {
        var racks = new SortedDictionary<int, List<int>>();
        var patched = new SortedDictionary<int, List<int>>();
        for (var device = 0; device < plan.Devices.Count; device++)
            if (map.NodeOf(device) >= 0 && plan.Devices.RackIndex(device) is >= 0 and var rack) Note(racks, rack, device);
        foreach (var (panel, links) in patches.ByPanel(Links()))
            foreach (var link in links)
                if (plan.Devices.RackIndex(panel) is >= 0 and var rack) Note(patched, rack, link);
        foreach (var rack in racks.Keys.Union(patched.Keys).Order())
        {
            var devices = OutageOfDevices(racks.GetValueOrDefault(rack, []));
            Add(plan.Building.Racks[rack].Name, FailureKind.Rack, devices with { Links = RunsOf(patched.GetValueOrDefault(rack, [])) });
        }
    }

    /// <summary>A device is down when all its feeds are: those its group names, or those that lead to its rack. A feed that no device hangs
    /// on alone fails as well, and costs nothing.</summary>
    private void AddFeeds()
    {
        var ofRack = plan.Power.SelectMany(f => f.Racks.Distinct(), (feed, rack) => (feed.Name, rack)).ToLookup(f => f.rack, f => f.Name);
        var alone = new SortedDictionary<string, List<int>>(Text.NaturalOrder.Instance);
        for (var device = 0; device < plan.Devices.Count; device++)
        {
            if (map.NodeOf(device) < 0) continue;
            string[] reaching = [.. ofRack[plan.Devices.RackIndex(device)]];
            // A feed that is described and does not lead to the rack supplies nothing there.
            var named = plan.Devices.Group(device).Feeds.Where(f => reaching.Contains(f) || plan.Power.All(p => p.Name != f)).ToArray();
            var feeds = named.Length == 0 ? reaching : named;
            foreach (var feed in feeds)
                if (!alone.ContainsKey(feed)) alone[feed] = [];
            if (feeds.Length == 1) Note(alone, feeds[0], device);
        }
        foreach (var (feed, devices) in alone) Add(feed, FailureKind.Feed, OutageOfDevices(devices));
    }

    /// <summary>A tray or duct takes down every link of which a cord, a cable or a trunk lies anywhere in it.</summary>
    private void AddTrays()
    {
        if (plan.Building.Pathways.IsEmpty) return;
        var inPathway = plan.Building.Pathways.ToDictionary(p => p, _ => new List<int>());
        foreach (var link in Links())
            foreach (var pathway in pathways.PathwaysOf(link)) inPathway[pathway].Add(link);
        foreach (var pathway in plan.Building.Pathways)
            if (pathway.Route is null && inPathway[pathway].Count > 0)
                Add(pathway.FullName, FailureKind.Tray, OutageOf(inPathway[pathway]));
    }

    private void AddTrunks()
    {
        var trunks = new SortedDictionary<(int Trunk, int Number), List<int>>();
        foreach (var link in Links())
            foreach (var patch in patches.Of(link)) Note(trunks, (patch.Trunk.Index, patch.Number), link);
        foreach (var ((trunk, number), links) in trunks)
            Add(plan.Trunks[trunk].NameOf(number), FailureKind.Trunk, OutageOf(links), plan.Trunks[trunk].Cable.Name);
    }

    private void AddPanels()
    {
        foreach (var (panel, links) in patches.ByPanel(Links()))
            Add(plan.Devices.Name(panel), FailureKind.Panel, OutageOf(links), ModelOf(panel));
    }

    /// <summary>A way between two halls takes down all that goes through it.</summary>
    private void AddRoutes()
    {
        var routes = new SortedDictionary<int, List<int>>();
        foreach (var link in Links())
            foreach (var route in RoutesOf(link)) Note(routes, plan.Building.Routes.IndexOf(route), link);
        foreach (var (index, links) in routes) Add(plan.Building.Routes[index].Name, FailureKind.Route, OutageOf(links));
    }

    /// <summary>Fibre between sites: a cut takes down every route over a span, or over all spans in a duct.</summary>
    private void AddCuts()
    {
        if (map.Routes.Count == 0) return;
        foreach (var span in plan.Spans) Cut(span.Name, FailureKind.Span, route => route.Crosses(span));
        foreach (var duct in plan.Spans.SelectMany(s => s.Ducts).Distinct().Order(Text.NaturalOrder.Instance))
            Cut(duct, FailureKind.Duct, route => route.LiesIn(duct));

        void Cut(string name, FailureKind kind, Func<LineRoute, bool> isIn)
        {
            ImmutableArray<LinkOutage> lost =
                [.. map.Routes.Where(r => isIn(r.Value)).Select(r => new LinkOutage(r.Key, map.Graph.Links[r.Key].Count))];
            if (!lost.IsEmpty) Add(name, kind, new Outage([], lost, []));
        }
    }

    /// <summary>Without pathways there is one way at most between two halls.</summary>
    private IEnumerable<HallRoute> RoutesOf(int link)
    {
        if (pathways.Net is not null) return pathways.RoutesOf(link);
        var at = plan.Links.FromDevice(link);
        var ways = new List<HallRoute>();
        foreach (var patch in patches.Of(link))
        {
            Pass(at, patch.NearPanel);
            Pass(patch.NearPanel, at = patch.FarPanel);
        }
        Pass(at, plan.Links.ToDevice(link));
        return ways.Distinct();

        void Pass(int from, int to)
        {
            if (plan.Devices.Rack(from)?.Hall is { } here && plan.Devices.Rack(to)?.Hall is { } there && here != there
                && plan.Building.RouteBetween(here, there) is { } route) ways.Add(route);
        }
    }

    /// <summary>Links of the plan that belong to the network, in order.</summary>
    private IEnumerable<int> Links() => Enumerable.Range(0, plan.Links.Count).Where(l => map.LinkOf(l) >= 0);

    private void Add(string name, FailureKind kind, Outage outage, string? model = null) =>
        units.Add(new FailureUnit(name, kind, outage) { Model = model ?? "" });

    private string ModelOf(int device) => plan.Devices.Group(device).Model.Name;

    private static void Note<T>(SortedDictionary<T, List<int>> lists, T key, int value)
        where T : notnull
    {
        if (!lists.TryGetValue(key, out var list)) lists[key] = list = [];
        list.Add(value);
    }

    private Outage OutageOf(IEnumerable<int> links) => new([], RunsOf(links), []);

    /// <summary>Physical links, neighbours in one run; a run never goes beyond one host, so that it is known whose links it
    /// takes.</summary>
    private ImmutableArray<LinkOutage> RunsOf(IEnumerable<int> links)
    {
        var runs = ImmutableArray.CreateBuilder<LinkOutage>();
        foreach (var (link, cable) in links.Select(l => (Link: map.LinkOf(l), Cable: map.CableOf(l))).Distinct().Order())
        {
            var each = map.Graph.LinksEach(link);
            var last = runs.Count > 0 ? runs[^1] : default;
            if (runs.Count > 0 && last.Link == link && last.First + last.Count == cable && cable % each != 0)
                runs[^1] = last with { Count = last.Count + 1 };
            else
                runs.Add(new LinkOutage(link, 1, cable));
        }
        return runs.ToImmutable();
    }

    private Outage OutageOfDevices(IReadOnlyCollection<int> devices)
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
