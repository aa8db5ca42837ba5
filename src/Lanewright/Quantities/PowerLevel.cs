namespace Lanewright.Quantities;

/// <summary>A level of power against one milliwatt. Two levels have a difference in <see cref="Decibels"/>; they have no sum. Not
/// known is a null, never the default. Stored in dBm. Legal: any finite value. The default is 0 dBm, a real level.</summary>
public readonly record struct PowerLevel : IComparable<PowerLevel>
{
    private readonly double raw;

    private PowerLevel(double dbm) => raw = Require.Finite(dbm);

    /// <summary>The value in dBm.</summary>
    public double Dbm => raw;

    /// <summary>Makes the quantity from a number of dBm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static PowerLevel FromDbm(double dbm) => new(dbm);

    /// <summary>The power in watts.</summary>
    public double Watts => Math.Pow(10, raw / 10) / 1000;

    /// <summary>The level of a power in watts, which is above zero.</summary>
    public static PowerLevel FromWatts(double watts) => new(10 * Math.Log10(watts * 1000));

    /// <summary>The level of so many channels of this level together.</summary>
    public PowerLevel OfAll(int channels) => new(raw + (10 * Math.Log10(channels)));

    /// <summary>The level of each of so many channels alike that have this level together.</summary>
    public PowerLevel OfEach(int channels) => new(raw - (10 * Math.Log10(channels)));

    /// <summary>The higher of two.</summary>
    public static PowerLevel Max(PowerLevel left, PowerLevel right) => left.raw >= right.raw ? left : right;

    /// <summary>The lower of two.</summary>
    public static PowerLevel Min(PowerLevel left, PowerLevel right) => left.raw <= right.raw ? left : right;

    /// <summary>What lies between two levels.</summary>
    public static Decibels operator -(PowerLevel upper, PowerLevel lower) => Decibels.From(upper.raw - lower.raw);

    /// <summary>The level after a loss.</summary>
    public static PowerLevel operator -(PowerLevel level, Decibels loss) => new(level.raw - loss.Value);

    /// <summary>The level after a gain.</summary>
    public static PowerLevel operator +(PowerLevel level, Decibels gain) => new(level.raw + gain.Value);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(PowerLevel left, PowerLevel right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(PowerLevel left, PowerLevel right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(PowerLevel left, PowerLevel right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(PowerLevel left, PowerLevel right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(PowerLevel other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "dBm");
}
