using Lanewright.Engineering.Fabrics;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>Quantities that may turn out otherwise, in words.</summary>
public static class BreakEvenWords
{
    /// <summary>A quantity as programs name it.</summary>
    public static string Key(BreakEvenQuantity quantity) => quantity switch
    {
        BreakEvenQuantity.ModulePrice => "module-price",
        BreakEvenQuantity.EnergyPrice => "energy-price",
        BreakEvenQuantity.Growth => "growth",
        BreakEvenQuantity.Oversubscription => "oversubscription",
        _ => "hosts",
    };

    /// <summary>A quantity as a heading has it.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="currency">The unit of prices.</param>
    public static string Title(BreakEvenQuantity quantity, string currency) => quantity switch
    {
        BreakEvenQuantity.ModulePrice => "Price of modules, times the catalogue's",
        BreakEvenQuantity.EnergyPrice => $"Price of energy, {currency} a kilowatt-hour",
        BreakEvenQuantity.Growth => "Growth a year",
        BreakEvenQuantity.Oversubscription => "Oversubscription allowed at the leaves",
        _ => "Hosts at the start",
    };

    /// <summary>A value of a quantity.</summary>
    public static string Value(BreakEvenQuantity quantity, decimal value) => quantity switch
    {
        BreakEvenQuantity.ModulePrice => Numerals.Plain((double)decimal.Round(value, 3)) + " times",
        BreakEvenQuantity.EnergyPrice => Numerals.Plain((double)decimal.Round(value, 4)),
        BreakEvenQuantity.Growth => Numerals.Plain((double)decimal.Round(value, 2)) + " %",
        BreakEvenQuantity.Oversubscription => Numerals.Plain((double)decimal.Round(value, 3)) + ":1",
        _ => Numerals.Grouped(value),
    };
}
