using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Loss that is kept back for what years bring.</summary>
public static class LineMargins
{
    private const double ThousandKilometres = 1000;

    /// <summary>Loss of the splices that repairs of so many years put in.</summary>
    public static Decibels Repair(StandardsLibrary standards, Length length, double years) => Repair(
        length, standards.LineValue("cut", "per-1000-km-year").Value, years, standards.LineValue("cut", "splices").Value,
        Decibels.From(standards.LineValue("splice", "loss").Value));

    /// <summary>The same with figures of one's own.</summary>
    /// <param name="length">How long the fibre is.</param>
    /// <param name="cutsInThousandKilometresAndYear">How often it is cut.</param>
    /// <param name="years">Years to plan for.</param>
    /// <param name="splicesForEach">Splices that a repair puts in.</param>
    /// <param name="splice">Loss of each.</param>
    public static Decibels Repair(
        Length length, double cutsInThousandKilometresAndYear, double years, double splicesForEach, Decibels splice) =>
        splice * (length.Kilometres / ThousandKilometres * cutsInThousandKilometresAndYear * years * splicesForEach);
}
