namespace Lanewright.Engineering.Load;

/// <summary>Hosts of one bundle that are up and cut off.</summary>
/// <param name="Node">The bundle, a node of the whole network.</param>
/// <param name="Hosts">How many of its hosts.</param>
/// <param name="LinksLeft">How many of their links lead to something that is up.</param>
public sealed record CutBundle(int Node, int Hosts, int LinksLeft);
