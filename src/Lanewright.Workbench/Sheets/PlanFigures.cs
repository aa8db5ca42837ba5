using Lanewright.Deliverables;
using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What a plan comes to, in the few numbers that two texts of it are held against one another by.</summary>
/// <param name="Summary">Its headline numbers; null where nothing could be made of its text.</param>
/// <param name="Currency">The unit of its prices.</param>
/// <param name="LeastMargin">The least margin of loss of any link, in dB; null where no link has one.</param>
/// <param name="Errors">Findings that are errors.</param>
/// <param name="Warnings">Findings that are warnings.</param>
/// <param name="RulesWaiting">Rules that wait until its errors are mended.</param>
internal sealed record PlanFigures(
    PlanSummary? Summary, string Currency, double? LeastMargin, int Errors, int Warnings, int RulesWaiting)
{
    /// <summary>The figures of a plan.</summary>
    public static PlanFigures Of(JudgedPlan judged) => new(
        judged.Designed is { } designed ? PlanSummary.Of(designed) : null,
        judged.Plan?.Currency ?? "",
        judged.Designed is { } known ? LinkKind.All(known).Values.Min(k => k.Margin) : null,
        judged.Findings.Count(f => f.Severity == Severity.Error),
        judged.Findings.Count(f => f.Severity == Severity.Warning),
        judged.RulesWaiting);
}
