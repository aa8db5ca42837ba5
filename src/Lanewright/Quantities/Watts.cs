namespace Lanewright.Quantities;

/// <summary>Electrical power. Stored in watts. Legal: zero or more. The default is 0 W.</summary>
public readonly record struct Watts : IComparable<Watts>
{
    private readonly double raw;

    private Watts(double watts) => raw = Require.NotNegative(watts);

    /// <summary>The value in watts.</summary>
    public double Value => raw;

    /// <summary>Makes the quantity from a number of watts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Watts From(double watts) => new(watts);

    /// <summary>The sum.</summary>
    public static Watts operator +(Watts left, Watts right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static Watts operator -(Watts left, Watts right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Watts operator *(Watts left, double times) => new(left.raw * times);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Watts left, Watts right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Watts left, Watts right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Watts left, Watts right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Watts left, Watts right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Watts other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "W");
}
