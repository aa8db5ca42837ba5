using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Holds a priced design against the limits that can be told only once it is priced.</summary>
internal static class BrokenLimits
{
    /// <summary>The first limit it breaks, in a few words; empty when it keeps them all.</summary>
    public static string Of(PricedDesign design, WantedFabric wanted)
    {
        if (wanted.RackUnits is { } units && design.End.RackUnits > units)
            return $"its switches take {Numerals.Whole(design.End.RackUnits)} rack units and {Numerals.Whole(units)} are allowed";
        if (wanted.RackPower is { } power && design.End.RackWatts > power.Value)
            return $"its switches draw {Shown(design.End.RackWatts, "W")} in one rack and {power} are allowed";
        if (wanted.RackWeight is { } mass && design.End.RackKilograms > mass.Kilograms)
            return $"its switches weigh {Shown(design.End.RackKilograms, "kg")} in one rack and {mass} are allowed";
        if (wanted.Budget is { } budget && design.Cost.Total > budget)
            return $"it costs {design.Cost.Total} and the budget is {budget}";
        return "";
    }

    private static string Shown(double value, string unit) => Numerals.Shown(value, unit);
}
