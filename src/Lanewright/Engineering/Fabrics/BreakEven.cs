using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>What would change the answer: stretches of one quantity, each with the option that is cheapest over the years there.</summary>
/// <param name="Quantity">The quantity.</param>
/// <param name="Now">Its value in the question.</param>
/// <param name="Stretches">Stretches side by side, lowest first; what is one option in one stretch is another in the next.</param>
public sealed record BreakEven(BreakEvenQuantity Quantity, decimal Now, ImmutableArray<BreakEvenStretch> Stretches)
{
    /// <summary>Whether the least price is a chain of straight lines with all its corners known; otherwise it goes in steps.</summary>
    public bool IsChain => Quantity is BreakEvenQuantity.ModulePrice or BreakEvenQuantity.EnergyPrice;

    /// <summary>Whether nothing else is cheaper anywhere in the range, also between the values that were asked.</summary>
    public bool IsWholeRangeProven => Stretches.All(s => s.IsProven);

    /// <summary>Values of a quantity that goes in steps that were asked; the others follow from bounds.</summary>
    public int Asked { get; init; }

    /// <summary>How far the cheapest option at a value that was asked may be from the best, as a part of its price; the worst of all
    /// values.</summary>
    public Share Gap { get; init; }
}
