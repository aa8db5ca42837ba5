using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Reliability;

/// <summary>Spares of one part for a level.</summary>
/// <param name="Item">The part.</param>
/// <param name="Length">For a cable, its length.</param>
/// <param name="InUse">How many are in use.</param>
/// <param name="Each">How often one fails.</param>
/// <param name="Expected">Failures to expect until more arrive.</param>
/// <param name="OneOnShelf">Spares by convention S.</param>
/// <param name="NeverShort">Spares by convention F.</param>
/// <param name="Count">The convention that counts.</param>
public sealed record SpareNeed(
    ICatalogueItem Item, Length? Length, long InUse, FailureIntensity Each, double Expected, long OneOnShelf, long NeverShort,
    SpareCount Count)
{
    /// <summary>Spares to keep.</summary>
    public long Kept => Count == SpareCount.OneOnShelf ? OneOnShelf : NeverShort;
}
