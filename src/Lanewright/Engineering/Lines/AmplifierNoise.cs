using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Noise of optical amplifiers in the exact form, both polarisations, at one carrier frequency.</summary>
public static class AmplifierNoise
{
    private const double Planck = 6.62607015e-34;

    // The reference band of signal over noise in optics: 12.5 GHz, spoken of as 0.1 nm.
    private const double ReferenceHz = 12.5e9;

    /// <summary>Noise that an amplifier adds in a band, in watts.</summary>
    public static double Watts(Decibels figure, Decibels gain, double carrierHz, double bandHz) =>
        Planck * carrierHz * ((figure.Ratio * gain.Ratio) - 1) * bandHz;

    /// <summary>Signal over the noise of one amplifier alone.</summary>
    public static Decibels Over(PowerLevel input, Decibels figure, Decibels gain, double carrierHz)
    {
        var watts = Math.Pow(10, input.Dbm / 10) / 1000;
        return Decibels.From(10 * Math.Log10(watts / (Planck * carrierHz * ReferenceHz * (figure.Ratio - (1 / gain.Ratio)))));
    }

    /// <summary>Signal over the noise of all stages together: noises add as plain ratios.</summary>
    public static Decibels Together(IEnumerable<Decibels> stages)
    {
        ArgumentNullException.ThrowIfNull(stages);
        return Decibels.From(-10 * Math.Log10(stages.Sum(static stage => 1 / stage.Ratio)));
    }
}
