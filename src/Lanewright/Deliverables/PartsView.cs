using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Cost;
using Lanewright.Model.Catalogues;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>The parts list.</summary>
public static class PartsView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("parts",
    [
        new("model", 26), new("title", 52), new("kind", 16), new("length-m", 9, ColumnKind.Real), new("type", 20),
        new("needed", 9, ColumnKind.Whole),
        new("existing", 9, ColumnKind.Whole), new("from-stock", 10, ColumnKind.Whole), new("spares", 8, ColumnKind.Whole),
        new("to-buy", 9, ColumnKind.Whole), new("unit-price", 12, ColumnKind.Money),
        new("total-price", 15, ColumnKind.Money, IsSummed: true),
        new("unit-watts", 10, ColumnKind.Real), new("total-watts", 12, ColumnKind.Real, IsSummed: true), new("price-mark", 11),
    ], () => Rows(designed));

    /// <summary>A kind of catalogue item in one word.</summary>
    public static string KindOf(ICatalogueItem item) => item switch
    {
        DeviceModel device => device.Kind switch
        {
            DeviceKind.Host => "host",
            DeviceKind.Chassis => "chassis",
            DeviceKind.Panel => "panel",
            _ => "switch",
        },
        CardModel => "card",
        ModuleModel => "module",
        AssemblyModel assembly => assembly.Medium switch { CableMedium.Dac => "DAC", CableMedium.Aec => "AEC", _ => "AOC" },
        SundryModel small => small.Kind,
        _ => "cord",
    };

    /// <summary>How well the price of a line of the list is known.</summary>
    public static string PriceMarkOf(PartLine part) => part.IsPriced ? Marks.Name(part.Item.PriceMark) : LinePriceWords.Unknown;

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed)
    {
        foreach (var part in designed.Parts)
        {
            yield return
            [
                part.Item.Name, part.Item.Title, KindOf(part.Item), part.Length is { } length ? length.Metres : Cell.Empty, part.Type,
                part.Needed, part.Existing, part.FromStock, part.Spares, part.ToBuy,
                part.IsPriced ? part.UnitPrice.Units : Cell.Empty, part.IsMissingFromTotal ? Cell.Empty : part.Total.Units,
                part.UnitPower.Value, part.Power.Value, PriceMarkOf(part),
            ];
        }
    }
}
