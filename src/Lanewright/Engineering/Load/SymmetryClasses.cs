using System.Collections.Immutable;
using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Nodes and links that are alike: merged only by automorphisms of the fabric that were verified arc by arc. What could not be
/// proven alike within the work allowed stays apart, so classes may be too fine and are never too coarse.</summary>
public sealed class SymmetryClasses
{
    private SymmetryClasses(ImmutableArray<int> nodeClasses, ImmutableArray<int> linkClasses, ColouredGraph coloured, Orbits orbits)
    {
        NodeClasses = nodeClasses;
        LinkClasses = linkClasses;
        Coloured = coloured;
        Orbits = orbits;
    }

    /// <summary>The class of each node: the lowest node that is alike.</summary>
    public ImmutableArray<int> NodeClasses { get; }

    /// <summary>The class of each link: the lowest link that is alike, in either direction.</summary>
    public ImmutableArray<int> LinkClasses { get; }

    /// <summary>What the symmetries keep.</summary>
    internal ColouredGraph Coloured { get; }

    /// <summary>The symmetries behind the classes.</summary>
    internal Orbits Orbits { get; }

    /// <summary>Finds the classes. With traffic, only what the traffic too treats alike is merged.</summary>
    public static SymmetryClasses Of(FabricGraph graph, TrafficMatrix? traffic = null) => Of(graph, traffic, []);

    /// <summary>Finds the classes, and those of things that fail together.</summary>
    internal static SymmetryClasses Of(FabricGraph graph, TrafficMatrix? traffic, ImmutableArray<FailureUnit> units)
    {
        var coloured = new ColouredGraph(graph, traffic, units);
        var orbits = new Orbits(coloured, graph);
        var links = new UnionFind(graph.Links.Length);
        var byVertex = new Dictionary<int, int>();
        for (var link = 0; link < graph.Links.Length; link++)
        {
            if (coloured.LinkVertices[link] < 0)
            {
                links.Join(link, orbits.OfSide(link * 2) / 2);
                links.Join(link, orbits.OfSide((link * 2) + 1) / 2);
            }
            else if (!byVertex.TryAdd(orbits.OfVertex(coloured.LinkVertices[link]), link))
            {
                links.Join(link, byVertex[orbits.OfVertex(coloured.LinkVertices[link])]);
            }
        }
        return new SymmetryClasses(
            [.. Enumerable.Range(0, graph.Nodes.Length).Select(orbits.OfVertex)],
            [.. Enumerable.Range(0, graph.Links.Length).Select(links.Find)],
            coloured,
            orbits);
    }
}
