namespace Lanewright.Quantities;

/// <summary>A ratio of powers: a loss, a gain, a margin. A level is a <see cref="PowerLevel"/>. Stored in decibels. Legal: any finite
/// value. The default is 0 dB, a ratio of one.</summary>
public readonly record struct Decibels : IComparable<Decibels>
{
    private readonly double raw;

    private Decibels(double decibels) => raw = Require.Finite(decibels);

    /// <summary>The value in decibels.</summary>
    public double Value => raw;

    /// <summary>Makes the quantity from a number of decibels.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Decibels From(double decibels) => new(decibels);

    /// <summary>The sum.</summary>
    public static Decibels operator +(Decibels left, Decibels right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static Decibels operator -(Decibels left, Decibels right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Decibels operator *(Decibels left, double times) => new(left.raw * times);

    /// <summary>The ratio with its sign turned.</summary>
    public static Decibels operator -(Decibels value) => new(-value.raw);

    /// <summary>The larger of two.</summary>
    public static Decibels Max(Decibels left, Decibels right) => left.raw >= right.raw ? left : right;

    /// <summary>The smaller of two.</summary>
    public static Decibels Min(Decibels left, Decibels right) => left.raw <= right.raw ? left : right;

    /// <summary>The ratio in decibels of a plain ratio of powers, which is above zero.</summary>
    public static Decibels OfRatio(double ratio) => new(10 * Math.Log10(ratio));

    /// <summary>The plain ratio of powers, 10^(dB/10).</summary>
    public double Ratio => Math.Pow(10, raw / 10);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Decibels left, Decibels right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Decibels left, Decibels right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Decibels left, Decibels right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Decibels left, Decibels right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Decibels other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "dB");
}
