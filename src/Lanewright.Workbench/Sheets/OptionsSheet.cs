using Lanewright.Deliverables.Report;

namespace Lanewright.Workbench.Sheets;

/// <summary>What fabric to buy: the options side by side and what would change the answer.</summary>
internal static class OptionsSheet
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Options", "The plan cannot be read yet.");
        if (designed.Sizing.Value is not { } study)
            return paper.Nothing("Options", "The plan asks for no fabric. A section 'wanted' with hosts and their rate asks for one; "
                + "the page of the language describes it.");
        paper.Heading("Options", "Complete fabrics that fit the wishes, each priced from the geometry of the hall.");
        new ReportSizing(paper.Markup, designed.Plan, study).Write();
        return true;
    }
}
