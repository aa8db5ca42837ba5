using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Plant;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Links;

/// <summary>What a plan says of a set of links.</summary>
public sealed record LinkStatement
{
    /// <summary>Its number in the plan.</summary>
    public required int Index { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>One side.</summary>
    public required LinkEnd From { get; init; }

    /// <summary>The other.</summary>
    public required LinkEnd To { get; init; }

    /// <summary>Who is linked to whom.</summary>
    public LinkPattern Pattern { get; init; }

    /// <summary>Links of each pair; for striped, links of each device of the first side.</summary>
    public int Count { get; init; } = 1;

    /// <summary>For runs: consecutive devices of the first side in each run; null when they are spread evenly.</summary>
    public int? FromRun { get; init; }

    /// <summary>For runs: consecutive devices of the second side in each run.</summary>
    public int ToRun { get; init; } = 1;

    /// <summary>Rate of each link.</summary>
    public required BitRate Rate { get; init; }

    /// <summary>Media allowed by name (DAC, AEC, AOC, OS2, OM4, CAT6A and so on); empty when left open.</summary>
    public ImmutableArray<string> Media { get; init; } = [];

    /// <summary>The optical interface type, when fixed.</summary>
    public InterfaceType? Type { get; init; }

    /// <summary>The copper interface type, when fixed.</summary>
    public CopperType? CopperType { get; init; }

    /// <summary>The assembly, when fixed.</summary>
    public AssemblyModel? Assembly { get; init; }

    /// <summary>The cord, when fixed.</summary>
    public CordModel? Cord { get; init; }

    /// <summary>The length of the cable, when fixed.</summary>
    public Length? Length { get; init; }

    /// <summary>Trunks the links are patched through, in their order; empty for one cable from end to end.</summary>
    public ImmutableArray<TrunkGroup> Through { get; init; } = [];

    /// <summary>Mated pairs in the channel, when fixed.</summary>
    public int? Connections { get; init; }

    /// <summary>Loss of each mated pair, when fixed.</summary>
    public Decibels? ConnectionLoss { get; init; }

    /// <summary>Splices in the channel, when fixed.</summary>
    public int? Splices { get; init; }

    /// <summary>Loss of each splice, when fixed.</summary>
    public Decibels? SpliceLoss { get; init; }

    /// <summary>Reflectance of each connection, when fixed.</summary>
    public Decibels? Reflectance { get; init; }

    /// <summary>Measured fibre attenuation, when known.</summary>
    public Attenuation? Attenuation { get; init; }

    /// <summary>Where <see cref="Attenuation"/> was measured; null when it holds at every wavelength of the link.</summary>
    public Wavelength? AttenuationAt { get; init; }

    /// <summary>Measured loss of the whole channel, when known.</summary>
    public Decibels? MeasuredLoss { get; init; }

    /// <summary>An attenuator in the channel, when fixed.</summary>
    public Decibels? Attenuator { get; init; }

    /// <summary>Whether the cable lies there already and is not bought.</summary>
    public bool IsExisting { get; init; }

    /// <summary>The side of pathways its cables lie in; empty for any.</summary>
    public string Side { get; init; } = "";

    /// <summary>Index of the statement whose links of the same device go other ways than these; null when nothing is asked.</summary>
    public int? ApartFrom { get; init; }

    /// <summary>Longest delay allowed, when there is one.</summary>
    public Duration? LatencyMax { get; init; }

    /// <summary>The network the links belong to; empty for the main one.</summary>
    public string Network { get; init; } = "";

    /// <summary>Where the plan says so.</summary>
    public SourceSpan Span { get; init; }
}
