using System.Collections.Immutable;
using Lanewright.Model.Links;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Lines;

/// <summary>What a plan says of a line between two sites. What is null or empty Lanewright decides.</summary>
public sealed record LineStatement
{
    /// <summary>Its number in the plan.</summary>
    public required int Index { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>One site.</summary>
    public required Site From { get; init; }

    /// <summary>The other.</summary>
    public required Site To { get; init; }

    /// <summary>The interface type of each wavelength.</summary>
    public WavelengthType? Type { get; init; }

    /// <summary>Rate of each channel.</summary>
    public required BitRate Rate { get; init; }

    /// <summary>Channels on each route.</summary>
    public required int Channels { get; init; }

    /// <summary>From channel to channel.</summary>
    public required Frequency Spacing { get; init; }

    /// <summary>Why channels lie so far apart.</summary>
    public required string SpacingWhy { get; init; }

    /// <summary>The lowest channel.</summary>
    public Frequency? First { get; init; }

    /// <summary>How many routes it takes: one or two.</summary>
    public required int Routes { get; init; }

    /// <summary>The spans of the first route.</summary>
    public ImmutableArray<FibreSpan> Over { get; init; } = [];

    /// <summary>The spans of the second route.</summary>
    public ImmutableArray<FibreSpan> OtherWay { get; init; } = [];

    /// <summary>The scheme, by its name.</summary>
    public string Scheme { get; init; } = "";

    /// <summary>The amplifier behind the transmitters; null where none is to be had.</summary>
    public AmplifierModel? Booster { get; init; }

    /// <summary>The amplifier before the receivers; null where none is to be had.</summary>
    public AmplifierModel? Preamplifier { get; init; }

    /// <summary>Amplifiers between spans; null where none are to be had.</summary>
    public AmplifierModel? InLine { get; init; }

    /// <summary>Loss of each multiplexer.</summary>
    public Decibels? MultiplexerLoss { get; init; }

    /// <summary>Launch of each channel behind the booster.</summary>
    public PowerLevel? Launch { get; init; }

    /// <summary>Lowest level of the transmitters.</summary>
    public PowerLevel? Transmitter { get; init; }

    /// <summary>Signal over noise of the transmitters.</summary>
    public Decibels? TransmitterOsnr { get; init; }

    /// <summary>Polarisation-dependent loss of the whole line.</summary>
    public Decibels? Pdl { get; init; }

    /// <summary>What multiplexers take of the signal over noise where a spectrum is wider than its channel.</summary>
    public Decibels? FilterPenalty { get; init; }

    /// <summary>Margin of signal over noise to be kept.</summary>
    public Decibels LeastMargin { get; init; }

    /// <summary>Longest delay in one direction.</summary>
    public Duration? LatencyMost { get; init; }

    /// <summary>Largest difference of delay between the two routes.</summary>
    public Duration? DifferenceMost { get; init; }

    /// <summary>Share of time in which it has to carry something.</summary>
    public Share? AvailabilityLeast { get; init; }

    /// <summary>Devices and cages that its modules sit in at the first site; null where the plan does not say.</summary>
    public LinkEnd? FromEnd { get; init; }

    /// <summary>The same at the second site.</summary>
    public LinkEnd? ToEnd { get; init; }

    /// <summary>Frames with its multiplexers and amplifiers at the first site: none, one for all routes, or one for each.</summary>
    public ImmutableArray<int> FromShelves { get; init; } = [];

    /// <summary>The same at the second site.</summary>
    public ImmutableArray<int> ToShelves { get; init; } = [];

    /// <summary>Panels that fibre of the outside ends in at the first site: none, one for all routes, or one for each.</summary>
    public ImmutableArray<int> FromPanels { get; init; } = [];

    /// <summary>The same at the second site.</summary>
    public ImmutableArray<int> ToPanels { get; init; } = [];

    /// <summary>Where the plan says so.</summary>
    public required SourceSpan Span { get; init; }
}
