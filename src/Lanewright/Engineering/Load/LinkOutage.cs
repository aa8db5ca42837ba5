namespace Lanewright.Engineering.Load;

/// <summary>Physical links of one <see cref="FabricLink"/> that are down together.</summary>
/// <param name="Link">The link, as an index.</param>
/// <param name="Count">How many of its parallel links are down.</param>
/// <param name="FirstMember">For a link of a bundle of hosts: the member that is hit first; the loss goes on with the members after it,
/// each losing all its links before the next is hit. Between switches it means nothing.</param>
public readonly record struct LinkOutage(int Link, int Count, int FirstMember = 0);
