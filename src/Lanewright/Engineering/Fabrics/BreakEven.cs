using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What would change the answer: stretches of one quantity, each with the option that is cheapest over the years there.</summary>
/// <param name="Quantity">The quantity.</param>
/// <param name="Now">Its value in the question.</param>
/// <param name="Stretches">Stretches side by side, lowest first; what is one option in one stretch is another in the next.</param>
public sealed record BreakEven(BreakEvenQuantity Quantity, decimal Now, ImmutableArray<BreakEvenStretch> Stretches)
{
    /// <summary>Whether nothing is cheaper anywhere in the range, also between the values that were asked: of a price the least cost is a
    /// concave chain, of other quantities it goes in steps that may hide between two values.</summary>
    public bool IsWholeRangeProven => Quantity is BreakEvenQuantity.ModulePrice or BreakEvenQuantity.EnergyPrice;

    /// <summary>How far the cheapest option at a value that was asked may be from the best, as a part of its price; the worst of all
    /// values.</summary>
    public Share Gap { get; init; }
}
