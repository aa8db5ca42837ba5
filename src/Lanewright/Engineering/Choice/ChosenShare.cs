using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>The way a number of links of a class are made. A class has more than one when stock runs out.</summary>
/// <param name="Solution">The way.</param>
/// <param name="Links">How many links, counted on from the shares before it.</param>
/// <param name="Price">Price of each, what is in stock counted at nothing.</param>
public sealed record ChosenShare(Solution Solution, int Links, Money Price);
