using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Reliability;

/// <summary>Spares that last until more arrive.</summary>
/// <param name="Each">How often one fails.</param>
/// <param name="Expected">Failures to expect until more arrive.</param>
/// <param name="OneOnShelf">Spares by convention S.</param>
/// <param name="NeverShort">Spares by convention F.</param>
/// <param name="Convention">The convention that counts.</param>
/// <param name="Source">Where the rate comes from, in the words of the plan; empty where it does not say.</param>
public sealed record SpareLevelNeed(
    FailureIntensity Each, double Expected, long OneOnShelf, long NeverShort, SpareCount Convention, string Source)
{
    /// <summary>Spares by the convention that counts.</summary>
    public long Count => Convention == SpareCount.OneOnShelf ? OneOnShelf : NeverShort;
}
