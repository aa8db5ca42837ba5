namespace Lanewright.Engineering.Plant;

/// <summary>A way through trunks that links take.</summary>
/// <param name="Way">The trunks.</param>
/// <param name="Statement">Index of the first set of links that takes it.</param>
/// <param name="FirstLink">Its first link.</param>
/// <param name="Links">How many links take it.</param>
/// <param name="Polarity">Where transmitters and receivers meet, followed for the first link.</param>
public sealed record WayState(TrunkWay Way, int Statement, int FirstLink, long Links, WayPolarity Polarity);
