namespace Lanewright.Quantities;

/// <summary>A frequency of light, or a width on its scale. Stored in hertz. Legal: zero or more. The default is 0 Hz.</summary>
public readonly record struct Frequency : IComparable<Frequency>
{
    private const double LightSpeed = 299_792_458;
    private readonly double raw;

    private Frequency(double hertz) => raw = Require.NotNegative(hertz);

    /// <summary>The value in hertz.</summary>
    public double Hertz => raw;

    /// <summary>The value in gigahertz.</summary>
    public double Gigahertz => raw / 1e9;

    /// <summary>The value in terahertz.</summary>
    public double Terahertz => raw / 1e12;

    /// <summary>Makes the quantity from hertz.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Frequency FromHertz(double hertz) => new(hertz);

    /// <summary>Makes the quantity from gigahertz.</summary>
    public static Frequency FromGigahertz(double gigahertz) => new(gigahertz * 1e9);

    /// <summary>Makes the quantity from terahertz.</summary>
    public static Frequency FromTerahertz(double terahertz) => new(terahertz * 1e12);

    /// <summary>The frequency of light of a wavelength in vacuum, which is above zero.</summary>
    public static Frequency Of(Wavelength wavelength) => new(LightSpeed / (wavelength.Nanometres / 1e9));

    /// <summary>The wavelength in vacuum of light of this frequency, which is above zero.</summary>
    public Wavelength Wavelength => Wavelength.FromNanometres(LightSpeed / raw * 1e9);

    /// <summary>The sum.</summary>
    public static Frequency operator +(Frequency left, Frequency right) => new(left.raw + right.raw);

    /// <summary>The difference; the left value is not below the right one.</summary>
    public static Frequency operator -(Frequency left, Frequency right) => new(left.raw - right.raw);

    /// <summary>The quantity taken a number of times.</summary>
    public static Frequency operator *(Frequency left, double times) => new(left.raw * times);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Frequency left, Frequency right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Frequency left, Frequency right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Frequency left, Frequency right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Frequency left, Frequency right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Frequency other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => raw >= 1e12 ? Numerals.Exact(Math.Round(raw / 1e12, 6)) + " THz" : Numerals.Unit(raw / 1e9, "GHz");
}
