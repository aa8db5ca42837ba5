using Lanewright.Deliverables;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>How many cables are to be laid: set by set, since one cable may carry several links, and the cords of lines.</summary>
internal static class WhyCables
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed)
    {
        var total = PlanSummary.Of(designed).Cables;
        paper.Heading($"{Numerals.Grouped(total)} cables to lay", "One cable may carry several links: a fan-out serves as many ports as it "
            + "has legs. Cords at both ends of a trunk count as one cable; cables.csv among the documents has each with its way.");
        var (plan, design) = (designed.Plan, designed.Design);
        var table = PaperTable.Open(paper.Markup, "sets of links", "set", "#links", "#cables", "#links a cable");
        var sets = design.Cables.GroupBy(c => plan.Links.Statement(c.FirstLink))
            .Select(g => (Set: plan.Statements[g.Key].Name, Links: g.Sum(c => (long)c.Links), Cables: (long)g.Count()))
            .OrderByDescending(s => s.Cables).ThenBy(s => s.Set, Text.NaturalOrder.Instance);
        foreach (var (set, links, cables) in sets)
            table.Row(new Entry(set, paper.Site.Asking("links", set)), Numerals.Grouped(links), Numerals.Grouped(cables),
                Numerals.Plain(Math.Round((double)links / cables, 2)));
        if (total - design.Cables.Length is > 0 and var cords)
            table.Row(new Entry("cords of lines between sites", paper.Site.To("lines")), "", Numerals.Grouped(cords), "");
        table.Row("sum", ["together", "", Numerals.Grouped(total), ""]);
        table.Close();
        return true;
    }
}
