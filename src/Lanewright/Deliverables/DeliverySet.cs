using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Json;
using Lanewright.Deliverables.Report;
using Lanewright.Deliverables.Tables;
using Lanewright.Deliverables.Workbook;

namespace Lanewright.Deliverables;

/// <summary>All documents of a compilation.</summary>
public static class DeliverySet
{
    /// <summary>The documents, each independent of the others.</summary>
    public static ImmutableArray<Deliverable> Of(Compilation compilation)
    {
        var set = ImmutableArray.CreateBuilder<Deliverable>();
        set.Add(new Deliverable("findings.json", stream => FindingsJson.Write(compilation, stream)));
        var ways = compilation is { Plan: { } plan, Design: { } design } ? LinkWays.Of(plan, design) : [];
        // The statistics of connectors take time for every class: two documents need them, and they are reckoned once.
        var summary = new Lazy<PlanSummary>(() => PlanSummary.Of(compilation));
        set.Add(new Deliverable("report.html", stream => HtmlReport.Write(compilation, ways, summary, stream)));
        if (compilation.Design is null) return set.ToImmutable();
        set.Add(Csv(PartsView.Of(compilation)));
        set.Add(Csv(PortsView.Of(compilation)));
        set.Add(Csv(CablesView.Of(compilation)));
        set.Add(new Deliverable("handover.xlsx", stream => HandoverWorkbook.Write(compilation, summary, stream)));
        set.Add(new Deliverable("links.json", stream => LinksJson.Write(compilation, stream)));
        set.AddRange(DrawingSet.Of(compilation.Plan!, ways));
        return set.ToImmutable();
    }

    private static Deliverable Csv(TableView table) => new(table.Name + ".csv", stream => CsvWriter.Write(table, stream));
}
