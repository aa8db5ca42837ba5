namespace Lanewright.Engineering.Lines;

/// <summary>One span of single-mode glass in the units the propagation formulas are written in: metres, watts, hertz, seconds.
/// Legal: loss, length and nonlinearity above zero, dispersion not zero.</summary>
/// <param name="LossDbPerKm">Loss of the glass.</param>
/// <param name="Kilometres">Length.</param>
/// <param name="DispersionPsNmKm">Dispersion at the wavelength of reference.</param>
/// <param name="SlopePsNm2Km">Slope of the dispersion.</param>
/// <param name="GammaPerWattKm">Nonlinear coefficient.</param>
/// <param name="WavelengthNm">Wavelength of reference.</param>
public sealed record GlassSpan(
    double LossDbPerKm, double Kilometres, double DispersionPsNmKm, double SlopePsNm2Km, double GammaPerWattKm, double WavelengthNm)
{
    private const double LightSpeed = 299_792_458;

    private double Lambda => WavelengthNm * 1e-9;

    private double PerOmega => Lambda * Lambda / (2 * Math.PI * LightSpeed);

    /// <summary>Loss of power a metre.</summary>
    public double Alpha => Math.Log(10) / 10 * LossDbPerKm / 1000;

    /// <summary>Length over which light of full power would do the same nonlinear harm, in metres.</summary>
    public double EffectiveMetres => (1 - Math.Exp(-Alpha * Kilometres * 1000)) / Alpha;

    /// <summary>Second-order dispersion, s²/m.</summary>
    public double Beta2 => -DispersionPsNmKm * 1e-6 * PerOmega;

    /// <summary>Third-order dispersion, s³/m.</summary>
    public double Beta3 => PerOmega * PerOmega * ((SlopePsNm2Km * 1e3) + (2 * DispersionPsNmKm * 1e-6 / Lambda));

    /// <summary>Nonlinear coefficient, 1/(W m).</summary>
    public double Gamma => GammaPerWattKm / 1000;
}
