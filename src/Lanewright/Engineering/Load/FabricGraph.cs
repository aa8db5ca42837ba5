using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Nodes and links of a fabric, whole or with something down. Never changes.</summary>
public sealed class FabricGraph
{
    private readonly GraphDamage? damage;

    /// <summary>Makes a graph.</summary>
    /// <param name="nodes">Switches and bundles of hosts.</param>
    /// <param name="links">Links between them; never from a node to itself.</param>
    /// <exception cref="ArgumentException">A link names a node that is not there, or one node twice, or has a count or rate below 1, or
    /// does not give each member of a bundle equally many.</exception>
    public FabricGraph(ImmutableArray<FabricNode> nodes, ImmutableArray<FabricLink> links)
    {
        foreach (var link in links)
        {
            var isSound = link.A >= 0 && link.A < nodes.Length && link.B >= 0 && link.B < nodes.Length && link.A != link.B;
            if (!isSound || link.Count < 1 || link.Rate.BitsPerSecond < 1)
                throw new ArgumentException($"a link joins two nodes that are there by one cable or more: {link}", nameof(links));
            if (link.Count % Math.Max(1, nodes[link.A].Members) != 0 || link.Count % Math.Max(1, nodes[link.B].Members) != 0)
                throw new ArgumentException($"all members of a bundle have equally many links: {link}", nameof(links));
        }
        Nodes = nodes;
        Links = links;
        Arcs = new FabricArcs(this);
    }

    internal FabricGraph(GraphDamage damage)
    {
        this.damage = damage;
        Nodes = damage.Nodes;
        Links = damage.Links;
        HostLinkWidening = damage.Whole.HostLinkWidening;
        Arcs = new FabricArcs(this);
    }

    private FabricGraph(FabricGraph narrow, int times)
        : this(narrow.Nodes, [.. narrow.Links.Select(l => IsHostLink(narrow, l) ? l with { Rate = l.Rate * times } : l)])
    {
        HostLinkWidening = narrow.HostLinkWidening * times;
    }

    /// <summary>All nodes. After an outage, members of a bundle that were hit stand as further nodes at the end.</summary>
    public ImmutableArray<FabricNode> Nodes { get; }

    /// <summary>All links. After an outage, what is down has a lower count, and links of members that were hit stand at the
    /// end.</summary>
    public ImmutableArray<FabricLink> Links { get; }

    /// <summary>So many times wider the host links are than they really are.</summary>
    internal int HostLinkWidening { get; private init; } = 1;

    /// <summary>The graph before anything was down; null while it is whole.</summary>
    internal FabricGraph? Whole => damage?.Whole;

    /// <summary>The directed links that are up, by the node they leave.</summary>
    internal FabricArcs Arcs { get; }

    /// <summary>Nodes before anything was split.</summary>
    internal int OriginCount => damage?.Whole.Nodes.Length ?? Nodes.Length;

    /// <summary>Whether members of a bundle stand apart since an outage.</summary>
    internal bool IsSplit => damage is { IsSplit: true };

    /// <summary>The fabric with something down. Nodes and links keep their numbers.</summary>
    /// <exception cref="InvalidOperationException">Something is down already: take both outages together from the whole
    /// fabric.</exception>
    public FabricGraph Without(Outage outage) => damage is null
        ? new FabricGraph(GraphDamage.Of(this, outage))
        : throw new InvalidOperationException("take outages together, from the whole fabric");

    /// <summary>The same with host links so many times wider, for questions about the links between switches alone: what hosts may send
    /// is not changed by it.</summary>
    public FabricGraph WithWiderHostLinks(int times) => new(this, times);

    private static bool IsHostLink(FabricGraph graph, FabricLink link) => graph.Nodes[link.A].IsTerminal || graph.Nodes[link.B].IsTerminal;

    /// <summary>Whether a node is down.</summary>
    public bool IsDown(int node) => damage is not null && damage.Down[node];

    /// <summary>The node of the whole fabric that a node was split from; itself where nothing was split.</summary>
    public int OriginOfNode(int node) => damage is null ? node : damage.NodeOrigin[node];

    /// <summary>The link of the whole fabric that a link was split from; itself where nothing was split.</summary>
    public int OriginOfLink(int link) => damage is null ? link : damage.LinkOrigin[link];

    /// <summary>The bundle of hosts at an end of a link, end A before end B; -1 between switches.</summary>
    internal int BundleOf(int link) =>
        Nodes[Links[link].A].IsTerminal ? Links[link].A : Nodes[Links[link].B].IsTerminal ? Links[link].B : -1;

    /// <summary>Physical links of a link that each member of its bundle has; all of them between switches.</summary>
    internal int LinksEach(int link) => Links[link].Count / Math.Max(1, BundleOf(link) is >= 0 and var bundle ? Nodes[bundle].Members : 1);

    /// <summary>Pairs of bundles of hosts that are cabled to each other, in both orders.</summary>
    internal HashSet<(int, int)> DirectPairs() =>
        [.. Arcs.DirectLinks.SelectMany(l => new[] { (Links[l].A, Links[l].B), (Links[l].B, Links[l].A) })];

    /// <summary>Links at a node, in the order of their numbers.</summary>
    internal IEnumerable<int> LinksOf(int node) =>
        Enumerable.Range(Arcs.First[node], Arcs.First[node + 1] - Arcs.First[node]).Select(arc => Arcs.Side[arc] / 2)
            .Concat(Arcs.DirectLinks.Where(link => Links[link].A == node || Links[link].B == node))
            .Order();

    /// <summary>Members a node's bundle had before anything was split or down.</summary>
    internal int MembersOfOrigin(int node) => damage is null ? Nodes[node].Members : damage.Whole.Nodes[damage.NodeOrigin[node]].Members;
}
