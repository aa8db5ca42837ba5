using Lanewright.Deliverables;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The most power as the sum of its lines.</summary>
internal static class WhyPower
{
    private const int MostRows = 2000;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed)
    {
        var total = PlanSummary.Of(designed).Power;
        paper.Heading($"{Numerals.Grouped((decimal)total.Value)} W at most",
            "Everything in use at its most, existing things with it, spares left out. What a strip of a rack carries stands on the sheet "
                + "Racks.");
        var table = PaperTable.Open(paper.Markup, "lines in watts, the largest first", "part", "kind", "length", "#in use", "#W each",
            "#W together");
        var parts = designed.Parts.Where(p => p.Power.Value > 0).OrderByDescending(p => p.Power.Value).ToList();
        foreach (var part in parts.Take(MostRows))
            table.Row(new Entry(part.Item.Name, paper.Site.To("parts", part.Item.Name)), PartsView.KindOf(part.Item),
                part.Length?.ToString() ?? "", Numerals.Grouped(part.Needed), Numerals.Plain(Math.Round(part.UnitPower.Value, 3)),
                Numerals.Grouped((decimal)part.Power.Value, 1));
        table.Row("sum", ["together", "", "", "", "", Numerals.Grouped((decimal)total.Value, 1)]);
        table.Close();
        if (parts.Count > MostRows)
            paper.Markup.Element("p", $"{Numerals.Grouped(parts.Count - MostRows)} smaller lines are in parts.csv among the documents; the "
                + "sum has them in it.", ("class", "soft"));
        return true;
    }
}
