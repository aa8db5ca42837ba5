using Lanewright.Deliverables;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Workbench.Sheets;

/// <summary>How many links pass, cannot be proved and fail, class by class, with the comparison that is nearest to its limit.</summary>
internal static class WhyVerdicts
{
    private const int MostRows = 2000;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed)
    {
        var summary = PlanSummary.Of(designed);
        paper.Heading($"{Numerals.Grouped(summary.Passing)} of {Numerals.Grouped(summary.Links)} links pass",
            $"{Numerals.Grouped(summary.Unproven)} cannot be proved, {Numerals.Grouped(summary.Failing)} fail. Links that are alike are "
                + "judged once and counted as often as they occur; a class opens all its comparisons.");
        var table = PaperTable.Open(paper.Markup, "classes of links, the least share of a limit left first", "class", "set", "made with",
            "#links", "verdict", "nearest to its limit", "#value", "#limit", "#margin", "weakest mark");
        foreach (var (name, choice, solution, links) in Shares(designed).Take(MostRows)) Row(paper, table, name, choice, solution, links);
        table.Row("sum", ["together", "", "", Numerals.Grouped(summary.Links), "", "", "", "", "", ""]);
        table.Close();
        if (summary.Classes > MostRows)
            paper.Markup.Element("p", "Further classes are in links.json among the documents.", ("class", "soft"));
        return true;
    }

    private static IEnumerable<(string Name, ClassChoice Choice, Solution? Solution, long Links)> Shares(DesignedPlan designed) =>
        designed.Design.Choices
            .SelectMany(c => c.Shares.IsEmpty
                ? [(Identifiers.Class(c.Class.Index, 0), c, (Solution?)null, (long)c.Class.Count)]
                : c.Shares.Select((s, i) => (Identifiers.Class(c.Class.Index, i), c, (Solution?)s.Solution, (long)s.Links)))
            .OrderBy(s => s.Item3 is { } made && Nearest(made) is { } check ? ShareLeft(check) : double.MinValue);

    private static void Row(SheetPaper paper, PaperTable table, string name, ClassChoice choice, Solution? solution, long links)
    {
        var check = solution is null ? null : Nearest(solution);
        table.Row(new Entry(name, paper.Site.To("classes", name)), choice.Class.SetNames, solution?.Name ?? "nothing found",
            Numerals.Grouped(links), Verdict(solution?.Verdict ?? Engineering.Links.Verdict.Fail), check?.Name ?? "",
            Value(check?.Value, check?.Unit), Value(check?.Limit, check?.Unit), Value(check?.Margin, check?.MarginUnit),
            solution is null ? "" : Marks.Name(solution.Mark));
    }

    private static Entry Verdict(Verdict verdict) => new(Checks.Word(verdict), "", verdict switch
    {
        Engineering.Links.Verdict.Fail => "stop",
        Engineering.Links.Verdict.Unproven => "open",
        _ => "",
    });

    private static string Value(double? value, string? unit) => value is { } v ? Numerals.Unit(Math.Round(v, 3), unit ?? "") : "";

    /// <summary>The comparison with the least of its limit left; advice and those without a limit do not count.</summary>
    private static Check? Nearest(Solution solution) =>
        solution.Checks.Where(c => !c.IsAdvice && c is { Margin: not null, Limit: not null }).MinBy(ShareLeft);

    private static double ShareLeft(Check check) =>
        (check.Margin ?? 0) / Math.Max(Math.Abs(check.Limit ?? 0), double.Epsilon);
}
