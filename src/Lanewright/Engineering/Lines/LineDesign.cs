using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>A line as it would be built in one scheme, with all comparisons.</summary>
public sealed record LineDesign
{
    /// <summary>The scheme.</summary>
    public required LineScheme Scheme { get; init; }

    /// <summary>The interface type it was reckoned with; empty when there is none.</summary>
    public required string TypeName { get; init; }

    /// <summary>Whether it was worked out; what lacks an amplifier or a value was not, and so has no price.</summary>
    public bool IsBuilt { get; init; } = true;

    /// <summary>The comparisons.</summary>
    public required ImmutableArray<Check> Checks { get; init; }

    /// <summary>The channels, lowest frequency first.</summary>
    public required ImmutableArray<LineChannel> Channels { get; init; }

    /// <summary>Delay of the fibre in one direction; null when not known.</summary>
    public Known<Duration>? Latency { get; init; }

    /// <summary>The spans it is built over.</summary>
    public ImmutableArray<LineSpan> Spans { get; init; } = [];

    /// <summary>The amplifiers from the transmitter on.</summary>
    public ImmutableArray<LineAmplifier> Amplifiers { get; init; } = [];

    /// <summary>Launch of each channel into the fibre; null where it is left to the transmitter.</summary>
    public PowerLevel? Launch { get; init; }

    /// <summary>How much more the highest channel is launched with than the lowest, against what Raman scattering takes from it.</summary>
    public Decibels LaunchTilt { get; init; }

    /// <summary>Power of all channels together where the fibre begins; null when not known.</summary>
    public PowerLevel? Total { get; init; }

    /// <summary>Attenuator before each receiver; zero for none.</summary>
    public Decibels ReceiverPad { get; init; }

    /// <summary>Whether wavelengths are put together and taken apart.</summary>
    public bool Multiplexes { get; init; }

    /// <summary>The way of the channel with the least margin.</summary>
    public ImmutableArray<LineStage> Stages { get; init; } = [];

    /// <summary>The lowest level that the receivers bear, by what the line loses at most; null where signal over noise decides or nothing
    /// is known.</summary>
    public PowerLevel? LowestReceived { get; init; }

    /// <summary>Tilt that Raman scattering makes over the comb, all spans together.</summary>
    public Decibels RamanTilt { get; init; }

    /// <summary>What all comparisons come to.</summary>
    public Verdict Verdict => Links.Checks.Verdict(Checks);

    /// <summary>The weakest mark of the values used.</summary>
    public Mark Mark => Links.Checks.Mark(Checks);

    /// <summary>The comparison of levels, gains and noises that is nearest to its limit, or farthest beyond; null without any.</summary>
    public Check? Tightest => Checks
        .Where(c => c is { IsAdvice: false, MarginUnit: "dB", Margin: not null } && c.Name is not LineCheckNames.Pdl)
        .MinBy(c => c.Margin);

    /// <summary>The channel with the least margin; null when no margin is known.</summary>
    public LineChannel? Worst => Channels.Where(c => c.Margin is not null).MinBy(c => c.Margin);
}
