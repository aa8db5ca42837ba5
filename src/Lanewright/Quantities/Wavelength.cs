namespace Lanewright.Quantities;

/// <summary>A wavelength of light in vacuum. Stored in nanometres. Legal: above zero. The default is 0 nm, which no lane has.</summary>
public readonly record struct Wavelength : IComparable<Wavelength>
{
    private readonly double raw;

    private Wavelength(double nanometres) => raw = Require.NotNegative(nanometres);

    /// <summary>The value in nanometres.</summary>
    public double Nanometres => raw;

    /// <summary>Makes the quantity from a number of nanometres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Wavelength FromNanometres(double nanometres) => new(nanometres);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Wavelength left, Wavelength right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Wavelength left, Wavelength right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Wavelength left, Wavelength right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Wavelength left, Wavelength right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Wavelength other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "nm");
}
