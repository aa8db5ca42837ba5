namespace Lanewright.Quantities;

/// <summary>Chromatic dispersion gathered over a link. Stored in picoseconds per nanometre. Legal: any finite value; normal
/// dispersion is negative. The default is 0 ps/nm.</summary>
public readonly record struct Dispersion : IComparable<Dispersion>
{
    private readonly double raw;

    private Dispersion(double picosecondsPerNanometre) => raw = Require.Finite(picosecondsPerNanometre);

    /// <summary>The value in picoseconds per nanometre.</summary>
    public double PicosecondsPerNanometre => raw;

    /// <summary>Makes the quantity from a number of picoseconds per nanometre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Dispersion FromPicosecondsPerNanometre(double picosecondsPerNanometre) => new(picosecondsPerNanometre);

    /// <summary>The sum.</summary>
    public static Dispersion operator +(Dispersion left, Dispersion right) => new(left.raw + right.raw);

    /// <summary>The difference.</summary>
    public static Dispersion operator -(Dispersion left, Dispersion right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Dispersion operator *(Dispersion left, double times) => new(left.raw * times);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Dispersion left, Dispersion right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Dispersion left, Dispersion right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Dispersion left, Dispersion right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Dispersion left, Dispersion right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Dispersion other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "ps/nm");
}
