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

    /// <summary>What is proven of an answer, and what is not.</summary>
    public static string Proof(BreakEven found)
    {
        var asked = found.Stretches.Sum(s => s.Between.Length + 2) - found.Stretches.Count(s => s.From == s.To);
        var within = found.Gap.Value > 0 ? $" to the proven gap of {found.Gap}" : "";
        return found.IsWholeRangeProven
            ? $"proven{within} for every value of the range: the least price is a concave chain, and its corners were solved for"
            : $"proven{within} at {Numerals.Whole(asked)} values, among them both sides of each change told, one step apart; between two "
                + "of them that have one winner another may win for a while";
    }

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
