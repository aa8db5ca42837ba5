using Lanewright.Deliverables;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The price to buy as the sum of its lines.</summary>
internal static class WhyPrice
{
    private const int MostRows = 2000;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed)
    {
        var total = PlanSummary.Of(designed).Price;
        paper.Heading($"{designed.Plan.Currency} {Numerals.Grouped(total.Units, 2)} to buy{PlanSummary.Of(designed).Missing}",
            "The sum of all lines of the parts list. To buy is what is needed, less what stands there already and what lies in stock, and "
                + "the spares on top.");
        var table = PaperTable.Open(paper.Markup, $"lines in {designed.Plan.Currency}, the dearest first", "part", "kind", "length",
            "#needed", "#existing", "#from stock", "#spares", "#to buy", "#each", "#together", "how well the price is known");
        foreach (var part in designed.Parts.OrderByDescending(p => p.Total.Units).Take(MostRows))
            table.Row(new Entry(part.Item.Name, paper.Site.To("parts", part.Item.Name)), PartsView.KindOf(part.Item),
                part.Length?.ToString() ?? "", Numerals.Grouped(part.Needed), Less(part.Existing), Less(part.FromStock),
                part.Spares > 0 ? "+" + Numerals.Grouped(part.Spares) : "", Numerals.Grouped(part.ToBuy),
                part.IsPriced ? Numerals.Grouped(part.UnitPrice.Units, 2) : "",
                part.IsMissingFromTotal ? "" : Numerals.Grouped(part.Total.Units, 2), PartsView.PriceMarkOf(part));
        table.Row("sum", ["together", "", "", "", "", "", "", "", "", Numerals.Grouped(total.Units, 2), ""]);
        table.Close();
        if (designed.Parts.Length > MostRows)
            paper.Markup.Element("p", $"{Numerals.Grouped(designed.Parts.Length - MostRows)} cheaper lines are in parts.csv among the "
                + "documents; the sum has them in it.", ("class", "soft"));
        return true;
    }

    private static string Less(long count) => count > 0 ? "-" + Numerals.Grouped(count) : "";
}
