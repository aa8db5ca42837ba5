using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>Nodes and links that are alike: merged only by automorphisms of the fabric that were verified arc by arc. What could not be
/// proven alike within the work allowed stays apart, so classes may be too fine and are never too coarse.</summary>
public sealed class SymmetryClasses
{
    private SymmetryClasses(ImmutableArray<int> nodeClasses, ImmutableArray<int> linkClasses)
    {
        NodeClasses = nodeClasses;
        LinkClasses = linkClasses;
    }

    /// <summary>The class of each node: the lowest node that is alike.</summary>
    public ImmutableArray<int> NodeClasses { get; }

    /// <summary>The class of each link: the lowest link that is alike, in either direction.</summary>
    public ImmutableArray<int> LinkClasses { get; }

    /// <summary>Finds the classes. With traffic, only what the traffic too treats alike is merged.</summary>
    public static SymmetryClasses Of(FabricGraph graph, TrafficMatrix? traffic = null) => throw new NotSupportedException();
}
