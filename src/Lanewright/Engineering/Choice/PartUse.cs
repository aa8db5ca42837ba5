using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>A part a link uses, and how many links share one.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Length">For a cable, the length ordered.</param>
/// <param name="SharedBy">Links that share one of it.</param>
/// <param name="Quantity">How many are used by those links.</param>
public sealed record PartUse(ICatalogueItem Item, Length? Length, int SharedBy, int Quantity = 1)
{
    /// <summary>Price of one.</summary>
    public Money UnitPrice => Item is CableItem cable && Length is { } length ? cable.PriceOf(length) : Item.Price;
}
