using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Nodes and links of a fabric, whole or with something down. Never changes.</summary>
public sealed class FabricGraph
{
    /// <summary>Makes a graph.</summary>
    /// <param name="nodes">Switches and bundles of hosts.</param>
    /// <param name="links">Links between them; never from a node to itself.</param>
    /// <exception cref="ArgumentException">A link names a node that is not there, or one node twice, or has a count or rate below 1.</exception>
    public FabricGraph(ImmutableArray<FabricNode> nodes, ImmutableArray<FabricLink> links)
    {
        Nodes = nodes;
        Links = links;
    }

    /// <summary>All nodes. After an outage, members of a bundle that were hit stand as further nodes at the end.</summary>
    public ImmutableArray<FabricNode> Nodes { get; }

    /// <summary>All links. After an outage, what is down has a lower count, and links of members that were hit stand at the end.</summary>
    public ImmutableArray<FabricLink> Links { get; }

    /// <summary>The fabric with something down. Nodes and links keep their numbers.</summary>
    public FabricGraph Without(Outage outage) => throw new NotSupportedException();

    /// <summary>Whether a node is down.</summary>
    public bool IsDown(int node) => throw new NotSupportedException();

    /// <summary>The node of the whole fabric that a node was split from; itself where nothing was split.</summary>
    public int OriginOfNode(int node) => throw new NotSupportedException();

    /// <summary>The link of the whole fabric that a link was split from; itself where nothing was split.</summary>
    public int OriginOfLink(int link) => throw new NotSupportedException();
}
