using Lanewright.Deliverables;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What if: the plan as typed beside the plan as saved, with the difference.</summary>
internal static class CompareSheet
{
    private const int MostRows = 200;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        var typed = paper.Desk.Files().Where(f => f.IsTyped).Select(f => f.Name).ToList();
        if (typed.Count == 0)
            return paper.Nothing("What if", "Nothing is typed that is not saved, so there is nothing to hold against the plan. Change "
                + "its text on the sheet Plan: every sheet shows what would be, and this one the difference, until you save it or give "
                + "it up.");
        paper.Heading("What if", $"The text as typed ({string.Join(", ", typed)}) beside the text on disk.");
        paper.Markup.Open("p");
        paper.Way("Save it or give it up on the sheet Plan", paper.Site.To("plan", typed[0]));
        paper.Markup.Close();
        Figures(paper, paper.Now.Saved.Designed, paper.Judged.Designed);
        Found(paper, "Findings that are new", Less(paper.Judged.Findings, paper.Now.Saved.Findings));
        Found(paper, "Findings that are gone", Less(paper.Now.Saved.Findings, paper.Judged.Findings));
        Parts(paper, paper.Now.Saved, paper.Judged);
        return true;
    }

    private static void Figures(SheetPaper paper, DesignedPlan? before, DesignedPlan? after)
    {
        if (before is null || after is null)
        {
            paper.Markup.Element("p", "One of the two texts cannot be read, so their figures cannot be held against one another.");
            return;
        }
        var (a, b) = (PlanSummary.Of(before), PlanSummary.Of(after));
        var table = PaperTable.Open(paper.Markup, "headline numbers", "", "#as saved", "#as typed", "#difference");
        Row("devices", a.Devices, b.Devices);
        Row("links", a.Links, b.Links);
        Row("cables to lay", a.Cables, b.Cables);
        Row(after.Plan.Currency + " to buy", a.Price.Units, b.Price.Units);
        Row("W at most", (decimal)a.Power.Value, (decimal)b.Power.Value);
        Row("links pass", a.Passing, b.Passing);
        Row("links cannot be proved", a.Unproven, b.Unproven);
        Row("links fail", a.Failing, b.Failing);
        if (LeastMargin(before) is { } worst && LeastMargin(after) is { } now)
            table.Row("least margin of loss, dB", Numerals.Fixed(worst, 2), Numerals.Fixed(now, 2), Signed((decimal)(now - worst), 2));
        table.Close();
        return;

        void Row(string name, decimal one, decimal other) => table.Row(name, Numerals.Grouped(one), Numerals.Grouped(other),
            new Entry(one == other ? "" : Signed(other - one, 0), "", "bold"));
    }

    private static double? LeastMargin(DesignedPlan designed) => LinkKind.All(designed).Values.Min(k => k.Margin);

    private static string Signed(decimal value, int decimals) => (value > 0 ? "+" : "") + Numerals.Grouped(value, decimals);

    /// <summary>Findings of the one that the other has not. Lines move when text is typed above them; words do not.</summary>
    private static List<Finding> Less(IEnumerable<Finding> these, IEnumerable<Finding> those)
    {
        var known = those.Select(f => (f.Kind.Code, f.Message)).ToHashSet();
        return [.. these.Where(f => !known.Contains((f.Kind.Code, f.Message)))];
    }

    private static void Found(SheetPaper paper, string heading, List<Finding> findings)
    {
        if (findings.Count == 0) return;
        paper.Markup.Element("h2", $"{heading}, {Numerals.Grouped(findings.Count)}");
        paper.Markup.Open("ul", ("class", "wrong"));
        foreach (var finding in findings.OrderByDescending(f => f.Severity).Take(MostRows)) FindingWords.Item(paper, finding);
        paper.Markup.Close();
    }

    private static void Parts(SheetPaper paper, JudgedPlan before, JudgedPlan after)
    {
        static Dictionary<(string, string), (long Buy, decimal Price)> Of(JudgedPlan judged) => judged.Parts.ToDictionary(
            p => (p.Item.Name, p.Length?.ToString() ?? ""), p => (p.ToBuy, p.Total.Units));
        var (a, b) = (Of(before), Of(after));
        var changed = a.Keys.Union(b.Keys).Where(k => a.GetValueOrDefault(k) != b.GetValueOrDefault(k))
            .OrderBy(k => k.Item1, Text.NaturalOrder.Instance).ThenBy(k => k.Item2, Text.NaturalOrder.Instance).ToList();
        if (changed.Count == 0) return;
        var table = PaperTable.Open(paper.Markup, "parts that differ", "model", "#length", "#to buy as saved", "#as typed", "#difference",
            "#difference in price");
        foreach (var key in changed.Take(MostRows))
        {
            var (one, other) = (a.GetValueOrDefault(key), b.GetValueOrDefault(key));
            table.Row(key.Item1, key.Item2, Numerals.Grouped(one.Buy), Numerals.Grouped(other.Buy), Signed(other.Buy - one.Buy, 0),
                Signed(other.Price - one.Price, 2));
        }
        table.Close();
    }
}
