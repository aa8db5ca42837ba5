namespace Lanewright.Engineering.Lines;

/// <summary>Ways to carry traffic between two sites, cheapest first.</summary>
public enum LineScheme
{
    /// <summary>Grey optics, a pair of fibres for each channel.</summary>
    Grey,

    /// <summary>Coarse wavelengths, received directly.</summary>
    CoarseDirect,

    /// <summary>Dense wavelengths, received directly.</summary>
    DenseDirect,

    /// <summary>Coherent without amplifiers.</summary>
    Coherent,

    /// <summary>Coherent with an amplifier behind the transmitters.</summary>
    Booster,

    /// <summary>Coherent with an amplifier before the receivers.</summary>
    Preamplifier,

    /// <summary>Coherent with both.</summary>
    BoosterAndPreamplifier,

    /// <summary>Coherent over several spans with amplifiers between them.</summary>
    InLine,
}
