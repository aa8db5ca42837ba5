using System.CommandLine;
using Lanewright.Quantities;

namespace Lanewright.Cli.Commands;

/// <summary>Reads quantities from options; a text that does not read fails the command with what to write.</summary>
internal static class QuantityOptions
{
    /// <summary>A length, or null when not given.</summary>
    public static Length? Length(ParseResult parsed, Option<string?> option) =>
        Read(parsed, option, UnitText.Lengths, "a length such as 500m") is { } v ? Quantities.Length.FromMetres(Least(v, 0, option)) : null;

    /// <summary>A length that has to be given.</summary>
    public static Length RequiredLength(ParseResult parsed, Option<string?> option) =>
        Length(parsed, option) ?? throw new UsageFault($"{option.Name} is missing; write a length such as 500m");

    /// <summary>A ratio in dB, or null when not given.</summary>
    public static Decibels? Ratio(ParseResult parsed, Option<string?> option) =>
        Read(parsed, option, UnitText.Ratios, "a ratio such as 0.35dB") is { } v ? Decibels.From(v) : null;

    /// <summary>A reflectance in dB, zero or less, or null when not given.</summary>
    public static Decibels? Reflectance(ParseResult parsed, Option<string?> option)
    {
        if (Ratio(parsed, option) is not { } ratio) return null;
        return ratio.Value <= 0
            ? ratio
            : throw new UsageFault($"{option.Name} must not be above zero: what comes back is less than what went in; write -45dB");
    }

    /// <summary>A loss in dB, zero or more, or null when not given.</summary>
    public static Decibels? Loss(ParseResult parsed, Option<string?> option) =>
        Read(parsed, option, UnitText.Ratios, "a loss such as 0.35dB") is { } v ? Decibels.From(Least(v, 0, option)) : null;

    /// <summary>A rate, or null when not given.</summary>
    public static BitRate? Rate(ParseResult parsed, Option<string?> option) =>
        Read(parsed, option, UnitText.Rates, "a rate such as 400G") is { } v ? BitRate.FromGigabits(Least(v, 0, option)) : null;

    /// <summary>A share, zero or more, or null when not given.</summary>
    public static Share? Share(ParseResult parsed, Option<string?> option) =>
        Read(parsed, option, UnitText.Shares, "a share such as 25%") is { } v ? Quantities.Share.From(Least(v, 0, option)) : null;

    /// <summary>A plain number, or null when not given.</summary>
    public static double? Number(ParseResult parsed, Option<string?> option, string wanted)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        return Numerals.TryReal(text, out var value) ? value : throw new UsageFault($"{option.Name} '{text}' is no {wanted}");
    }

    /// <summary>A number with one of the units, or null when not given.</summary>
    public static double? Read(ParseResult parsed, Option<string?> option, IReadOnlyList<UnitScale> units, string wanted)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        return UnitText.TryRead(text, units, out var value)
            ? value
            : throw new UsageFault($"{option.Name} '{text}' does not read as a value; write {wanted}");
    }

    private static double Least(double value, double least, Option<string?> option) =>
        value >= least ? value : throw new UsageFault($"{option.Name} must not be below zero");
}
