using Lanewright.Deliverables.Labels;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Workbook;

/// <summary>All tables of a plan in one workbook.</summary>
public static class HandoverWorkbook
{
    /// <summary>Writes it.</summary>
    public static void Write(DesignedPlan designed, Stream stream)
    {
        using var book = new WorkbookFile(stream);
        book.Add("Summary", SummaryView.Of(designed));
        book.Add("Findings", FindingsView.Of(designed.Findings));
        book.Add("Links", LinksView.Of(designed));
        book.Add("Parts", PartsView.Of(designed));
        book.Add("Ports", PortsView.Of(designed));
        book.Add("Cables", CablesView.Of(designed));
        book.Add("Pathways", PathwaysView.Of(designed));
        if (!PullPlanView.IsEmpty(designed)) book.Add("Pull plan", PullPlanView.Of(designed));
        book.Add("Racks", RacksView.Of(designed));
        book.Add("Feeds", FeedsView.Of(designed));
        if (!designed.Plan.Power.IsEmpty)
        {
            book.Add("Feed totals", FeedTotalsView.Of(designed));
            book.Add("Outlets", OutletsView.Of(designed));
        }
        if (designed.Plan.Policy.SpareLevel is not null) book.Add("Spares", SparesView.Of(designed));
        book.Add("Labels", LabelsView.Of(designed));
        if (!designed.Plan.Trunks.IsEmpty)
        {
            book.Add("Trunks", TrunksView.Of(designed));
            book.Add("Patches", PatchesView.Of(designed));
        }
        if (designed.Plan.Lines.IsEmpty) return;
        book.Add("Lines", LinesView.Of(designed));
        book.Add("Spans", SpansView.Of(designed));
    }
}
