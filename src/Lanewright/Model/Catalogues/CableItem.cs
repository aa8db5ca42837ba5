using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>What all cables have in common: stocked lengths, a price by length, a diameter.</summary>
public abstract record CableItem : ICatalogueItem
{
    /// <inheritdoc/>
    public required string Name { get; init; }

    /// <inheritdoc/>
    public required string Title { get; init; }

    /// <summary>Legs of a fan-out; 1 for a straight cable.</summary>
    public int Legs { get; init; } = 1;

    /// <summary>Lengths it is stocked in, shortest first.</summary>
    public required ImmutableArray<Length> Lengths { get; init; }

    /// <summary>Beyond the stocked lengths it is made to order in these steps; null when it is not.</summary>
    public Length? Step { get; init; }

    /// <summary>Price of each metre.</summary>
    public Money PricePerMetre { get; init; }

    /// <summary>Outside diameter.</summary>
    public Length Diameter { get; init; }

    /// <summary>Weight of a kilometre of it; null when nobody states it.</summary>
    public Mass? WeightPerKilometre { get; init; }

    /// <inheritdoc/>
    public Money Price { get; init; }

    /// <inheritdoc/>
    public Mark PriceMark { get; init; }

    /// <inheritdoc/>
    public SourceSpan Span { get; init; }

    /// <summary>The shortest length that can be ordered and is not below what is needed, or null when there is none.</summary>
    public Length? OrderedFor(Length needed)
    {
        foreach (var length in Lengths)
            if (length >= needed) return length;
        if (Step is not { } step || step.Metres <= 0) return null;
        return Length.FromMetres(Math.Ceiling((needed.Metres / step.Metres) - 1e-9) * step.Metres);
    }

    /// <summary>Price of one of a given length.</summary>
    public Money PriceOf(Length length) => Price + Money.FromUnits((double)PricePerMetre.Units * length.Metres);
}
