using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>What may stand at the ends of a line and between them. An amplifier that is null is not to be had.</summary>
public sealed record LineEquipment
{
    /// <summary>Loss of a multiplexer, and of what takes the wavelengths apart again.</summary>
    public required Known<Decibels> MultiplexerLoss { get; init; }

    /// <summary>Whether wavelengths are put together even if there is one alone.</summary>
    public bool AlwaysMultiplexes { get; init; }

    /// <summary>Polarisation-dependent loss of a multiplexer in dB.</summary>
    public required Known<double> MultiplexerPdl { get; init; }

    /// <summary>The amplifier behind the transmitters.</summary>
    public AmplifierModel? Booster { get; init; }

    /// <summary>The amplifier before the receivers.</summary>
    public AmplifierModel? Preamplifier { get; init; }

    /// <summary>The amplifiers between spans.</summary>
    public AmplifierModel? InLine { get; init; }

    /// <summary>Output of each channel that a preamplifier is set to where nothing speaks against it.</summary>
    public required Known<PowerLevel> PreferredOutput { get; init; }

    /// <summary>The usual equipment, by the tables.</summary>
    public static LineEquipment Usual(StandardsLibrary standards)
    {
        var amplifier = standards.Amplifier("EDFA");
        return new LineEquipment
        {
            MultiplexerLoss = standards.LineValue("multiplexer", "loss").As(Decibels.From),
            MultiplexerPdl = standards.LineValue("multiplexer", "pdl"),
            Booster = amplifier,
            Preamplifier = amplifier,
            InLine = amplifier,
            PreferredOutput = standards.LineValue("EDFA", "output-preferred").As(PowerLevel.FromDbm),
        };
    }
}
