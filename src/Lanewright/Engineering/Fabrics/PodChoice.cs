namespace Lanewright.Engineering.Fabrics;

/// <summary>Leaves of a kind of host in so many pods.</summary>
/// <param name="Row">The leaves.</param>
/// <param name="Pods">The pods.</param>
/// <param name="Least">Hundredths that leaves and aggregation switches cost at the least.</param>
/// <param name="Total">The same with the links to cores.</param>
internal sealed record PodChoice(PodRow Row, int Pods, double Least, double Total);
