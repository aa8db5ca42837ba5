using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A part of a line, and what it costs.</summary>
/// <param name="Item">The part; one of no catalogue where none has it.</param>
/// <param name="Count">How many.</param>
/// <param name="Each">Price of one; null where nobody states it.</param>
public sealed record LinePart(ICatalogueItem Item, int Count, Money? Each)
{
    /// <summary>Price of all of them; null where nobody states it.</summary>
    public Money? Together => Each is { } each ? each * Count : null;
}
