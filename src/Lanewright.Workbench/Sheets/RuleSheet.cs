using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The page of a rule, the same that <c>explain</c> prints, with the findings it has here.</summary>
internal static class RuleSheet
{
    private const string Fence = "```";
    private const int MostFindings = 25;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (RulePage.Find(paper.Thing) is not { } page) return paper.Unknown("Rule", $"There is no rule '{paper.Thing}'.");
        paper.Heading($"{page.Kind.Code} {page.Kind.Name}");
        foreach (var heading in RulePage.Headings)
        {
            paper.Markup.Element("h2", heading);
            Text(paper, page.Section(heading));
        }
        var here = paper.Judged.Findings.Where(f => f.Kind.Code == page.Kind.Code).Take(MostFindings).ToList();
        paper.Markup.Element("h2", "In this plan");
        if (here.Count == 0) paper.Markup.Element("p", "Nothing of this kind was found.");
        paper.Markup.Open("ul", ("class", "wrong"));
        foreach (var finding in here) FindingWords.Item(paper, finding);
        paper.Markup.Close();
        return true;
    }

    /// <summary>Pages are written in paragraphs and fenced plans, and nothing else needs a look of its own.</summary>
    private static void Text(SheetPaper paper, string section)
    {
        var pieces = section.Split(Fence);
        for (var i = 0; i < pieces.Length; i++)
        {
            if (i % 2 == 1)
            {
                var lines = pieces[i].Split('\n');
                paper.Markup.Element("pre", string.Join('\n', lines.Skip(1)).TrimEnd());
                continue;
            }
            foreach (var paragraph in pieces[i].Split("\n\n", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
                paper.Markup.Element("p", paragraph.Replace("`", "", StringComparison.Ordinal));
        }
    }
}
