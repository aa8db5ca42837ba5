using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>One channel of a line at its receiver.</summary>
public sealed record LineChannel
{
    /// <summary>Its frequency.</summary>
    public required Frequency Frequency { get; init; }

    /// <summary>Power at the receiver; null when not known.</summary>
    public PowerLevel? Received { get; init; }

    /// <summary>Signal over the noise of all amplifiers, in the reference width; null without amplifiers.</summary>
    public Decibels? Osnr { get; init; }

    /// <summary>Signal over nonlinear noise, in the reference width.</summary>
    public Decibels? OverNonlinear { get; init; }

    /// <summary>Signal over all noise, that of the transmitter included, in the width of the channel.</summary>
    public Decibels? Gsnr { get; init; }

    /// <summary>The same in the reference width, as required values are told.</summary>
    public Decibels? GsnrInReference { get; init; }

    /// <summary>Signal over noise that the receiver needs; null when not known.</summary>
    public Decibels? Required { get; init; }

    /// <summary>Penalties from the tables of the type.</summary>
    public Decibels Penalty { get; init; }

    /// <summary>What is left of signal over noise after requirement and penalties; null when the requirement is not known.</summary>
    public Decibels? Margin { get; init; }

    /// <summary>The margin to expect with symbols as they are; null where no correction is known to hold.</summary>
    public Decibels? ExpectedMargin { get; init; }

    /// <summary>Dispersion from end to end, at its largest; null when not known.</summary>
    public Dispersion? Dispersion { get; init; }

    /// <summary>Share of wrong bits before the code, of a transceiver that just meets its specification; null when not known.</summary>
    public double? ErrorsBeforeCode { get; init; }

    /// <summary>How far they are from what the code corrects, in dB of quality; null when not known.</summary>
    public Decibels? CodeMargin { get; init; }

    /// <summary>How far above the bound of Shannon the signal over noise is; null when not known.</summary>
    public Decibels? OverShannon { get; init; }
}
