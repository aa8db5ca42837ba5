using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines.Routes;

/// <summary>How much of the time routes are whole, from how often fibre is cut and how long a repair takes.</summary>
public static class RouteAvailability
{
    private const double MinutesInHour = 60;
    private const double ThousandKilometres = 1000;

    /// <summary>A single route.</summary>
    /// <param name="length">How long it is.</param>
    /// <param name="cutsInThousandKilometresAndYear">How often fibre of its kind is cut.</param>
    /// <param name="repair">From the cut until it works again.</param>
    public static Share Of(Length length, double cutsInThousandKilometresAndYear, Duration repair) => Share.From(
        Math.Max(0, 1 - (length.Kilometres / ThousandKilometres * cutsInThousandKilometresAndYear * repair.Hours / Duration.Year.Hours)));

    /// <summary>Two routes that fail independently, behind what both need.</summary>
    public static Share Either(Share first, Share second, Share common) =>
        Share.From(common.Value * (1 - ((1 - first.Value) * (1 - second.Value))));

    /// <summary>Minutes a year without it.</summary>
    public static double MinutesDown(Share up) => (1 - up.Value) * Duration.Year.Hours * MinutesInHour;
}
