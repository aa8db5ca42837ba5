namespace Lanewright.Quantities;

/// <summary>A span of time: a delay or a skew on the wire, or a repair. Stored in nanoseconds. Legal: any finite value. The default is 0
/// ns.</summary>
public readonly record struct Duration : IComparable<Duration>
{
    private const double NanosecondsPerHour = 3.6e12;
    private readonly double raw;

    private Duration(double nanoseconds) => raw = Require.Finite(nanoseconds);

    /// <summary>The value in nanoseconds.</summary>
    public double Nanoseconds => raw;

    /// <summary>Makes the quantity from a number of nanoseconds.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Duration FromNanoseconds(double nanoseconds) => new(nanoseconds);

    /// <summary>The sum.</summary>
    public static Duration operator +(Duration left, Duration right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static Duration operator -(Duration left, Duration right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Duration operator *(Duration left, double times) => new(left.raw * times);

    /// <summary>The value in hours.</summary>
    public double Hours => raw / NanosecondsPerHour;

    /// <summary>Makes a duration from hours.</summary>
    public static Duration FromHours(double hours) => new(hours * NanosecondsPerHour);

    /// <summary>A year of 365 days, as rates of failure and energy of a year are reckoned.</summary>
    public static Duration Year { get; } = FromHours(8760);

    /// <summary>The value in picoseconds.</summary>
    public double Picoseconds => raw * 1e3;

    /// <summary>Makes a duration from picoseconds.</summary>
    public static Duration FromPicoseconds(double picoseconds) => new(picoseconds / 1e3);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Duration left, Duration right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Duration left, Duration right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Duration left, Duration right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Duration left, Duration right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Duration other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "ns");
}
