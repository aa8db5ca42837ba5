using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Parts alike of an option that draw power.</summary>
/// <param name="What">What they are: a switch, a card, a module, or one end of an active cable.</param>
/// <param name="Count">How many are in use at the start.</param>
/// <param name="Each">What one draws: a switch or card under a usual load, a module or cable end at the most.</param>
public sealed record FabricDraw(string What, long Count, Watts Each);
