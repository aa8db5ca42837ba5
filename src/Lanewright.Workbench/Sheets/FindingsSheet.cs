using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>Everything that was found, errors first, each with its rule, its line and its evidence.</summary>
internal static class FindingsSheet
{
    private const int MostOfOneKind = 25;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        var findings = paper.Judged.Findings;
        if (findings.IsEmpty) return paper.Nothing("Findings", "Nothing was found: the plan is sound as far as it can be judged.");
        paper.Heading("Findings", "A code opens the page of its rule, a place opens the line in the plan.");
        WaitingRules.Say(paper, paper.Judged);
        foreach (var severity in new[] { Severity.Error, Severity.Warning, Severity.Advice })
        {
            var group = findings.Where(f => f.Severity == severity).ToList();
            if (group.Count == 0) continue;
            var heading = severity switch { Severity.Error => "Errors", Severity.Warning => "Warnings", _ => "Advice" };
            paper.Markup.Element("h2", $"{heading}, {Numerals.Grouped(group.Count)}");
            foreach (var kind in group.GroupBy(f => f.Kind.Code).OrderBy(g => g.Key, StringComparer.Ordinal)) Kind(paper, [.. kind]);
        }
        return true;
    }

    private static void Kind(SheetPaper paper, Finding[] alike)
    {
        paper.Markup.Open("ul", ("class", "wrong"));
        foreach (var finding in alike.Take(MostOfOneKind)) FindingWords.Item(paper, finding);
        paper.Markup.Close();
        if (alike.Length > MostOfOneKind)
            paper.Markup.Element("p", $"{Numerals.Grouped(alike.Length - MostOfOneKind)} more of {alike[0].Kind.Code} are in findings.json "
                + "among the documents.", ("class", "soft"));
    }
}
