using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Model.Wanted;

/// <summary>A ratio of whole numbers, compared by multiplying across, so that 5:2 is exactly 5:2. Legal: both parts above zero. The
/// default stands for no ratio and is refused wherever one is needed.</summary>
/// <param name="Numerator">The part of the lower side.</param>
/// <param name="Denominator">The part of the upper side.</param>
public readonly record struct Ratio(long Numerator, long Denominator) : IComparable<Ratio>
{
    private const long Largest = 1_000_000;
    private const long PerWhole = 1000;
    private const int Decimals = 3;

    /// <summary>As much up as down.</summary>
    public static Ratio One => new(1, 1);

    /// <summary>The ratio as a number.</summary>
    public double Value => (double)Numerator / Denominator;

    /// <summary>The same ratio in its smallest whole numbers.</summary>
    public Ratio Reduced
    {
        get
        {
            var (a, b) = (Numerator, Denominator);
            while (b != 0) (a, b) = (b, a % b);
            return a == 0 ? this : new Ratio(Numerator / a, Denominator / a);
        }
    }

    /// <summary>The ratio of a tier where the last stated holds for all above it; null where none is.</summary>
    /// <param name="ratios">The ratios, from the hosts up.</param>
    /// <param name="tier">The tier, from 0 at the hosts.</param>
    public static Ratio? OfTier(ImmutableArray<Ratio> ratios, int tier) =>
        ratios.IsEmpty ? null : ratios[Math.Min(tier, ratios.Length - 1)];

    /// <summary>One ratio after another: oversubscription of several tiers multiplies.</summary>
    public static Ratio operator *(Ratio lower, Ratio upper) =>
        new Ratio(checked(lower.Numerator * upper.Numerator), checked(lower.Denominator * upper.Denominator)).Reduced;

    /// <summary>Whether the left ratio is smaller.</summary>
    public static bool operator <(Ratio left, Ratio right) => left.CompareTo(right) < 0;

    /// <summary>Whether the left ratio is larger.</summary>
    public static bool operator >(Ratio left, Ratio right) => left.CompareTo(right) > 0;

    /// <summary>Whether the left ratio is smaller or equal.</summary>
    public static bool operator <=(Ratio left, Ratio right) => left.CompareTo(right) <= 0;

    /// <summary>Whether the left ratio is larger or equal.</summary>
    public static bool operator >=(Ratio left, Ratio right) => left.CompareTo(right) >= 0;

    /// <summary>Reads <c>3:1</c>, or <c>3</c> for three to one, or <c>2.6:1</c>, which is 13:5; each part above zero and at most a million,
    /// with three decimals at most, and so is what they come to in whole numbers.</summary>
    public static bool TryRead(string text, out Ratio ratio)
    {
        ratio = default;
        var parts = text.Split(':', StringSplitOptions.TrimEntries);
        if (parts.Length is < 1 or > 2) return false;
        var denominator = 1L;
        if (!Numerals.TryWhole(parts[0], out var numerator) || (parts.Length == 2 && !Numerals.TryWhole(parts[1], out denominator)))
        {
            var above = parts.Length == 2 ? parts[1] : "1";
            if (!TryThousandths(parts[0], out numerator) || !TryThousandths(above, out denominator)) return false;
            if (numerator < 1 || denominator < 1) return false;
            (numerator, denominator) = new Ratio(numerator, denominator).Reduced;
        }
        if (numerator is < 1 or > Largest || denominator is < 1 or > Largest) return false;
        ratio = new Ratio(numerator, denominator);
        return true;
    }

    /// <summary>A number with at most three decimals, in thousandths.</summary>
    private static bool TryThousandths(string text, out long thousandths)
    {
        thousandths = 0;
        var point = text.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? "" : text[(point + 1)..];
        if (point == 0 || decimals.Length > Decimals || (point > 0 && decimals.Length == 0)) return false;
        if (!(point < 0 ? text : text[..point] + decimals).All(char.IsAsciiDigit)) return false;
        return Numerals.TryWhole((point < 0 ? text : text[..point]) + decimals.PadRight(Decimals, '0'), out thousandths)
            && thousandths <= Largest * PerWhole;
    }

    /// <inheritdoc/>
    public int CompareTo(Ratio other) =>
        ((Int128)Numerator * other.Denominator).CompareTo((Int128)other.Numerator * Denominator);

    /// <summary>The ratio as it is written, such as <c>3:1</c>.</summary>
    public override string ToString() => Numerals.Whole(Numerator) + ":" + Numerals.Whole(Denominator);
}
