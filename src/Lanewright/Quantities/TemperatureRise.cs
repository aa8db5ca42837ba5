namespace Lanewright.Quantities;

/// <summary>A difference of temperatures. Stored in kelvin. Legal: any finite value. The default is 0 K.</summary>
public readonly record struct TemperatureRise : IComparable<TemperatureRise>
{
    private readonly double raw;

    private TemperatureRise(double kelvin) => raw = Require.Finite(kelvin);

    /// <summary>The value in kelvin.</summary>
    public double Kelvin => raw;

    /// <summary>Makes the quantity from a number of kelvin.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static TemperatureRise FromKelvin(double kelvin) => new(kelvin);

    /// <summary>The sum.</summary>
    public static TemperatureRise operator +(TemperatureRise left, TemperatureRise right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static TemperatureRise operator -(TemperatureRise left, TemperatureRise right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static TemperatureRise operator *(TemperatureRise left, double times) => new(left.raw * times);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(TemperatureRise left, TemperatureRise right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(TemperatureRise left, TemperatureRise right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(TemperatureRise left, TemperatureRise right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(TemperatureRise left, TemperatureRise right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(TemperatureRise other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "K");
}
