namespace Lanewright.Quantities;

/// <summary>A weight to be carried or stood on a floor. Stored in kilograms. Legal: zero or more. The default is 0 kg.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private readonly double raw;

    private Mass(double kilograms) => raw = Require.NotNegative(kilograms);

    /// <summary>The value in kilograms.</summary>
    public double Kilograms => raw;

    /// <summary>Makes the quantity from a number of kilograms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Mass FromKilograms(double kilograms) => new(kilograms);

    /// <summary>The sum.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static Mass operator -(Mass left, Mass right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Mass operator *(Mass left, double times) => new(left.raw * times);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Mass left, Mass right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Mass left, Mass right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Mass left, Mass right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Mass left, Mass right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "kg");
}
