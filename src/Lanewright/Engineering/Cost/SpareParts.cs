using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Cost;

/// <summary>How many spares are kept: of what is handled and plugged, not of whole devices, and not of fibre made to order.</summary>
public static class SpareParts
{
    /// <summary>Spares for so many in use, rounded up.</summary>
    /// <param name="item">What is in use.</param>
    /// <param name="length">For a cable, its length.</param>
    /// <param name="inUse">How many.</param>
    /// <param name="spares">Spares wanted, as a part of what is in use.</param>
    public static long For(ICatalogueItem item, Length? length, long inUse, Share spares) =>
        (long)Math.Ceiling((inUse * ShareOf(item, length, spares).Value) - 1e-9);

    /// <summary>Spares as a part of what is in use: none of what is not spared.</summary>
    /// <param name="item">What is in use.</param>
    /// <param name="length">For a cable, its length.</param>
    /// <param name="spares">Spares wanted.</param>
    public static Share ShareOf(ICatalogueItem item, Length? length, Share spares) => IsSpared(item, length) ? spares : default;

    private static bool IsSpared(ICatalogueItem item, Length? length) =>
        item is ModuleModel or SundryModel || (item is CableItem cable && !cable.Lengths.IsEmpty && length <= cable.Lengths[^1]);
}
