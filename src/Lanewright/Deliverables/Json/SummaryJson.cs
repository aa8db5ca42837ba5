using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Json;

/// <summary>What a build came to, as JSON.</summary>
public static class SummaryJson
{
    /// <summary>Writes the headline numbers and the names of the documents.</summary>
    public static void Write(JudgedPlan judged, IReadOnlyList<string> documents, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteNumber("errors", judged.Findings.Count(f => f.Severity == Severity.Error));
        writer.WriteNumber("warnings", judged.Findings.Count(f => f.Severity == Severity.Warning));
        writer.WriteNumber("advice", judged.Findings.Count(f => f.Severity == Severity.Advice));
        if (judged.Designed is { } designed)
        {
            var summary = PlanSummary.Of(designed);
            writer.WriteString("plan", designed.Plan.Name);
            writer.WriteString("currency", designed.Plan.Currency);
            writer.WriteNumber("devices", summary.Devices);
            writer.WriteNumber("links", summary.Links);
            writer.WriteNumber("classes", summary.Classes);
            writer.WriteNumber("cables", summary.Cables);
            writer.Number("price", (double)summary.Price.Units);
            writer.WriteNumber("unpricedParts", summary.Unpriced);
            writer.Number("watts", summary.Power.Value);
            writer.WriteNumber("linksPassing", summary.Passing);
            writer.WriteNumber("linksUnproven", summary.Unproven);
            writer.WriteNumber("linksFailing", summary.Failing);
            writer.Number("expectedLossExceedances", summary.ExpectedExceedances);
        }
        writer.WriteStartArray("documents");
        foreach (var document in documents) writer.WriteStringValue(document);
        writer.WriteEndArray();
        writer.WriteEndObject();
    });
}
