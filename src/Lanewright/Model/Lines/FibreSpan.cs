using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Lines;

/// <summary>Fibre between two sites.</summary>
public sealed record FibreSpan
{
    /// <summary>Its number in the plan.</summary>
    public required int Index { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>One site.</summary>
    public required Site From { get; init; }

    /// <summary>The other.</summary>
    public required Site To { get; init; }

    /// <summary>How long it is; above zero.</summary>
    public required Length Length { get; init; }

    /// <summary>Its kind.</summary>
    public required LineFibre Fibre { get; init; }

    /// <summary>Loss a kilometre; null for that of the kind.</summary>
    public Attenuation? Attenuation { get; init; }

    /// <summary>Measured loss from end to end; null when it is to be computed.</summary>
    public Decibels? MeasuredLoss { get; init; }

    /// <summary>Measured dispersion; null for that of the kind.</summary>
    public DispersionRate? Dispersion { get; init; }

    /// <summary>Measured polarisation-mode dispersion in ps/sqrt(km); null for that of the kind.</summary>
    public double? Pmd { get; init; }

    /// <summary>Mated pairs.</summary>
    public int Connectors { get; init; }

    /// <summary>Loss of each mated pair; null for the usual.</summary>
    public Decibels? ConnectorLoss { get; init; }

    /// <summary>Splices.</summary>
    public int Splices { get; init; }

    /// <summary>Loss of each splice; null for the usual.</summary>
    public Decibels? SpliceLoss { get; init; }

    /// <summary>Loss kept back for ageing.</summary>
    public Decibels Ageing { get; init; }

    /// <summary>Years of repairs that loss is kept back for.</summary>
    public int RepairYears { get; init; }

    /// <summary>Ducts, bridges, entries and the like that it shares with others of the same word.</summary>
    public ImmutableArray<string> Ducts { get; init; } = [];

    /// <summary>Whether amplifiers may stand anywhere along it, and not at its sites alone.</summary>
    public bool HasHuts { get; init; }

    /// <summary>What using it costs, in any unit that all spans share; null when not said.</summary>
    public double? Cost { get; init; }

    /// <summary>Pairs of fibres to be had.</summary>
    public int Pairs { get; init; } = 1;

    /// <summary>Where the plan says so.</summary>
    public required SourceSpan Span { get; init; }
}
