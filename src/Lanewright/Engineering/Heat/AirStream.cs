using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Heat;

/// <summary>Air that carries heat away.</summary>
public sealed class AirStream(StandardsLibrary standards)
{
    private const double SecondsInHour = 3600;

    /// <summary>Density of air in kilograms a cubic metre at a height above the sea, by the standard atmosphere.</summary>
    public double Density(Length altitude) => standards.Facility("air", "density-at-sea").Value * Math.Pow(
        1 - (standards.Facility("air", "density-slope").Value * altitude.Metres), standards.Facility("air", "density-power").Value);

    /// <summary>How many times the volume at sea level is needed.</summary>
    public double Factor(Length altitude) => standards.Facility("air", "density-at-sea").Value / Density(altitude);

    /// <summary>Cubic metres an hour that carry a heat away.</summary>
    /// <param name="heat">The heat.</param>
    /// <param name="rise">How much warmer the air leaves than it came.</param>
    /// <param name="density">Kilograms a cubic metre.</param>
    public double CubicMetresAnHour(Watts heat, TemperatureRise rise, double density) =>
        SecondsInHour * heat.Value / (density * standards.Facility("air", "heat").Value * rise.Kelvin);

    /// <summary>How much warmer air leaves equipment than it came, where nothing better is known.</summary>
    public TemperatureRise UsualRise => TemperatureRise.FromKelvin(standards.Facility("air", "rise").Value);

    /// <summary>Heat in British thermal units an hour.</summary>
    public static double BtuAnHour(Watts heat) => heat.Value * BtuAnHourInWatt;

    /// <summary>A stream in cubic feet a minute.</summary>
    /// <param name="cubicMetresAnHour">The stream.</param>
    public static double CubicFeetAMinute(double cubicMetresAnHour) => cubicMetresAnHour / CubicMetresInCubicFoot / MinutesInHour;

    private const double MinutesInHour = 60;

    /// <summary>One cubic foot in cubic metres; a definition.</summary>
    private const double CubicMetresInCubicFoot = 0.028316846592;

    /// <summary>One watt in British thermal units an hour; a definition.</summary>
    private const double BtuAnHourInWatt = 3.412142;
}
