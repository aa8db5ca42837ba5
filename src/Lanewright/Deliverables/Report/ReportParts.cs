using Lanewright.Deliverables.Markup;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>The parts list with its totals.</summary>
internal static class ReportParts
{
    /// <summary>More lines than this are left to the other documents; the totals count all of them.</summary>
    public const int MostRows = 600;

    /// <summary>Writes it.</summary>
    public static void Write(MarkupWriter markup, DesignedPlan designed)
    {
        markup.Element("h2", "Parts", ("id", "parts"));
        var table = HtmlTable.Open(markup, "model", "what it is", "kind", "#length", "type", "#needed", "#there", "#from stock", "#spares",
            "#to buy", "#price of one", $"#price, {designed.Plan.Currency}", "#power", "price is");
        var (price, watts) = (Money.Zero, 0.0);
        foreach (var part in designed.Parts)
        {
            price += part.Total;
            watts += part.Power.Value;
        }
        foreach (var part in designed.Parts.Take(MostRows))
        {
            table.Row(
                part.Item.Name, part.Item.Title, PartsView.KindOf(part.Item), part.Length?.ToString() ?? "", part.Type,
                    Numerals.Grouped(part.Needed), Some(part.Existing),
                Some(part.FromStock), Some(part.Spares), Numerals.Grouped(part.ToBuy),
                part.IsPriced ? Numerals.Grouped(part.UnitPrice.Units, 2) : "",
                part.IsMissingFromTotal ? "" : Numerals.Grouped(part.Total.Units, 2),
                part.Power.Value > 0 ? Watt(part.Power.Value) : "", PartsView.PriceMarkOf(part));
        }
        table.Sum("total", "", "", "", "", "", "", "", "", "", "", Numerals.Grouped(price.Units, 2), Watt(watts), "");
        table.Close();
        if (designed.Parts.Length > MostRows)
            markup.Element("p", $"{Numerals.Grouped(designed.Parts.Length - MostRows)} more lines are in parts.csv and in the "
                + "workbook; the total counts them.", ("class", "soft"));
    }

    private static string Some(long count) => count == 0 ? "" : Numerals.Grouped(count);

    private static string Watt(double watts) => Numerals.Grouped((decimal)watts, 1) + " W";
}
