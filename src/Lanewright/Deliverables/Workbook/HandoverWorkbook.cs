namespace Lanewright.Deliverables.Workbook;

/// <summary>All tables of a plan in one workbook.</summary>
public static class HandoverWorkbook
{
    /// <summary>Writes it.</summary>
    /// <param name="compilation">The results of a plan.</param>
    /// <param name="summary">Their headline numbers.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(Compilation compilation, Lazy<PlanSummary> summary, Stream stream)
    {
        using var book = new WorkbookFile(stream);
        book.Add("Summary", SummaryView.Of(compilation, summary));
        book.Add("Findings", FindingsView.Of(compilation));
        book.Add("Links", LinksView.Of(compilation));
        book.Add("Parts", PartsView.Of(compilation));
        book.Add("Ports", PortsView.Of(compilation));
        book.Add("Cables", CablesView.Of(compilation));
    }
}
