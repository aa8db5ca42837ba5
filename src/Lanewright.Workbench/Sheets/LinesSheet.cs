using Lanewright.Deliverables;
using Lanewright.Deliverables.Report;

namespace Lanewright.Workbench.Sheets;

/// <summary>The lines between sites: where they run, what light they carry, and what is left at the far end.</summary>
internal static class LinesSheet
{
    private const int MostRows = 400;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Lines", "The plan cannot be read yet.");
        if (designed.Plan.Lines.IsEmpty)
            return paper.Nothing("Lines", "The plan has no line between sites. The page of the language tells how one is described.");
        paper.Heading("Lines");
        new ReportLines(paper.Markup, designed, (what, route) => paper.Site.To("why", $"{what}/{route}")).Write();
        var names = designed.Lines.Value.Lines
            .SelectMany(l => l.Routes.SelectMany((r, route) => r.Answer.Design.Channels.Select((_, channel) =>
                WhyChannel.Name(l.Statement.Index, route, channel))))
            .ToList();
        PaperTable.Write(paper.Markup, LinesView.Of(designed),
            "lines, channel by channel; a level, a noise or a margin opens what it is made of",
            MostRows, (column, _, row) => column is "launch-dbm" or "received-dbm" or "osnr-db" or "gsnr-db" or "margin-db"
                && row < names.Count ? paper.Site.To("why", names[row]) : "");
        PaperTable.Write(paper.Markup, SpansView.Of(designed), "spans", MostRows, (_, _) => "");
        return true;
    }
}
