using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Heat;

/// <summary>What air at the inlets of a class of equipment may be at a height above the sea.</summary>
/// <param name="Class">The class.</param>
/// <param name="RecommendedLow">Lower end of the recommended range.</param>
/// <param name="RecommendedHigh">Upper end.</param>
/// <param name="AllowableLow">Lower end of the allowable range.</param>
/// <param name="AllowableHigh">Upper end, lowered by the height.</param>
/// <param name="Highest">Height above which the class says nothing.</param>
public sealed record InletLimits(
    string Class, Known<Temperature> RecommendedLow, Known<Temperature> RecommendedHigh, Known<Temperature> AllowableLow,
    Known<Temperature> AllowableHigh, Known<Length> Highest)
{
    /// <summary>The limits of a class.</summary>
    public static InletLimits Of(StandardsLibrary standards, string airClass, Length altitude)
    {
        return new InletLimits(
            airClass,
            standards.Facility(airClass, "recommended-low").As(Temperature.FromCelsius),
            standards.Facility(airClass, "recommended-high").As(Temperature.FromCelsius),
            standards.Facility(airClass, "allowable-low").As(Temperature.FromCelsius),
            Derated(standards, airClass, altitude),
            standards.Facility(airClass, "highest").As(Length.FromMetres));
    }

    private static Known<Temperature> Derated(StandardsLibrary standards, string airClass, Length altitude)
    {
        var above = Math.Max(0, altitude.Metres - standards.Facility(airClass, "derate-above").Value);
        var lowered = above / standards.Facility(airClass, "derate-metres-per-degree").Value;
        return standards.Facility(airClass, "allowable-high").As(t => Temperature.FromCelsius(t - lowered));
    }
}
