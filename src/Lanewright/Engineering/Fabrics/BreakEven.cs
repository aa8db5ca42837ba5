using System.Collections.Immutable;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What would change the answer: stretches of one quantity, each with the option that is cheapest over the years there.</summary>
/// <param name="Quantity">The quantity.</param>
/// <param name="Now">Its value in the question.</param>
/// <param name="Stretches">Stretches side by side, lowest first; what is one option in one stretch is another in the next.</param>
public sealed record BreakEven(BreakEvenQuantity Quantity, decimal Now, ImmutableArray<BreakEvenStretch> Stretches);
