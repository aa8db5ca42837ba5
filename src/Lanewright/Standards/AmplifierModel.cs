using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>An optical amplifier as a line reckons with it: its noise as a figure or as a published mask, and its limits. A limit that is
/// null is not known.</summary>
public sealed record AmplifierModel
{
    /// <summary>The name.</summary>
    public required string Name { get; init; }

    /// <summary>Noise figure; null where a mask holds.</summary>
    public Known<Decibels>? Figure { get; init; }

    /// <summary>Whether a noise figure is stated for it that is below that of its kind.</summary>
    public bool IsQuieter { get; private init; }

    /// <summary>Coefficients of the mask, cubic first: signal over noise in dB of the input level in dBm; null where a figure
    /// holds.</summary>
    public Known<(double Cubic, double Square, double Linear, double Constant)>? Mask { get; init; }

    /// <summary>Lowest input of a channel that the mask holds for.</summary>
    public Known<PowerLevel>? InputMin { get; init; }

    /// <summary>Highest input of a channel that the mask holds for.</summary>
    public Known<PowerLevel>? InputMax { get; init; }

    /// <summary>Lowest gain.</summary>
    public Known<Decibels>? GainMin { get; init; }

    /// <summary>Highest gain.</summary>
    public Known<Decibels>? GainMax { get; init; }

    /// <summary>Highest output, all channels together.</summary>
    public Known<PowerLevel>? OutputMax { get; init; }

    /// <summary>Largest tilt it can be set to over a comb; null where it has none.</summary>
    public Known<Decibels>? TiltMax { get; init; }

    /// <summary>Polarisation-dependent loss in dB.</summary>
    public Known<double>? Pdl { get; init; }

    /// <summary>Mean polarisation-mode dispersion in ps.</summary>
    public Known<double>? Pmd { get; init; }

    /// <summary>Who says how noisy it is.</summary>
    public Citation NoiseSource => Figure?.Source ?? Mask?.Source ?? Citation.OfPlan;

    /// <summary>Reads a model from its rows; null when they say nothing of noise.</summary>
    public static AmplifierModel? Read(FactSheet sheet)
    {
        var mask = sheet.Real("mask-cubic") is { } cubic && sheet.Real("mask-square") is { } square
            && sheet.Real("mask-linear") is { } linear && sheet.Real("mask-constant") is { } constant
                ? constant.As(c => (cubic.Value, square.Value, linear.Value, c))
                : (Known<(double, double, double, double)>?)null;
        var figure = sheet.Decibels("noise-figure");
        if (mask is null && figure is null) return null;
        return new AmplifierModel
        {
            Name = sheet.Subject,
            Figure = figure,
            Mask = mask,
            InputMin = sheet.Level("input-min"),
            InputMax = sheet.Level("input-max"),
            GainMin = sheet.Decibels("gain-min"),
            GainMax = sheet.Decibels("gain-max"),
            OutputMax = sheet.Level("output-max"),
            TiltMax = sheet.Decibels("tilt-max"),
            Pdl = sheet.Real("pdl"),
            Pmd = sheet.Real("pmd"),
        };
    }

    /// <summary>The same amplifier with a noise figure that is stated.</summary>
    public AmplifierModel With(Decibels figure) => this with
    {
        Figure = new Known<Decibels>(figure, Citation.OfPlan), Mask = null, IsQuieter = Figure is { } usual && figure < usual.Value,
    };
}
