using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>One span of single-mode glass with the constants that propagation formulas are written in. Legal: loss, length and
/// nonlinearity above zero, dispersion not zero.</summary>
/// <param name="Loss">Loss of the glass.</param>
/// <param name="Length">Length.</param>
/// <param name="Dispersion">Dispersion at the wavelength of reference.</param>
/// <param name="SlopePsNm2Km">Slope of the dispersion in ps/(nm² km).</param>
/// <param name="GammaPerWattKm">Nonlinear coefficient in 1/(W km).</param>
/// <param name="Reference">Wavelength of reference.</param>
public sealed record GlassSpan(
    Attenuation Loss, Length Length, DispersionRate Dispersion, double SlopePsNm2Km, double GammaPerWattKm, Wavelength Reference)
{
    /// <summary>The wavelength that fibre values hold at.</summary>
    public static Wavelength Usual { get; } = Wavelength.FromNanometres(1550);

    private double Lambda => Reference.Nanometres / 1e9;

    private double PerOmega => Lambda / (2 * Math.PI * Frequency.Of(Reference).Hertz);

    /// <summary>Loss of power a metre.</summary>
    public double Alpha => Loss.PerMetre;

    /// <summary>Length over which light of full power would do the same nonlinear harm.</summary>
    public Length Effective => Length.FromMetres((1 - Math.Exp(-Alpha * Length.Metres)) / Alpha);

    /// <summary>Length over which mixing of light stays in step. The closed forms take its strength over the mismatch of phase as a bell,
    /// as wide as loss makes it in endless glass; a span that ends early makes it wider, and this is the bell that has both the height and
    /// the area of the true one. For long spans it is one over <see cref="Alpha"/>, for short ones half their length.</summary>
    public Length InStep => Length.FromMetres(Math.Tanh(Alpha * Length.Metres / 2) / Alpha);

    /// <summary>Second-order dispersion, s²/m.</summary>
    public double Beta2 => -Dispersion.SecondsPerSquareMetre * PerOmega;

    /// <summary>Third-order dispersion, s³/m.</summary>
    public double Beta3 => PerOmega * PerOmega * ((SlopePsNm2Km * 1000) + (2 * Dispersion.SecondsPerSquareMetre / Lambda));

    /// <summary>Nonlinear coefficient, 1/(W m).</summary>
    public double Gamma => GammaPerWattKm / 1000;

    /// <summary>Dispersion of the whole span at a wavelength, from that of a kilometre at the wavelength of reference.</summary>
    public Dispersion DispersionAt(DispersionRate atReference, Wavelength wavelength) => DispersionRate.From(
        atReference.PicosecondsPerNanometreKilometre + (SlopePsNm2Km * (wavelength.Nanometres - Reference.Nanometres))) * Length;
}
