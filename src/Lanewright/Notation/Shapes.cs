using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Notation;

/// <summary>The single values that any text may hold: names, numbers, quantities with units.</summary>
public static class Shapes
{
    private const string Number = @"[-+]?[0-9]*\.?[0-9]+([eE][-+]?[0-9]+)?";

    /// <summary>Any text that is not empty.</summary>
    public static ScalarShape Text { get; } = new("a text", t => t.Length > 0) { MayBeNumber = true };

    /// <summary>Yes or no.</summary>
    public static ScalarShape Switch { get; } =
        new("yes or no", t => t is "yes" or "no" or "true" or "false" or "on" or "off") { Choices = ["yes", "no"], MayBeSwitch = true };

    /// <summary>A length with its unit.</summary>
    public static ScalarShape Length { get; } = Quantity("a length such as '2.5 m'", UnitText.Lengths, least: 0);

    /// <summary>A position with its unit, which may be negative.</summary>
    public static ScalarShape Position { get; } = Quantity("a position such as '2.5 m'", UnitText.Lengths);

    /// <summary>A data rate above nothing.</summary>
    public static ScalarShape Rate { get; } = Quantity("a rate such as '400G'", UnitText.Rates, least: 1e-9);

    /// <summary>A loss in dB, zero or more.</summary>
    public static ScalarShape Loss { get; } = Quantity("a loss such as '0.35 dB'", UnitText.Ratios, least: 0);

    /// <summary>A reflectance in dB, below zero.</summary>
    public static ScalarShape Reflectance { get; } = Quantity("a reflectance such as '-45 dB'", UnitText.Ratios, most: 0);

    /// <summary>A loss per length, perhaps with the wavelength it was measured at.</summary>
    public static ScalarShape Attenuation { get; } =
        new("an attenuation such as '0.35 dB/km' or '0.35 dB/km@1310nm'", t => UnitText.TryReadAttenuation(t, out _, out _))
        {
            Pattern = $"^\\s*{Number}\\s*(dB\\/km|dB\\/m)\\s*(@\\s*{Number}\\s*nm\\s*)?$",
        };

    /// <summary>A power.</summary>
    public static ScalarShape Power { get; } = Quantity("a power such as '12 W'", UnitText.Powers, least: 0);

    /// <summary>A weight.</summary>
    public static ScalarShape Mass { get; } = Quantity("a weight such as '18 kg'", UnitText.Masses, least: 0);

    /// <summary>A current above nothing.</summary>
    public static ScalarShape Current { get; } = Quantity("a current such as '32 A'", UnitText.Currents, least: 1e-3);

    /// <summary>A voltage that equipment is fed with: low voltage ends at 1500 V of direct current.</summary>
    public static ScalarShape Voltage { get; } =
        Quantity("a voltage from 12 V to 1500 V such as '230 V'", UnitText.Voltages, least: 12, most: 1500);

    /// <summary>A temperature of air.</summary>
    public static ScalarShape Temperature { get; } =
        Quantity("a temperature from -60 C to 100 C such as '24 C'", UnitText.Temperatures, least: -60, most: 100);

    /// <summary>A load on a floor.</summary>
    public static ScalarShape Pressure { get; } = Quantity("a load such as '12 kPa'", UnitText.Pressures, least: 0);

    /// <summary>A load on each metre of something long.</summary>
    public static ScalarShape LineLoad { get; } = Quantity("a load such as '50 kg/m'", UnitText.LineLoads, least: 0);

    /// <summary>What a length of something weighs.</summary>
    public static ScalarShape LineWeight { get; } = Quantity("a weight such as '12 kg/km'", UnitText.LineWeights, least: 0);

    /// <summary>A share from nothing to the whole.</summary>
    public static ScalarShape Share { get; } = Quantity("a share such as '5 %'", UnitText.Shares, least: 0, most: 1);

    /// <summary>A delay.</summary>
    public static ScalarShape Delay { get; } = Quantity("a delay such as '800 ns'", UnitText.Delays, least: 0);

    /// <summary>A time to repair.</summary>
    public static ScalarShape Repair { get; } = Quantity("a time such as '8 h'", UnitText.Repairs, least: 0);

    /// <summary>A frequency above nothing.</summary>
    public static ScalarShape Frequency { get; } =
        Quantity("a frequency such as '100 GHz' or '193.1 THz'", UnitText.Frequencies, least: 1e-3);

