namespace Lanewright.Engineering.Load;

/// <summary>Members of a bundle of hosts that are down themselves.</summary>
/// <param name="Node">The bundle, as an index.</param>
/// <param name="First">The first member that is down, from 0.</param>
/// <param name="Count">How many are down, one after the other.</param>
public readonly record struct MemberOutage(int Node, int First, int Count);
