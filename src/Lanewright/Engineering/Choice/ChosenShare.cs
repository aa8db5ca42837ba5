namespace Lanewright.Engineering.Choice;

/// <summary>The way a number of links of a class are made. A class has more than one when stock runs out.</summary>
/// <param name="Solution">The way.</param>
/// <param name="Links">How many links, counted on from the shares before it.</param>
public sealed record ChosenShare(Solution Solution, int Links);
