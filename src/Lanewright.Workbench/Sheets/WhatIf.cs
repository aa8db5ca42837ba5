using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The plan as saved beside the plan as typed.</summary>
internal sealed class WhatIf
{
    private WhatIf(JudgedPlan saved, JudgedPlan typed)
    {
        (Before, After) = (PlanFigures.Of(saved), PlanFigures.Of(typed));
        New = Less(typed.Findings, saved.Findings);
        Gone = Less(saved.Findings, typed.Findings);
    }

    /// <summary>The plan as saved.</summary>
    public PlanFigures Before { get; }

    /// <summary>The plan as typed.</summary>
    public PlanFigures After { get; }

    /// <summary>Findings only the typed text has.</summary>
    public IReadOnlyList<Finding> New { get; }

    /// <summary>Findings only the saved text has.</summary>
    public IReadOnlyList<Finding> Gone { get; }

    /// <summary>Holds one against the other.</summary>
    public static WhatIf Of(JudgedPlan saved, JudgedPlan typed) => new(saved, typed);

    /// <summary>A difference with its sign.</summary>
    public static string Signed(decimal value, int decimals = 0) => (value > 0 ? "+" : "") + Numerals.Grouped(value, decimals);

    /// <summary>Findings of the one that the other has not. Lines move when text is typed above them; words do not.</summary>
    private static List<Finding> Less(IEnumerable<Finding> these, IEnumerable<Finding> those)
    {
        var known = those.Select(f => (f.Kind.Code, f.Message)).ToHashSet();
        return [.. these.Where(f => !known.Contains((f.Kind.Code, f.Message)))];
    }
}
