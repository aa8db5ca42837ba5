using Lanewright.Deliverables.Report;
using Lanewright.Engineering.Choice;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>A class of links: its lanes, its losses, every check, and why other ways lost.</summary>
internal static class ClassSheet
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Class of links", "The plan cannot be read yet.");
        if (paper.Now.Links?.Kinds.FirstOrDefault(k => k.Name == paper.Thing) is not { } kind)
            return paper.Unknown("Class of links", $"There is no class '{paper.Thing}'.");
        paper.Heading($"Class {kind.Name}", $"{kind.Links} links, {kind.Rate}, {kind.Made}");
        paper.Markup.Open("p");
        paper.Way("its links", paper.Site.Asking("links", kind.Name));
        paper.Markup.Close();
        Way(paper, designed, kind.Name);
        return true;
    }

    /// <summary>Everything that is known of the way a class is made in.</summary>
    public static void Way(SheetPaper paper, DesignedPlan designed, string name)
    {
        if (paper.Now.Ways.FirstOrDefault(w => w.Members.Any(m => m.Name == name)) is not { } way)
        {
            paper.Markup.Element("p", "No way was found to make these links; the findings say why.", ("class", "empty"));
            return;
        }
        new ReportWay(paper.Markup, designed.Plan, way).Write();
        Rules(paper, way.Solution);
    }

    private static void Rules(SheetPaper paper, Solution solution)
    {
        paper.Markup.Element("h3", "The rules behind these comparisons");
        paper.Markup.Open("ul", ("class", "list"));
        foreach (var rule in RuleBook.All.OfType<CheckRule>().Where(r => solution.Checks.Any(c => c.Name == r.CheckName)))
        {
            paper.Markup.Open("li");
            paper.Way($"{rule.Kind.Code} {rule.Kind.Name}", paper.Site.To("rules", rule.Kind.Code));
            paper.Markup.Text(" judges " + rule.CheckName);
            paper.Markup.Close();
        }
        paper.Markup.Close();
    }
}
