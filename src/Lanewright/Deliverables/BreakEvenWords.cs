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

    /// <summary>The cheapest option of a stretch, and how far that holds.</summary>
    public static string Cheapest(BreakEvenStretch stretch)
    {
        var name = stretch.Shape is null ? "nothing fits" : stretch.Name;
        if (stretch.Turns > 0)
            return $"by turns, {Numerals.Whole(stretch.Turns)} changes: {string.Join("; ", stretch.Others.Prepend(name))}";
        if (stretch.IsProven) return name;
        return stretch.ProvenShare.Value > 0
            ? $"{name} at every value solved, proven over {Part(stretch.ProvenShare)} of it"
            : $"{name} at every value solved, not proven between them";
    }

    /// <summary>What a stretch costs from its beginning to its end; told once where that is the same.</summary>
    public static string Cost(BreakEvenStretch stretch)
    {
        var (from, to) = (Numerals.Grouped(stretch.CostFrom.Units), Numerals.Grouped(stretch.CostTo.Units));
        return from == to ? from : $"{from} to {to}";
    }

    /// <summary>What is proven of an answer, what is not, and where the range ends.</summary>
    public static string Proof(BreakEven found)
    {
        var within = found.Gap.Value > 0 ? $" to the proven gap of {found.Gap}" : "";
        if (found.IsChain)
            return $"proven{within} for every value of the range: the least price is a concave chain, and its corners were solved for";
        var open = found.Stretches.Count(s => !s.IsProven);
        var proof = open == 0
            ? $"proven{within} for every value of the range"
            : $"proven{within} but for {Numerals.Whole(open)} {(open == 1 ? "stretch that is" : "stretches that are")} marked so";
        return $"{proof}; {Numerals.Whole(found.Asked)} values were solved, changes to the step, and between two of one winner nothing "
            + $"else is to be had for as little; {RangeOf(found.Quantity)}";
    }

    /// <summary>A part that is not the whole is never rounded up to it.</summary>
    private static string Part(Share share) => Numerals.Plain(Math.Floor(share.Percent * 10) / 10) + " %";

    private static string RangeOf(BreakEvenQuantity quantity) => quantity == BreakEvenQuantity.Growth
        ? "looked at from none to twice the growth wanted, and to 30 % at least"
        : "looked at from half of what is wanted to twice";

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
