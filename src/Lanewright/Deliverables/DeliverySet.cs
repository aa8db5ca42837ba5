using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Drawings.Elevation;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Deliverables.Drawings.Floor;
using Lanewright.Deliverables.Drawings.Lines;
using Lanewright.Deliverables.Drawings.Panels;
using Lanewright.Deliverables.Drawings.Section;
using Lanewright.Deliverables.Drawings.Trace;
using Lanewright.Deliverables.Fabrics;
using Lanewright.Deliverables.Json;
using Lanewright.Deliverables.Labels;
using Lanewright.Deliverables.Report;
using Lanewright.Deliverables.Tables;
using Lanewright.Deliverables.Workbook;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>All documents of a judged plan.</summary>
public static class DeliverySet
{
    /// <summary>Documents that only plans with something to put into them have.</summary>
    public static ImmutableArray<string> OfSomePlans { get; } =
    [
        "spares.csv", "feed-totals.csv", "outlets.csv", "pull-plan.csv", "lines.csv", "spans.csv", "lines.json", "trunks.csv",
        "patches.csv", "trunk-sizes.csv",
    ];

    /// <summary>The documents, each independent of the others.</summary>
    public static ImmutableArray<Deliverable> Of(JudgedPlan judged)
    {
        var findings = new Deliverable("findings.json", stream => FindingsJson.Write(judged, stream));
        if (judged.Designed is not { } designed)
            return [findings, new Deliverable("report.html", stream => HtmlReport.Write(judged, [], stream))];
        var ways = LinkWays.Of(designed.Plan, designed.Design);
        return
        [
            findings,
            new Deliverable("report.html", stream => HtmlReport.Write(judged, ways, stream)),
            Csv(PartsView.Of(designed)),
            Csv(PortsView.Of(designed)),
            Csv(CablesView.Of(designed)),
            Csv(PathwaysView.Of(designed)),
            .. PullPlanView.IsEmpty(designed) ? [] : (IEnumerable<Deliverable>)[Csv(PullPlanView.Of(designed))],
            Csv(RacksView.Of(designed)),
            Csv(FeedsView.Of(designed)),
            .. designed.Plan.Power.IsEmpty ? [] : Power(designed),
            Csv(LabelsView.Of(designed)),
            new Deliverable("labels.html", stream => LabelSheets.Write(designed, stream)),
            .. designed.Plan.Trunks.IsEmpty ? [] : Plant(designed),
            .. designed.Plan.Policy.SpareLevel is null ? [] : (IEnumerable<Deliverable>)[Csv(SparesView.Of(designed))],
            new Deliverable("handover.xlsx", stream => HandoverWorkbook.Write(designed, stream)),
            new Deliverable("links.json", stream => LinksJson.Write(designed, stream)),
            .. DrawingSet.Of(designed.Plan, ways),
            .. FabricDrawingSet.Of(designed.Load),
            .. FloorSet.Of(designed),
            .. SectionSet.Of(designed),
            .. ElevationSet.Of(designed),
            .. PanelSet.Of(designed),
            .. TraceSet.Of(designed),
            .. Lines(designed),
            .. designed.Sizing.Value is { } study
                ? FabricDocuments.Drawings(designed.Plan, study, "drawings/", study.DrawnQuantities)
                : [],
        ];
    }

    private static IEnumerable<Deliverable> Power(DesignedPlan designed) =>
        [Csv(FeedTotalsView.Of(designed)), Csv(OutletsView.Of(designed))];

    private static IEnumerable<Deliverable> Plant(DesignedPlan designed) =>
        [Csv(TrunksView.Of(designed)), Csv(PatchesView.Of(designed)), Csv(TrunkSizesView.Of(designed))];

    private static IEnumerable<Deliverable> Lines(DesignedPlan designed) => designed.Plan.Lines.IsEmpty ? [] :
    [
        Csv(LinesView.Of(designed)),
        Csv(SpansView.Of(designed)),
        new Deliverable("lines.json", stream => PlanLinesJson.Write(designed.Lines.Value.Lines, designed, stream)),
        .. LineDrawingSet.Of(designed),
    ];

    private static Deliverable Csv(TableView table) => new(table.Name + ".csv", stream => CsvWriter.Write(table, stream));
}
