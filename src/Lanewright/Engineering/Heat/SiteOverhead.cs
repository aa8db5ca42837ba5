using Lanewright.Quantities;

namespace Lanewright.Engineering.Heat;

/// <summary>What a site draws beyond its equipment.</summary>
public static class SiteOverhead
{
    /// <summary>Its share of the energy of the site.</summary>
    /// <param name="pue">Energy of the site over that of the equipment, 1 or more.</param>
    public static Share Of(double pue) => Share.From(1 - (1 / pue));
}
