using Lanewright.Model.Catalogues;

namespace Lanewright.Model.Wanted;

/// <summary>Equipment that exists and stays: used first, and nothing is paid for it.</summary>
/// <param name="Item">A device, a card, a module or a small part.</param>
/// <param name="Count">How many there are.</param>
public sealed record Reused(ICatalogueItem Item, int Count);
