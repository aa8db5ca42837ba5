using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>How well a catalogue knows what it says besides prices: powers, port modes, lengths, ends.</summary>
public static class CatalogueFacts
{
    /// <summary>That a catalogue lacks something is read in it, whatever its figures are worth.</summary>
    public static Citation WhatIsLacking { get; } = new("catalogue", "", "", Mark.Seen);

    /// <summary>The mark of an item's facts.</summary>
    public static Mark MarkOf(ICatalogueItem item) => MarkBeside(item.PriceMark);

    /// <summary>The mark of facts that stand beside a price: the shipped catalogue has invented prices, and figures of the usual
    /// size.</summary>
    public static Mark MarkBeside(Mark price) => price == Mark.Invented ? Mark.CommonPractice : price;

    /// <summary>The catalogue as the source of an item's facts.</summary>
    public static Citation SourceOf(ICatalogueItem item) => new("catalogue", "", "", MarkOf(item));
}
