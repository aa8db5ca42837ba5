namespace Lanewright.Engineering.Load;

/// <summary>Traffic between two bundles of hosts that are up, which finds no way.</summary>
/// <param name="From">The sending bundle, a node of the whole network.</param>
/// <param name="To">The receiving bundle.</param>
/// <param name="Gigabits">How much, in Gb/s.</param>
public sealed record StrandedFlow(int From, int To, double Gigabits);
