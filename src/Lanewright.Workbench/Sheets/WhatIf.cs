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
        var pairs = new FindingPairs(saved.Findings, typed.Findings);
        Changed = pairs.Changed;
        var waited = pairs.New.ToLookup(f => Before.RulesWaiting > 0 && WaitingRules.CanWait(f));
        var waits = pairs.Gone.ToLookup(f => After.RulesWaiting > 0 && WaitingRules.CanWait(f));
        (New, NowJudged) = ([.. waited[false]], [.. waited[true]]);
        (Gone, NotJudged) = ([.. waits[false]], [.. waits[true]]);
    }

    /// <summary>The plan as saved.</summary>
    public PlanFigures Before { get; }

    /// <summary>The plan as typed.</summary>
    public PlanFigures After { get; }

    /// <summary>Findings only the typed text has.</summary>
    public IReadOnlyList<Finding> New { get; }

    /// <summary>Findings of the typed text by rules that waited in the saved one.</summary>
    public IReadOnlyList<Finding> NowJudged { get; }

    /// <summary>Findings that both have, with other numbers.</summary>
    public IReadOnlyList<(Finding Was, Finding Is)> Changed { get; }

    /// <summary>Findings only the saved text has.</summary>
    public IReadOnlyList<Finding> Gone { get; }

    /// <summary>Findings of the saved text by rules that wait in the typed one: nobody knows whether they are gone.</summary>
    public IReadOnlyList<Finding> NotJudged { get; }

    /// <summary>Whether rules wait in neither text. Figures of a plan that errors hide a part of are no gain on those of a whole
    /// one.</summary>
    public bool IsFair => Before.RulesWaiting == 0 && After.RulesWaiting == 0;

    /// <summary>Holds one against the other.</summary>
    public static WhatIf Of(JudgedPlan saved, JudgedPlan typed) => new(saved, typed);

    /// <summary>A difference with its sign.</summary>
    public static string Signed(decimal value, int decimals = 0) => (value > 0 ? "+" : "") + Numerals.Grouped(value, decimals);

    /// <summary>The difference of two figures as they are shown, with its sign; empty where they are shown alike.</summary>
    public static string Difference(decimal before, decimal after, int decimals = 0)
    {
        var difference = Rounded(after, decimals) - Rounded(before, decimals);
        return difference == 0 ? "" : Signed(difference, decimals);
    }

    private static decimal Rounded(decimal value, int decimals) => decimal.Round(value, decimals, MidpointRounding.AwayFromZero);
}
