using Lanewright.Quantities;

namespace Lanewright.Model.Wanted;

/// <summary>A ratio of whole numbers, compared by multiplying across, so that 5:2 is exactly 5:2. Legal: both parts above zero. The
/// default stands for no ratio and is refused wherever one is needed.</summary>
/// <param name="Numerator">The part of the lower side.</param>
/// <param name="Denominator">The part of the upper side.</param>
public readonly record struct Ratio(long Numerator, long Denominator) : IComparable<Ratio>
{
    private const long Largest = 1_000_000;

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

    /// <summary>Reads <c>3:1</c>, or <c>3</c> for three to one; each part a whole number from 1 to a million.</summary>
    public static bool TryRead(string text, out Ratio ratio)
    {
        ratio = default;
        var parts = text.Split(':', StringSplitOptions.TrimEntries);
        if (parts.Length is < 1 or > 2) return false;
        var denominator = 1L;
        if (!Numerals.TryWhole(parts[0], out var numerator)) return false;
        if (parts.Length == 2 && !Numerals.TryWhole(parts[1], out denominator)) return false;
        if (numerator is < 1 or > Largest || denominator is < 1 or > Largest) return false;
        ratio = new Ratio(numerator, denominator);
        return true;
    }

    /// <inheritdoc/>
    public int CompareTo(Ratio other) =>
        ((Int128)Numerator * other.Denominator).CompareTo((Int128)other.Numerator * Denominator);

    /// <summary>The ratio as it is written, such as <c>3:1</c>.</summary>
    public override string ToString() => Numerals.Whole(Numerator) + ":" + Numerals.Whole(Denominator);
}