    /// <summary>A level of power.</summary>
    public static ScalarShape Level { get; } =
        Quantity("a level from -60 dBm to 20 dBm such as '-2 dBm'", UnitText.Levels, least: -60, most: 20);

    /// <summary>A loss per length, above nothing.</summary>
    public static ScalarShape LossOfLength { get; } = Quantity("a loss such as '0.22 dB/km'", UnitText.Attenuations, least: 1e-4);

    /// <summary>A dispersion per length.</summary>
    public static ScalarShape DispersionRate { get; } =
        Quantity("a dispersion up to 1000 ps/nm/km such as '17 ps/nm/km'", UnitText.DispersionRates, least: 1e-3, most: 1e3);

    /// <summary>A dispersion of polarisation modes over the root of length.</summary>
    public static ScalarShape ModeDispersion { get; } = Quantity("a value such as '0.1 ps/sqrt(km)'", UnitText.ModeDispersions, least: 0);

    /// <summary>A plain amount of money in the plan's unit.</summary>
    public static ScalarShape Amount { get; } =
        new("an amount such as '1250' or '0.4'", t => Numerals.TryReal(t, out var v) && v is >= 0 and < 1e13)
        {
            Pattern = $"^{Number}$",
            MayBeNumber = true,
        };

    /// <summary>A whole number within bounds.</summary>
    public static ScalarShape Whole(long least, long most) =>
        new($"a whole number from {least} to {most}", t => Numerals.TryWhole(t, out var v) && v >= least && v <= most)
        {
            Pattern = "^[-+]?[0-9]+$",
            MayBeNumber = true,
        };

    /// <summary>A number within bounds.</summary>
    public static ScalarShape Real(double least, double most) =>
        new($"a number from {Numerals.Plain(least)} to {Numerals.Plain(most)}",
            t => Numerals.TryReal(t, out var v) && v >= least && v <= most)
        {
            Pattern = $"^{Number}$",
            MayBeNumber = true,
        };

    /// <summary>A length within bounds, in millimetres.</summary>
    public static ScalarShape LengthBetween(double least, double most) => Quantity(
        $"a length from {Numerals.Plain(least)} mm to {Numerals.Plain(most)} mm", UnitText.Lengths, least / 1000, most / 1000);

    /// <summary>A share with room on both sides, such as a probability that can be had.</summary>
    public static ScalarShape OpenShare { get; } =
        Quantity("a share above 0 % and below 100 %, such as '99.9 %'", UnitText.Shares, least: 1e-6, most: 1 - 1e-9);

    /// <summary>A share of something that is not nothing.</summary>
    public static ScalarShape PartOf { get; } =
        Quantity("a share above 0 % and up to 100 %, such as '80 %'", UnitText.Shares, least: 1e-6, most: 1);

    /// <summary>A length that is not nothing.</summary>
    public static ScalarShape Distance { get; } = Quantity("a length of 1 mm or more such as '2.5 m'", UnitText.Lengths, least: 1e-3);

    /// <summary>A time between failures.</summary>
    public static ScalarShape Life { get; } = Quantity("a time of 1 h or more such as '200000 h'", UnitText.Repairs, least: 1);

    /// <summary>One of a fixed set of words.</summary>
    public static ScalarShape OneOf(params ImmutableArray<string> choices) =>
        new("one of " + string.Join(", ", choices), t => choices.Contains(t)) { Choices = choices };

    /// <summary>A text that another test accepts.</summary>
    public static ScalarShape Matching(string words, Func<string, bool> accepts, string? pattern = null) =>
        new(words, accepts) { Pattern = pattern, MayBeNumber = pattern is null };

    private static string Escaped(string unit) => unit.Replace("/", @"\/", StringComparison.Ordinal)
        .Replace("(", @"\(", StringComparison.Ordinal).Replace(")", @"\)", StringComparison.Ordinal);

    private static ScalarShape Quantity(string words, IReadOnlyList<UnitScale> units, double? least = null, double? most = null)
    {
        var names = string.Join('|', units.Select(u => Escaped(u.Name)));
        return new ScalarShape(words, t => UnitText.TryRead(t, units, out var v) && !(v < least) && !(v > most))
        {
            Pattern = $"^\\s*{Number}\\s*({names})\\s*$",
        };
    }
}
