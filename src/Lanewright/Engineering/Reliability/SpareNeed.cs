using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Reliability;

/// <summary>Spares of one part.</summary>
/// <param name="Item">The part.</param>
/// <param name="Length">For a cable, its length.</param>
/// <param name="InUse">How many are in use.</param>
/// <param name="ByShare">Spares by the share of the policy.</param>
/// <param name="ByLevel">Spares by the level of the policy; null where no rate of failure is stated.</param>
public sealed record SpareNeed(ICatalogueItem Item, Length? Length, long InUse, long ByShare, SpareLevelNeed? ByLevel)
{
    /// <summary>Spares to keep: the more of the two.</summary>
    public long Kept => Math.Max(ByLevel?.Count ?? 0, ByShare);
}
