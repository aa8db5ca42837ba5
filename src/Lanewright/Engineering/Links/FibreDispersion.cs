using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>Bounds of chromatic dispersion over single-mode fibre of the G.652 kind.</summary>
public static class FibreDispersion
{
    /// <summary>Largest dispersion at a wavelength, or null when the fibre's constants are not known. The formula is made for the
    /// neighbourhood of zero dispersion; where the fibre has a bound of its own, that holds.</summary>
    public static Known<Dispersion>? Largest(Fibre fibre, Wavelength wavelength, Length length) =>
        fibre.DispersionOfKilometreAt(wavelength)?.As(d => Dispersion.FromPicosecondsPerNanometre(
            d.PicosecondsPerNanometre * length.Kilometres))
        ?? At(fibre, wavelength, length, "zero-dispersion-min");

    /// <summary>Smallest (most negative) dispersion at a wavelength, or null when the fibre's constants are not known.</summary>
    public static Known<Dispersion>? Smallest(Fibre fibre, Wavelength wavelength, Length length) =>
        At(fibre, wavelength, length, "zero-dispersion-max");

    /// <summary>D = S0/4 x wavelength x (1 - (zero / wavelength)^4), the form the footnotes of IEEE 802.3 use.</summary>
    private static Known<Dispersion>? At(Fibre fibre, Wavelength wavelength, Length length, string zeroField)
    {
        if (fibre.Sheet.Real("dispersion-slope-max") is not { } slope || fibre.Sheet.Real(zeroField) is not { } zero) return null;
        var lambda = wavelength.Nanometres;
        var perKilometre = slope.Value / 4 * lambda * (1 - Math.Pow(zero.Value / lambda, 4));
        var weaker = slope.Source.Mark > zero.Source.Mark ? slope.Source : zero.Source;
        return new Known<Dispersion>(Dispersion.FromPicosecondsPerNanometre(perKilometre * length.Kilometres), weaker);
    }
}
