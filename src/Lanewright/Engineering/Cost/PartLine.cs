using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Cost;

/// <summary>One line of the parts list.</summary>
/// <param name="Item">What it is.</param>
/// <param name="Length">For a cable, its length.</param>
/// <param name="Needed">How many the plan uses.</param>
/// <param name="Existing">How many of them stand there already.</param>
/// <param name="FromStock">How many come from stock, spares among them.</param>
/// <param name="Spares">How many are wanted on top.</param>
/// <param name="UnitPrice">Price of one.</param>
/// <param name="UnitPower">Most power of one.</param>
public sealed record PartLine(
    ICatalogueItem Item, Length? Length, long Needed, long Existing, long FromStock, long Spares, Money UnitPrice, Watts UnitPower)
{
    /// <summary>Of parts that lead fibres the type to order, such as <c>A-to-B</c> of a cord, <c>B</c> of an array cable or
    /// <c>straight, adapter A</c> of a cassette; empty where there is one type only.</summary>
    public string Type { get; init; } = "";

    /// <summary>How many are to be bought.</summary>
    public long ToBuy => Needed - Existing - FromStock + Spares;

    /// <summary>Whether anybody states a price.</summary>
    public bool IsPriced => UnitPrice != Money.Zero;

    /// <summary>Whether something is to be bought that nobody states a price of: every total is short of it.</summary>
    public bool IsMissingFromTotal => ToBuy > 0 && !IsPriced;

    /// <summary>What buying them costs; nothing where nobody states a price.</summary>
    public Money Total => UnitPrice * ToBuy;

    /// <summary>Power of all in use.</summary>
    public Watts Power => UnitPower * Needed;
}
