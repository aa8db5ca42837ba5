using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>What a line has to carry, over which fibre, with what.</summary>
public sealed record LineQuestion
{
    /// <summary>The tables.</summary>
    public required StandardsLibrary Standards { get; init; }

    /// <summary>What can be bought; null where nobody asks for prices.</summary>
    public Catalogue? Catalogue { get; init; }

    /// <summary>The modules that the ends take of a type, which a price counts; null where the cheapest will do.</summary>
    public Func<string, LineTerminals>? TerminalsOf { get; init; }

    /// <summary>The type that is asked for; null when any type of the rate will do.</summary>
    public WavelengthType? Type { get; init; }

    /// <summary>Rate of each channel.</summary>
    public required BitRate Rate { get; init; }

    /// <summary>The channels.</summary>
    public required ChannelPlan Channels { get; init; }

    /// <summary>Why channels lie so far apart: what was stated, or what was chosen where nothing was.</summary>
    public string SpacingWhy { get; init; } = SpacingChoice.Stated;

    /// <summary>The spans from end to end.</summary>
    public required ImmutableArray<LineSpan> Spans { get; init; }

    /// <summary>What may be used.</summary>
    public required LineEquipment Equipment { get; init; }

    /// <summary>Pairs of fibres.</summary>
    public int Pairs { get; init; } = 1;

    /// <summary>Launch of each channel into the fibre behind a booster; null when Lanewright chooses.</summary>
    public PowerLevel? Launch { get; init; }

    /// <summary>Lowest level of a transmitter; null for that of the type.</summary>
    public PowerLevel? Transmitter { get; init; }

    /// <summary>Signal over noise of a transmitter; null for that of the type.</summary>
    public Decibels? TransmitterOsnr { get; init; }

    /// <summary>Polarisation-dependent loss of the whole line; null when it is to be reckoned.</summary>
    public Decibels? Pdl { get; init; }

    /// <summary>What multiplexers take of the signal over noise where a spectrum is wider than its channel, by their maker; null when
    /// nobody says.</summary>
    public Decibels? FilterPenalty { get; init; }

    /// <summary>Margin in signal over noise to be kept.</summary>
    public Decibels LeastMargin { get; init; }

    /// <summary>How long the line is.</summary>
    public Length Length => Spans.Aggregate(default(Length), (sum, span) => sum + span.Length);

    /// <summary>Loss of all spans.</summary>
    public Decibels SpanLoss => Spans.Aggregate(default(Decibels), (sum, span) => sum + span.Loss);

    /// <summary>Loss of a multiplexer, or nothing where a single channel needs none.</summary>
    public Decibels MultiplexerLoss =>
        Channels.Channels.Length > 1 || Equipment.AlwaysMultiplexes ? Equipment.MultiplexerLoss.Value : default;

    /// <summary>Whether wavelengths are put together and taken apart.</summary>
    public bool Multiplexes => MultiplexerLoss.Value > 0;
}
