using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Modules, cables or small parts alike in an option.</summary>
/// <param name="Item">What they are.</param>
/// <param name="Length">For cables, their length.</param>
/// <param name="Count">How many are in use at the start.</param>
/// <param name="ToBuy">How many are bought at the start: with spares, without what exists already.</param>
/// <param name="UnitPrice">Price of one.</param>
public sealed record FabricPart(ICatalogueItem Item, Length? Length, long Count, long ToBuy, Money UnitPrice);
