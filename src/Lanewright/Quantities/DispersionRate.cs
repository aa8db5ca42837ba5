namespace Lanewright.Quantities;

/// <summary>Chromatic dispersion of a fibre per length. Stored in ps/(nm km). Legal: any finite value. The default is 0.</summary>
public readonly record struct DispersionRate
{
    private const double SecondsPerSquareMetreOfOne = 1e-6;
    private readonly double raw;

    private DispersionRate(double picosecondsPerNanometreKilometre) => raw = Require.Finite(picosecondsPerNanometreKilometre);

    /// <summary>The value in ps/(nm km).</summary>
    public double PicosecondsPerNanometreKilometre => raw;

    /// <summary>The value in s/m².</summary>
    public double SecondsPerSquareMetre => raw * SecondsPerSquareMetreOfOne;

    /// <summary>Makes the quantity from ps/(nm km).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside the legal range.</exception>
    public static DispersionRate From(double picosecondsPerNanometreKilometre) => new(picosecondsPerNanometreKilometre);

    /// <summary>The dispersion of a length of this fibre.</summary>
    public static Dispersion operator *(DispersionRate rate, Length length) =>
        Dispersion.FromPicosecondsPerNanometre(rate.raw * length.Kilometres);

    /// <summary>The value with its unit, as people write it.</summary>
    public override string ToString() => Numerals.Unit(raw, "ps/(nm km)");
}
