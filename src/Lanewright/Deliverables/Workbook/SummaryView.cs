using Lanewright.Deliverables.Tables;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables.Workbook;

/// <summary>What a plan comes to, as a table of names and values.</summary>
public static class SummaryView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new(
        "summary",
        [new("what", 40), new("value", 34, ColumnKind.Mixed), new("unit", 12)],
        () => Rows(designed, PlanSummary.Of(designed)));

    private static Cell Language() =>
        Numerals.TryWhole(Model.Binding.PlanLanguage.Version, out var number) ? number : Model.Binding.PlanLanguage.Version;

    private static IEnumerable<Cell[]> Rows(DesignedPlan designed, PlanSummary summary)
    {
        var plan = designed.Plan;
        yield return ["plan", plan.Name, ""];
        yield return ["title", plan.Title, ""];
        if (plan.Revision.Length > 0) yield return ["revision", plan.Revision, ""];
        if (plan.Date.Length > 0) yield return ["date", plan.Date, ""];
        yield return ["devices", summary.Devices, ""];
        yield return ["links", summary.Links, ""];
        yield return ["links that pass", summary.Passing, ""];
        yield return ["links that cannot be proved", summary.Unproven, ""];
        yield return ["links that fail", summary.Failing, ""];
        if (summary.ExpectedExceedances is { } expected)
            yield return ["links expected to exceed their loss limit", Math.Round(expected, 4), ""];
        yield return ["classes of links", summary.Classes, ""];
        yield return ["cables to lay", summary.Cables, ""];
        yield return ["price of what is to be bought", summary.Price.Units, plan.Currency];
        if (summary.Unpriced > 0) yield return ["lines of the parts list without a price, not in it", summary.Unpriced, ""];
        yield return ["most power of everything", summary.Power.Value, "W"];
        foreach (var severity in new[] { Severity.Error, Severity.Warning, Severity.Advice })
            yield return ["findings: " + FindingsView.Word(severity), designed.Findings.Count(f => f.Severity == severity), ""];
        var placeholders = designed.Parts.Count(p => p.ToBuy > 0 && p.Item.PriceMark == Mark.Invented);
        yield return ["lines of the parts list with placeholder prices", placeholders, ""];
        yield return ["language of the plan", Language(), ""];
    }
}
