using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Model.Catalogues;

/// <summary>One pair of host interface and media interface a module can run, so many times at once.</summary>
/// <param name="Host">The electrical side.</param>
/// <param name="Optical">The optical side, or null for a copper module.</param>
/// <param name="Copper">The copper side, or null for an optical module.</param>
/// <param name="Instances">How many of them run side by side.</param>
public sealed record Application(HostInterface Host, InterfaceType? Optical, CopperType? Copper, int Instances)
{
    /// <summary>The optical side of a module made for one wavelength of a line between sites; null for any other.</summary>
    public WavelengthType? Wavelength { get; init; }

    /// <summary>The media side's name.</summary>
    public string MediaName => Optical?.Name ?? Copper?.Name ?? Wavelength?.Name ?? "";

    /// <summary>The rate of each instance.</summary>
    public BitRate Rate => Host.Rate;

    /// <summary>The pair as the catalogue writes it.</summary>
    public override string ToString() => Host.Name + ">" + MediaName + (Instances > 1 ? " x" + Numerals.Whole(Instances) : "");
}
