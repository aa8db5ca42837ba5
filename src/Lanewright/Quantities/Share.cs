namespace Lanewright.Quantities;

/// <summary>A part of a whole. Stored in fractions of one. Legal: any finite value; 1 is the whole. The default is 0.</summary>
public readonly record struct Share : IComparable<Share>
{
    private readonly double raw;

    private Share(double fraction) => raw = Require.Finite(fraction);

    /// <summary>The value in fractions of one.</summary>
    public double Value => raw;

    /// <summary>Makes the quantity from a number of fractions of one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Share From(double fraction) => new(fraction);

    /// <summary>The sum.</summary>
    public static Share operator +(Share left, Share right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static Share operator -(Share left, Share right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Share operator *(Share left, double times) => new(left.raw * times);

    /// <summary>The value in per cent.</summary>
    public double Percent => raw * 100;

    /// <summary>Makes a share from per cent.</summary>
    public static Share FromPercent(double percent) => new(percent / 100);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Share left, Share right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Share left, Share right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Share left, Share right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Share left, Share right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Share other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw * 100, "%");
}
