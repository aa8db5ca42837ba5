using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>A card for a slot: ports for a chassis, or a network card for a host.</summary>
public sealed record CardModel : ICatalogueItem
{
    /// <inheritdoc/>
    public required string Name { get; init; }

    /// <inheritdoc/>
    public required string Title { get; init; }

    /// <summary>Its cages.</summary>
    public ImmutableArray<CageBank> Banks { get; init; } = [];

    /// <summary>Power under a usual load, without modules.</summary>
    public Watts Typical { get; init; }

    /// <summary>Most power, without modules.</summary>
    public Watts Maximum { get; init; }

    /// <summary>Weight.</summary>
    public Mass Weight { get; init; }

    /// <summary>Logical ports it can have; null when not said.</summary>
    public int? PortCeiling { get; init; }

    /// <inheritdoc/>
    public Money Price { get; init; }

    /// <inheritdoc/>
    public Mark PriceMark { get; init; }

    /// <inheritdoc/>
    public SourceSpan Span { get; init; }
}
