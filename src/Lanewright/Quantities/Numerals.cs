using System.Globalization;

namespace Lanewright.Quantities;

/// <summary>Numbers as text, and text as numbers, in one way everywhere: invariant, so that the same plan gives the same bytes.</summary>
public static class Numerals
{
#pragma warning disable RS0030 // the one place that names the invariant culture, so that no other has to
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
#pragma warning restore RS0030

    /// <summary>Two or three digits that count and a power of ten, for shares that are very small.</summary>
    public static string Scientific(double value) => value.ToString("0.0#e0", Invariant);

    /// <summary>A number with at most four decimals and no trailing zeros.</summary>
    public static string Plain(double value)
    {
        var text = Math.Round(value, 4).ToString("0.####", Invariant);
        return text == "-0" ? "0" : text;
    }

    /// <summary>A number with a given count of decimals.</summary>
    public static string Fixed(double value, int decimals)
    {
        var text = value.ToString("F" + decimals.ToString(Invariant), Invariant);
        return text.StartsWith('-') && double.Parse(text, Invariant) == 0 ? text[1..] : text;
    }

    /// <summary>A decimal number with a given count of decimals.</summary>
    public static string Fixed(decimal value, int decimals) => value.ToString("F" + decimals.ToString(Invariant), Invariant);

    /// <summary>A whole number.</summary>
    public static string Whole(long value) => value.ToString(Invariant);

    /// <summary>A whole number with a thin gap at each thousand, for people.</summary>
    public static string Grouped(decimal value, int decimals = 0) =>
        value.ToString("N" + decimals.ToString(Invariant), Invariant).Replace(",", "\u202F", StringComparison.Ordinal);

    /// <summary>A whole number with leading zeros.</summary>
    public static string Padded(long value, int digits) => value.ToString("D" + digits.ToString(Invariant), Invariant);

    /// <summary>A number in the shortest form that reads back as itself.</summary>
    public static string Exact(double value) => value.ToString("R", Invariant);

    /// <summary>A number and its unit, with one space between; a number of no unit stands alone.</summary>
    public static string Unit(double value, string unit) => unit.Length == 0 ? Plain(value) : Plain(value) + " " + unit;

    /// <summary>A number and its unit as people want them in a sentence: four digits that count, and whole numbers whole.</summary>
    public static string Shown(double value, string unit)
    {
        var size = Math.Abs(value);
        var decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 10 ? 2 : size >= 1 ? 3 : 4;
        return Unit(Math.Round(value, decimals), unit);
    }

    /// <summary>Reads a plain decimal number.</summary>
    public static bool TryReal(ReadOnlySpan<char> text, out double value)
    {
        const NumberStyles plain =
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(text, plain, Invariant, out value) && double.IsFinite(value);
    }

    /// <summary>Reads a whole number.</summary>
    public static bool TryWhole(ReadOnlySpan<char> text, out long value) =>
        long.TryParse(text, NumberStyles.AllowLeadingSign, Invariant, out value);
}
