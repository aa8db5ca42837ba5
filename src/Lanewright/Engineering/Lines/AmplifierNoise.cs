using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>Noise of optical amplifiers in the exact form, both polarisations, at one carrier frequency.</summary>
public static class AmplifierNoise
{
    private const double Planck = 6.62607015e-34;

    /// <summary>Noise that an amplifier adds in a band, in watts.</summary>
    public static double Watts(Decibels figure, Decibels gain, Frequency carrier, Frequency band) =>
        Planck * carrier.Hertz * ((figure.Ratio * gain.Ratio) - 1) * band.Hertz;

    /// <summary>Signal over the noise of one amplifier alone, in a width.</summary>
    public static Decibels Over(PowerLevel input, Decibels figure, Decibels gain, Frequency carrier, Frequency width) =>
        Decibels.OfRatio(input.Watts / AtInput(figure, gain, carrier, width));

    /// <summary>Noise of an amplifier as if it came in with the signal, in watts.</summary>
    public static double AtInput(Decibels figure, Decibels gain, Frequency carrier, Frequency width) =>
        Planck * carrier.Hertz * width.Hertz * (figure.Ratio - (1 / gain.Ratio));

    /// <summary>Signal over noise by the mask of a model that has one.</summary>
    public static Decibels ByMask((double Cubic, double Square, double Linear, double Constant) mask, PowerLevel input)
    {
        var p = input.Dbm;
        return Decibels.From((((((mask.Cubic * p) + mask.Square) * p) + mask.Linear) * p) + mask.Constant);
    }

    /// <summary>The noise figure that comes to the same at high gain as a signal over noise.</summary>
    public static Decibels FigureOf(PowerLevel input, Decibels overNoise, Frequency carrier, Frequency width) =>
        Decibels.OfRatio(input.Watts / (Planck * carrier.Hertz * width.Hertz)) - overNoise;

    /// <summary>Signal over the noise of all stages together: noises add as plain ratios.</summary>
    public static Decibels Together(IEnumerable<Decibels> stages)
    {
        ArgumentNullException.ThrowIfNull(stages);
        return Decibels.OfRatio(1 / stages.Sum(static stage => 1 / stage.Ratio));
    }
}
