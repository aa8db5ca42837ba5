namespace Lanewright.Quantities;

/// <summary>Loss of a fibre per length. Stored in decibels per kilometre. Legal: zero or more. The default is 0 dB/km.</summary>
public readonly record struct Attenuation : IComparable<Attenuation>
{
    private readonly double raw;

    private Attenuation(double decibelsPerKilometre) => raw = Require.NotNegative(decibelsPerKilometre);

    /// <summary>The value in decibels per kilometre.</summary>
    public double DecibelsPerKilometre => raw;

    /// <summary>Natural loss of power a metre, as propagation formulas have it.</summary>
    public double PerMetre => Math.Log(10) / 10 * raw / 1000;

    /// <summary>Makes the quantity from a number of decibels per kilometre.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static Attenuation FromDecibelsPerKilometre(double decibelsPerKilometre) => new(decibelsPerKilometre);

    /// <summary>The loss of a length of this fibre.</summary>
    public static Decibels operator *(Attenuation attenuation, Length length) => Decibels.From(attenuation.raw * length.Kilometres);

    /// <summary>Whether the left value is smaller.</summary>
    public static bool operator <(Attenuation left, Attenuation right) => left.raw < right.raw;

    /// <summary>Whether the left value is larger.</summary>
    public static bool operator >(Attenuation left, Attenuation right) => left.raw > right.raw;

    /// <summary>Whether the left value is smaller or equal.</summary>
    public static bool operator <=(Attenuation left, Attenuation right) => left.raw <= right.raw;

    /// <summary>Whether the left value is larger or equal.</summary>
    public static bool operator >=(Attenuation left, Attenuation right) => left.raw >= right.raw;

    /// <inheritdoc/>
    public int CompareTo(Attenuation other) => raw.CompareTo(other.raw);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "dB/km");
}
