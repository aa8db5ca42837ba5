using Lanewright.Deliverables.Markup;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Deliverables.Report;

/// <summary>What marks mean, which prices are placeholders, and the cautions.</summary>
internal static class ReportNotes
{
    /// <summary>Weight above which one person does not lift: the ideal case of the published lifting equation, in kilograms.</summary>
    private static double LiftAlone => StandardsLibrary.Shipped.Facility("lift", "one-person").Value;

    /// <summary>Writes them.</summary>
    public static void Write(MarkupWriter markup, JudgedPlan judged)
    {
        markup.Element("h2", "Notes", ("id", "notes"));
        Marked(markup);
        if (judged.Designed is { } designed) Prices(markup, designed);
        Cautions(markup, judged.Plan);
    }

    private static void Marked(MarkupWriter markup)
    {
        markup.Element("h3", "How well values are known");
        markup.Element("p", "Every limit carries a mark, and a verdict carries the weakest mark of the values it used. Before money is "
            + "spent, check values with weak marks against the document they cite.");
        var table = HtmlTable.Open(markup, "mark", "what it means");
        foreach (var mark in Enum.GetValues<Mark>()) table.Row(Marks.Name(mark), Meaning(mark));
        table.Close();
    }

    private static string Meaning(Mark mark) => mark switch
    {
        Mark.Seen => "read in a text that prints it",
        Mark.Derived => "computed from other values",
        Mark.Memory => "recalled from the document and not checked against it",
        Mark.Weak => "recalled weakly, or taken over from a sister type",
        Mark.CommonPractice => "a habit of the trade without a document",
        _ => "a placeholder for planning, to be replaced by a quotation",
    };

    private static void Prices(MarkupWriter markup, DesignedPlan designed)
    {
        var placeholders = designed.Parts.Where(p => p.ToBuy > 0 && p.Item.PriceMark == Mark.Invented).ToList();
        markup.Element("h3", "Prices");
        if (placeholders.Count == 0)
        {
            markup.Element("p", "No price in the parts list is a placeholder.");
            return;
        }
        var total = placeholders.Aggregate(Money.Zero, (sum, p) => sum + p.Total);
        markup.Element("p", $"{ReportWords.Count(placeholders.Count, "line", "lines")} of the parts list, together "
            + $"{Numerals.Grouped(total.Units, 2)} {designed.Plan.Currency}, "
            + "have placeholder prices; the parts list marks them as invented. They help to compare ways, and they are no offer. Replace "
            + "them with quotations.");
    }

    private static void Cautions(MarkupWriter markup, Plan? plan)
    {
        markup.Element("h3", "Laser light");
        markup.Element("p", "The light in these links is infrared and cannot be seen, at any power. Never look into a port, the end of a "
            + "cord or a broken fibre, with or without an instrument "
            + "that magnifies, unless it is known to be dark. The laser class on the label of the equipment, local rules and the "
            + "instructions of competent persons prevail over this text.");
        markup.Element("h3", "Lifting");
        markup.Element("p", $"Equipment above {Numerals.Unit(LiftAlone, "kg")} takes two persons or a lift. That figure is the ideal-case "
            + "ceiling of the published lifting equation; reach, height and twist lower it. Local rules prevail.");
        Heavy(markup, plan);
        markup.Element("h3", "Mains power");
        markup.Element("p", "Work on mains supply, earthing and distribution is for licensed persons under the local electrical code. The "
            + "power in this report is for planning and sizes no circuit.");
        markup.Element("h3", "Openings in walls and floors");
        markup.Element("p", "Cables through rated walls and floors need fire-stopping to the local code by persons who are qualified for "
            + "it.");
    }

    private static void Heavy(MarkupWriter markup, Plan? plan)
    {
        if (plan is null) return;
        var heavy = plan.Devices.Groups.Select(g => g.Model).Where(m => m.Weight.Kilograms > LiftAlone).DistinctBy(m => m.Name)
            .OrderBy(m => m.Name, NaturalOrder.Instance).ToList();
        if (heavy.Count == 0) return;
        markup.Element("p", $"In this plan, without cards and modules: {string.Join(", ", heavy.Select(m => $"{m.Name} {m.Weight}"))}.");
    }
}
