namespace Lanewright.Engineering.Load;

/// <summary>Physical links of one <see cref="FabricLink"/> that are down together.</summary>
/// <param name="Link">The link, as an index.</param>
/// <param name="Count">How many of its parallel links are down.</param>
/// <param name="First">The first of them: parallel links are numbered from 0, those of a bundle of hosts member by member; the loss
/// goes on with the next ones, round and round.</param>
public readonly record struct LinkOutage(int Link, int Count, int First = 0);
