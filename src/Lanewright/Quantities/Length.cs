namespace Lanewright.Quantities;

/// <summary>A length or distance. Stored in metres. Legal: any finite value; a difference of positions may be negative. The default
/// is 0 m.</summary>
public readonly record struct Length : IComparable<Length>
{
    private readonly double raw;

    private Length(double metres) => raw = Require.Finite(metres);

    /// <summary>The value in metres.</summary>
    public double Metres => raw;

    /// <summary>Makes the quantity from a number of metres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Length FromMetres(double metres) => new(metres);

    /// <summary>The sum.</summary>
    public static Length operator +(Length left, Length right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static Length operator -(Length left, Length right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Length operator *(Length left, double times) => new(left.raw * times);

    /// <summary>The value in millimetres.</summary>
    public double Millimetres => raw * 1e3;

    /// <summary>The value in kilometres.</summary>
    public double Kilometres => raw / 1e3;

    /// <summary>Makes a length from millimetres.</summary>
    public static Length FromMillimetres(double millimetres) => new(millimetres / 1e3);

    /// <summary>Makes a length from kilometres.</summary>
    public static Length FromKilometres(double kilometres) => new(kilometres * 1e3);

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(raw));

    /// <summary>The longer of two.</summary>
    public static Length Max(Length left, Length right) => left.raw >= right.raw ? left : right;

    /// <summary>The shorter of two.</summary>
    public static Length Min(Length left, Length right) => left.raw <= right.raw ? left : right;

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Length left, Length right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Length left, Length right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Length left, Length right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Length left, Length right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Length other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "m");
}
