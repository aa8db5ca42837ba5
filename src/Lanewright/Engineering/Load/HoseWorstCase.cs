using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>The worst that any traffic can do to each link when every host keeps to its rate, sending and receiving.</summary>
/// <param name="Links">One entry for each class of links and direction that carries anything, the fullest first.</param>
public sealed record HoseWorstCase(ImmutableArray<LinkWorstCase> Links)
{
    /// <summary>The fullest link of all; null when nothing can flow.</summary>
    public LinkWorstCase? Worst => Links.IsEmpty ? null : Links[0];

    /// <summary>Computes the worst case of every class of links.</summary>
    /// <exception cref="ArgumentException">The rule is the ideal split, which has no fixed shares to take the worst of.</exception>
    public static HoseWorstCase Of(FabricGraph graph, ImmutableArray<Terminal> terminals, SplitRule rule) => throw new NotSupportedException();
}
