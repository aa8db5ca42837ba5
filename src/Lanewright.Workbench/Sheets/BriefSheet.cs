using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The brief: the job, its headline numbers, what is wrong, and what it costs.</summary>
internal static class BriefSheet
{
    private const int MostFindings = 12;
    private const double HalfALink = 0.5;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        var plan = paper.Judged.Plan;
        paper.Heading("Brief", plan is null
            ? "Nothing can be made of the plan's text as it stands. What is in the way is listed here; everything else fills in "
                + "as soon as it is put right."
            : plan.Title);
        WaitingRules.Say(paper, paper.Judged);
        if (paper.Judged.Designed is { } designed)
            Figures(paper, designed.Plan.Currency, PlanSummary.Of(designed));
        paper.Markup.Open("div", ("class", "halves"));
        Wrong(paper);
        if (paper.Judged.Designed is { } known)
        {
            paper.Markup.Open("section");
            Costs(paper, known);
            Carries(paper, known);
            paper.Markup.Close();
        }
        paper.Markup.Close();
        return true;
    }

    /// <summary>The headline numbers; each opens what it is made of.</summary>
    private static void Figures(SheetPaper paper, string currency, PlanSummary summary)
    {
        var (markup, site) = (paper.Markup, paper.Site);
        markup.Open("section", ("class", "figures"), ("aria-label", "headline numbers"));
        Figure(Numerals.Grouped(summary.Price.Units), $"{currency} to buy{summary.Missing}", site.To("why", "price"));
        Figure(Numerals.Grouped((decimal)(summary.Power.Value / 1000), 1), "kW at most", site.To("why", "power"));
        Figure(Numerals.Grouped(summary.Devices), "devices", site.To("why", "devices"));
        Figure(Numerals.Grouped(summary.Cables), "cables to lay", site.To("why", "cables"));
        Figure(Numerals.Grouped(summary.Links), "links", site.To("links"));
        Figure(Numerals.Grouped(summary.Passing), "links pass", site.To("why", "verdicts"));
        Figure(Numerals.Grouped(summary.Unproven), "links cannot be proved", site.Asking("links", "unproven"));
        Figure(Numerals.Grouped(summary.Failing), "links fail", site.Asking("links", "fail"), summary.Failing > 0);
        Figure(Numerals.Grouped(summary.Classes), "classes of links", site.To("why", "verdicts"));
        if (summary.ExpectedExceedances is { } expected)
            Figure(Numerals.Plain(Math.Round(expected, 2)), "links expected over their loss limit", site.To("why", "verdicts"),
                expected >= HalfALink);
        markup.Close();
        return;

        void Figure(string value, string name, string address, bool needsAction = false)
        {
            markup.Open("div", ("class", needsAction ? "act" : "calm"));
            markup.Open("a", ("href", address));
            markup.Inline("b", value);
            markup.Inline("span", name);
            markup.Close();
            markup.Close();
        }
    }

    private static void Wrong(SheetPaper paper)
    {
        paper.Markup.Open("section");
        paper.Markup.Element("h2", "What is wrong");
        var findings = paper.Judged.Findings.Where(f => f.Severity != Severity.Advice).OrderByDescending(f => f.Severity).ToList();
        if (findings.Count == 0) paper.Markup.Element("p", "Nothing: no error and no warning.");
        paper.Markup.Open("ul", ("class", "wrong"));
        foreach (var finding in findings.Take(MostFindings)) FindingWords.Item(paper, finding);
        paper.Markup.Close();
        var rest = paper.Judged.Findings.Length - Math.Min(findings.Count, MostFindings);
        if (rest > 0)
        {
            paper.Markup.Open("p");
            paper.Way($"{Numerals.Grouped(rest)} more findings and advice", paper.Site.To("findings"));
            paper.Markup.Close();
        }
        paper.Markup.Close();
    }

    private static void Costs(SheetPaper paper, DesignedPlan designed)
    {
        paper.Markup.Element("h2", "What it costs");
        var kinds = designed.Parts.GroupBy(p => PartsView.KindOf(p.Item))
            .Select(g => (Kind: g.Key, Buy: g.Sum(p => p.ToBuy), Price: g.Sum(p => p.Total.Units), Watts: g.Sum(p => p.Power.Value)))
            .OrderByDescending(k => k.Price).ThenBy(k => k.Kind, StringComparer.Ordinal).ToList();
        if (kinds.Count == 0)
        {
            paper.Markup.Element("p", "There is nothing to buy.");
            return;
        }
        var all = kinds.Sum(k => k.Price);
        var table = PaperTable.Open(paper.Markup, "price and power by kind of part", "kind", "#to buy", "#" + designed.Plan.Currency,
            "#of all", "#kW at most");
        foreach (var kind in kinds)
            table.Row(new Entry(kind.Kind, paper.Site.Asking("parts", kind.Kind)), Numerals.Grouped(kind.Buy),
                new Entry(Numerals.Grouped(kind.Price), paper.Site.Asking("parts", kind.Kind)),
                all > 0 ? Numerals.Fixed(kind.Price / all * 100, 1) + " %" : "", Kilowatts(kind.Watts));
        table.Row("sum", ["together", "", Numerals.Grouped(all), "", Kilowatts(kinds.Sum(k => k.Watts))]);
        table.Close();
    }

    private static string Kilowatts(double watts) => Numerals.Grouped((decimal)(watts / 1000), 1);

    private static void Carries(SheetPaper paper, DesignedPlan designed)
    {
        paper.Markup.Element("h2", "What it carries");
        if (designed.Load.Demands.IsEmpty)
        {
            paper.Markup.Element("p", "The plan states no demand, so nothing is said of loads.");
            return;
        }
        var table = PaperTable.Open(paper.Markup, "demands", "demand", "kind", "#fullest link");
        foreach (var study in designed.Load.Demands)
        {
            var sheet = paper.Site.To("fabric", Identifiers.Demand(study.Demand.Index));
            table.Row(new Entry(study.Demand.Name, sheet), LoadWords.Kind(study),
                new Entry(LoadWords.Percent(study.MaxUtilisation), sheet + "#fullest", study.IsOverloaded ? "alert" : ""));
        }
        table.Close();
    }
}
