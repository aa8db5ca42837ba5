using System.Collections.Frozen;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What sheets say while rules wait for errors to be mended: less is found and counted then, which is no better plan.</summary>
internal static class WaitingRules
{
    private static readonly FrozenSet<string> Codes =
        RuleBook.All.Where(r => r.NeedsWholePlan).Select(r => r.Kind.Code).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Whether a finding is of a rule that waits while there are such errors.</summary>
    public static bool CanWait(Finding finding) => Codes.Contains(finding.Kind.Code);

    /// <summary>Says it on a sheet; nothing where no rule waits.</summary>
    /// <param name="paper">The sheet.</param>
    /// <param name="judged">The result it shows.</param>
    /// <param name="which">Which text that is of, with a blank behind; empty where a sheet shows one text.</param>
    public static void Say(SheetPaper paper, JudgedPlan judged, string which = "")
    {
        if (judged.RulesWaiting == 0) return;
        paper.Markup.Element("p", $"The text {which}has errors: the figures leave out what these hide, and "
            + $"{Counted(judged.RulesWaiting)} about networks and loads "
            + $"{(judged.RulesWaiting == 1 ? "waits" : "wait")} until they are mended.", ("class", "alert"));
    }

    /// <summary>The same for the strip.</summary>
    public static string Short(int waiting) =>
        $"figures leave out what the errors hide; {Counted(waiting)} {(waiting == 1 ? "waits" : "wait")}";

    private static string Counted(int rules) => $"{Numerals.Grouped(rules)} {(rules == 1 ? "rule" : "rules")}";
}
