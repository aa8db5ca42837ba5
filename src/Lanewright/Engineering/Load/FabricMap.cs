using System.Collections.Immutable;
using Lanewright.Engineering.Lines;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>A network of a plan as a graph: switches are nodes, hosts attached alike are one bundle, links alike in parallel are
/// one.</summary>
public sealed class FabricMap
{
    private readonly ImmutableArray<ImmutableArray<int>> devicesOf;
    private readonly int[] nodeOf;
    private readonly int[] memberOf;
    private readonly int[] linkOf;
    private readonly int[] cableOf;
    private readonly int[] firstPlanLink;

    private FabricMap(PlanNetwork network, HostBundles bundles, LineBook? lines)
    {
        Network = network;
        (nodeOf, memberOf, devicesOf) = (bundles.NodeOf, bundles.MemberOf, bundles.DevicesOf);
        var fabric = FabricLinks.Of(network, nodeOf, lines);
        (linkOf, firstPlanLink, Routes) = (fabric.LinkOf, fabric.FirstPlanLink, fabric.Routes);
        var nodes = ImmutableArray.CreateBuilder<FabricNode>(devicesOf.Length);
        for (var node = 0; node < devicesOf.Length; node++)
            nodes.Add(bundles.KindOf[node] is var kind && network.IsSwitch(devicesOf[node][0])
                ? FabricNode.Switch(kind)
                : FabricNode.Hosts(kind, devicesOf[node].Length));
        Graph = new FabricGraph(nodes.MoveToImmutable(), fabric.Links);
        Inside = Graph.WithWiderHostLinks(Headroom);
        cableOf = Cables();
    }

    /// <summary>So much wider are host links in <see cref="Inside"/>.</summary>
    public const int Headroom = 1 << 10;

    /// <summary>The network.</summary>
    public PlanNetwork Network { get; }

    /// <summary>The plan.</summary>
    public Plan Plan => Network.Plan;

    /// <summary>The network as a graph.</summary>
    public FabricGraph Graph { get; }

    /// <summary>The same with host links so wide that they never are the fullest: for questions about the links between switches.</summary>
    public FabricGraph Inside { get; }

    /// <summary>Maps a network.</summary>
    /// <param name="network">The network.</param>
    /// <param name="roleOf">A number for each host: hosts of different numbers are never bundled, such as those that take part in a demand
    /// and those that do not.</param>
    /// <param name="lines">Lines between sites: channels whose ports the plan names belong to the main network. Null for none.</param>
    public static FabricMap Of(PlanNetwork network, Func<int, int> roleOf, Lazy<LineBook>? lines = null) => new(
        network, HostBundles.Of(network, roleOf),
        network.Name.Length == 0 && !network.Plan.LinePorts.IsEmpty ? lines?.Value : null);

    /// <summary>Routes between sites by their links of the fabric.</summary>
    public ImmutableSortedDictionary<int, LineRoute> Routes { get; }

    /// <summary>The node of a device; -1 when the network does not reach it.</summary>
    public int NodeOf(int device) => nodeOf[device];

    /// <summary>The number of a host in its bundle, from 0.</summary>
    public int MemberOf(int device) => memberOf[device];

    /// <summary>The devices of a node: one switch, or the hosts of a bundle in their order.</summary>
    public ImmutableArray<int> Devices(int node) => devicesOf[node];

    /// <summary>The fabric link a link of the plan is part of; -1 when it does not belong to the network.</summary>
    public int LinkOf(int planLink) => linkOf[planLink];

    /// <summary>The number of a link of the plan among the parallel links of its fabric link, as <see cref="LinkOutage"/> counts them; -1
    /// outside the network.</summary>
    public int CableOf(int planLink) => cableOf[planLink];

    /// <summary>The first link of the plan in a fabric link, to name as an example; -1 for a route between sites.</summary>
    public int FirstPlanLink(int link) => firstPlanLink[link];

    /// <summary>The tier of a node: 0 for hosts, 1 for leaves.</summary>
    public int Tier(int node) => Network.Tier(devicesOf[node][0]);

    /// <summary>Whether a link joins a host to a switch, or two hosts.</summary>
    public bool IsAccess(FabricLink link) => Graph.Nodes[link.A].IsTerminal || Graph.Nodes[link.B].IsTerminal;

    /// <summary>A node by name: the switch, or the first host of a bundle and how many more.</summary>
    public string Name(int node)
    {
        var devices = devicesOf[node];
        var more = devices.Length > 1 ? $" and {Numerals.Whole(devices.Length - 1)} more" : "";
        return Plan.Devices.Name(devices[0]) + more;
    }

    /// <summary>What all links of a host carry together.</summary>
    public BitRate LineRate(int host)
    {
        var bits = 0L;
        foreach (var link in Network.UpLinks(host)) bits += Network.Statement(link).Rate.BitsPerSecond;
        return BitRate.FromBitsPerSecond(bits);
    }

    /// <summary>Hosts as terminals, bundle by bundle in the order of their first hosts; hosts the network does not reach are left
    /// out.</summary>
    /// <param name="hosts">The hosts; a bundle takes part as a whole, which its role sees to.</param>
    /// <param name="rate">What each sends; null for what its links carry together.</param>
    public ImmutableArray<Terminal> Terminals(IEnumerable<int> hosts, BitRate? rate) =>
        [.. hosts.Select(h => nodeOf[h]).Where(n => n >= 0).Distinct().Order()
            .Select(n => new Terminal(n, devicesOf[n].Length, rate ?? LineRate(devicesOf[n][0])))];

    /// <summary>The end of a link that is a host; between two hosts each is a bundle of its own, and either will do.</summary>
    private int HostOf(int link) =>
        Network.IsSwitch(Plan.Links.FromDevice(link)) ? Plan.Links.ToDevice(link) : Plan.Links.FromDevice(link);

    /// <summary>Between switches in the order of the plan; at a bundle the links of each host together.</summary>
    private int[] Cables()
    {
        var taken = new Dictionary<(int Link, int Member), int>();
        var numbers = new int[linkOf.Length];
        for (var planLink = 0; planLink < numbers.Length; planLink++)
        {
            numbers[planLink] = -1;
            var link = linkOf[planLink];
            if (link < 0) continue;
            var member = Graph.BundleOf(link) < 0 ? 0 : memberOf[HostOf(planLink)];
            var before = taken.GetValueOrDefault((link, member));
            numbers[planLink] = (member * Graph.LinksEach(link)) + before;
            taken[(link, member)] = before + 1;
        }
        return numbers;
    }
}
