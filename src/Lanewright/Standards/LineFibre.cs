using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>A kind of fibre as lines between sites need to know it: near 1550 nm, and what light does to itself in it. A value that is null
/// is not known.</summary>
public sealed class LineFibre(FactSheet sheet)
{
    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; } = sheet;

    /// <summary>The name, such as <c>G.652.D</c>.</summary>
    public string Name => Sheet.Subject;

    /// <summary>Attenuation to plan with where none was measured.</summary>
    public Known<Attenuation>? Attenuation { get; } = sheet.Real("attenuation")?.As(Quantities.Attenuation.FromDecibelsPerKilometre);

    /// <summary>Dispersion that nonlinear noise is reckoned with.</summary>
    public Known<DispersionRate>? Dispersion { get; } = sheet.Real("dispersion")?.As(DispersionRate.From);

    /// <summary>Largest dispersion.</summary>
    public Known<DispersionRate>? DispersionMax { get; } = sheet.Real("dispersion-max")?.As(DispersionRate.From);

    /// <summary>Slope of the dispersion in ps/(nm² km).</summary>
    public Known<double>? Slope { get; } = sheet.Real("dispersion-slope");

    /// <summary>Nonlinear coefficient in 1/(W km).</summary>
    public Known<double>? Gamma { get; } = sheet.Real("gamma");

    /// <summary>Slope of the Raman gain in 1/(W km THz).</summary>
    public Known<double>? RamanSlope { get; } = sheet.Real("raman-slope");

    /// <summary>Polarisation-mode dispersion in ps/sqrt(km).</summary>
    public Known<double>? PmdMax { get; } = sheet.Real("pmd-max");

    /// <summary>Group index: how much slower than in vacuum light travels.</summary>
    public Known<double>? GroupIndex { get; } = sheet.Real("group-index");
}
