using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>A small part: an attenuator or an adapter.</summary>
public sealed record SundryModel : ICatalogueItem
{
    /// <inheritdoc/>
    public required string Name { get; init; }

    /// <inheritdoc/>
    public required string Title { get; init; }

    /// <summary>Loss of an attenuator; null for anything else.</summary>
    public Decibels? Attenuation { get; init; }

    /// <summary>What an adapter turns into what, such as <c>QSFP-to-SFP</c>; empty for anything else.</summary>
    public string Adapts { get; init; } = "";

    /// <inheritdoc/>
    public Money Price { get; init; }

    /// <inheritdoc/>
    public Mark PriceMark { get; init; }

    /// <inheritdoc/>
    public SourceSpan Span { get; init; }
}
