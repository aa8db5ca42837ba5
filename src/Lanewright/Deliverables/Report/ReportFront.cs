using Lanewright.Deliverables.Markup;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>The front of the report: what it is about, the headline numbers, and what is wrong.</summary>
internal sealed class ReportFront(MarkupWriter markup, JudgedPlan judged)
{
    /// <summary>The heading over the findings: a plan without a fault has advice all the same.</summary>
    public const string Heading = "What was found";

    /// <summary>More findings than this of one kind are left to the other documents.</summary>
    public const int MostOfOneKind = 40;

    /// <summary>The title block.</summary>
    public void Title()
    {
        var plan = judged.Plan;
        markup.Open("header");
        markup.Element("h1", plan?.Title is { Length: > 0 } title ? title : plan?.Name ?? "A plan that cannot be read");
        if (plan is not null) Block(plan);
        else markup.Element("p", "Nothing could be made of the plan's file. What stands in the way is listed here.");
        markup.Close();
    }

    private void Block(Plan plan)
    {
        markup.Open("dl", ("class", "head"));
        Pair("plan", plan.Name);
        Pair("revision", plan.Revision);
        Pair("date", plan.Date);
        Pair("prices in", plan.Currency);
        Pair("files", string.Join(", ", plan.Sources.Select(s => s.Path)));
        markup.Close();
    }

    private void Pair(string name, string value)
    {
        if (value.Length == 0) return;
        markup.Open("div");
        markup.Element("dt", name);
        markup.Element("dd", value);
        markup.Close();
    }

    /// <summary>The headline numbers.</summary>
    public void Figures(Plan plan, PlanSummary summary)
    {
        markup.Open("section", ("class", "figures"));
        Figure(Numerals.Grouped(summary.Devices), "devices");
        Figure(Numerals.Grouped(summary.Links), "links");
        Figure(Numerals.Grouped(summary.Passing), "links pass");
        Figure(Numerals.Grouped(summary.Unproven), "links cannot be proved");
        Figure(Numerals.Grouped(summary.Failing), "links fail", summary.Failing > 0);
        Figure(Numerals.Grouped(summary.Classes), "classes of links");
        Figure(Numerals.Grouped(summary.Cables), "cables to lay");
        Figure(Numerals.Grouped(summary.Price.Units), $"{plan.Currency} to buy{summary.Missing}");
        Figure(Numerals.Grouped((decimal)(summary.Power.Value / 1000), 1), "kW at most");
        if (summary.ExpectedExceedances is { } expected)
            Figure(Numerals.Plain(Math.Round(expected, 2)), "links expected over their loss limit", expected >= 0.5);
        markup.Close();
    }

    private void Figure(string value, string name, bool needsAction = false)
    {
        markup.Open("div", ("class", needsAction ? "act" : "calm"));
        markup.Inline("b", value);
        markup.Inline("span", name);
        markup.Close();
    }

    /// <summary>The findings, errors first.</summary>
    public void Findings()
    {
        markup.Element("h2", Heading, ("id", "findings"));
        if (judged.Findings.IsEmpty) markup.Element("p", "Nothing. The plan raises no finding.");
        foreach (var severity in new[] { Severity.Error, Severity.Warning, Severity.Advice })
        {
            var findings = judged.Findings.Where(f => f.Severity == severity).ToList();
            if (findings.Count > 0) Group(severity, findings);
        }
    }

    private static void Row(HtmlTable table, Finding finding) => table.Row(
        finding.Kind.Code, finding.Kind.Name, ReportWords.Place(finding), finding.Message,
        finding.Evidence?.ToString() ?? "", Numerals.Grouped(finding.Count));

    private void Group(Severity severity, List<Finding> findings)
    {
        var heading = severity switch { Severity.Error => "Errors", Severity.Warning => "Warnings", _ => "Advice" };
        markup.Element("h3", $"{heading} ({Numerals.Grouped(findings.Count)})", ("class", severity == Severity.Error ? "alert" : "calm"));
        var table = HtmlTable.Open(markup, "|code", "|name", "place", "message", "evidence", "#count");
        foreach (var kind in findings.GroupBy(f => f.Kind.Code).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            foreach (var finding in kind.Take(MostOfOneKind))
                Row(table, finding);
            var rest = kind.Skip(MostOfOneKind).ToList();
            if (rest.Count > 0)
                table.Row(kind.Key, rest[0].Kind.Name, "", $"and {Numerals.Grouped(rest.Count)} more of this kind, in findings.json and "
                    + "in the workbook", "", Numerals.Grouped(rest.Sum(f => f.Count)));
        }
        table.Close();
    }
}
