namespace Lanewright.Quantities;

/// <summary>A temperature. The difference of two is a <see cref="TemperatureRise"/>. Stored in degrees Celsius. Legal: any finite
/// value. The default is 0 degrees Celsius, a real temperature.</summary>
public readonly record struct Temperature : IComparable<Temperature>
{
    private readonly double raw;

    private Temperature(double celsius) => raw = Require.Finite(celsius);

    /// <summary>The value in degrees Celsius.</summary>
    public double Celsius => raw;

    /// <summary>Makes the quantity from a number of degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Temperature FromCelsius(double celsius) => new(celsius);

    /// <summary>What lies between two temperatures.</summary>
    public static TemperatureRise operator -(Temperature upper, Temperature lower) => TemperatureRise.FromKelvin(upper.raw - lower.raw);

    /// <summary>The temperature after a rise.</summary>
    public static Temperature operator +(Temperature start, TemperatureRise rise) => new(start.raw + rise.Kelvin);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "degC");
}
