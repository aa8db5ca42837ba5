using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Energy of what runs all year, with cooling and losses on top.</summary>
internal static class EnergyUse
{
    private const double WattsAKilowatt = 1000;

    /// <summary>Energy of one year.</summary>
    public static Energy OfYear(double watts, WantedFabric wanted) =>
        Energy.FromKilowattHours(watts / WattsAKilowatt * Duration.Year.Hours * (1 + wanted.Overhead.Value));

    /// <summary>Hundredths that one watt costs in a year.</summary>
    public static double PriceOfWattYear(WantedFabric wanted) =>
        OfYear(1, wanted).KilowattHours * (double)(wanted.EnergyPrice.PerKilowattHour * Money.FromUnits(1).Hundredths);
}
