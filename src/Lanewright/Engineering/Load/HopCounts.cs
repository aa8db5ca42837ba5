namespace Lanewright.Engineering.Load;

/// <summary>How many links lie between hosts, by shortest path.</summary>
/// <param name="Shortest">The fewest between two bundles that are joined.</param>
/// <param name="Longest">The most between two bundles that are joined.</param>
/// <param name="Mean">The mean over ordered pairs of bundles that are joined.</param>
/// <param name="PairsApart">Ordered pairs of bundles without a path.</param>
public sealed record HopCounts(int Shortest, int Longest, double Mean, long PairsApart)
{
    /// <summary>Counts between all bundles of hosts; null with fewer than two.</summary>
    public static HopCounts? Of(FabricGraph graph) => throw new NotSupportedException();
}
