using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Options with a tier more than a sibling that is no worse in anything: what one more tier is for, to grow further or to cost
/// less, it does not do then. A box is no such sibling, since nothing is left when it is out; nor is a shape beaten that is asked for by
/// name.</summary>
internal static class BeatenOptions
{
    private const int LeastTiers = 2;

    /// <summary>The answer with these among the shapes that lost.</summary>
    public static SizingAnswer Lost(SizingAnswer answer, WantedFabric wanted)
    {
        if (!wanted.Shapes.IsEmpty) return answer;
        var beaten = answer.Options
            .Select(o => (Option: o, By: answer.Options.FirstOrDefault(s => Beats(s, o))))
            .Where(o => o.By is not null)
            .ToDictionary(o => o.Option, o => Reason(o.Option, o.By ?? o.Option));
        return answer with
        {
            Options = [.. answer.Options.Where(o => !beaten.ContainsKey(o))],
            Lost =
            [
                .. answer.Lost.Concat(beaten.Select(b => new ShapeLost(b.Key.Shape, b.Value, b.Key.LowerBound))).OrderBy(l => l.Shape),
            ],
        };
    }

    /// <summary>Whether one is no worse than another in price, watts, rack units and growth, and no design of the other's shape can be
    /// cheaper.</summary>
    private static bool Beats(FabricOption one, FabricOption other) =>
        one.Tiers >= LeastTiers && one.Tiers < other.Tiers && (one.Needs.PortsMeet || !other.Needs.PortsMeet)
        && one.PriceOverYears <= other.LowerBound && one.Price <= other.Price
        && one.Watts.Value <= other.Watts.Value
        && one.RackUnits <= other.RackUnits && one.Needs.RackUnits <= other.Needs.RackUnits
        && one.GrowthLeft >= other.GrowthLeft;

    private static string Reason(FabricOption lost, FabricOption by) =>
        $"{FabricShapes.Word(by.Shape)} beats the cheapest of it in everything: it costs "
        + $"{Numerals.Grouped((lost.PriceOverYears - by.PriceOverYears).Units, 2)} more over the years, draws "
        + $"{Numerals.Grouped((decimal)(lost.Watts.Value - by.Watts.Value))} W more, takes "
        + $"{Numerals.Grouped(lost.RackUnits - by.RackUnits)} rack units more and can still grow by "
        + $"{Numerals.Grouped(lost.GrowthLeft)} hosts, not by {Numerals.Grouped(by.GrowthLeft)}";
}
