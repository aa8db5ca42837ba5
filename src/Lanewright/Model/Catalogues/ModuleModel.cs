using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>A pluggable module.</summary>
public sealed record ModuleModel : ICatalogueItem
{
    /// <inheritdoc/>
    public required string Name { get; init; }

    /// <inheritdoc/>
    public required string Title { get; init; }

    /// <summary>Its body.</summary>
    public required FormFactor FormFactor { get; init; }

    /// <summary>What it can run.</summary>
    public required ImmutableArray<Application> Applications { get; init; }

    /// <summary>Declared most power.</summary>
    public required Watts Power { get; init; }

    /// <summary>Power class of its form factor; 0 when not said.</summary>
    public int PowerClass { get; init; }

    /// <summary>Whether it ends the host's code and adds its own on the media side.</summary>
    public bool HasOwnFec { get; init; }

    /// <inheritdoc/>
    public Money Price { get; init; }

    /// <inheritdoc/>
    public Mark PriceMark { get; init; }

    /// <inheritdoc/>
    public SourceSpan Span { get; init; }
}
