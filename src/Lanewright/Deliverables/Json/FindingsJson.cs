using System.Text.Json;
using Lanewright.Findings;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>Findings as JSON.</summary>
public static class FindingsJson
{
    /// <summary>Writes all findings of a plan with their counts.</summary>
    public static void Write(JudgedPlan judged, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("plan", judged.Plan?.Name ?? "");
        writer.WriteString("revision", judged.Plan?.Revision ?? "");
        writer.WriteNumber("errors", judged.Findings.Count(f => f.Severity == Severity.Error));
        writer.WriteNumber("warnings", judged.Findings.Count(f => f.Severity == Severity.Warning));
        writer.WriteNumber("advice", judged.Findings.Count(f => f.Severity == Severity.Advice));
        writer.WriteNumber("rulesWaiting", judged.RulesWaiting);
        writer.WriteStartArray("findings");
        foreach (var finding in judged.Findings) Write(writer, finding);
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter writer, Finding finding)
    {
        writer.WriteStartObject();
        writer.WriteString("code", finding.Kind.Code);
        writer.WriteString("name", finding.Kind.Name);
        writer.WriteString("severity", FindingsView.Word(finding.Severity));
        writer.WriteString("message", finding.Message);
        writer.WriteString("subject", finding.Subject);
        writer.WriteNumber("count", finding.Count);
        Place(writer, finding.Span);
        if (finding.Evidence is { } evidence)
        {
            writer.WriteStartObject("evidence");
            writer.WriteString("quantity", evidence.Quantity);
            writer.Number("value", evidence.Value);
            writer.Number("limit", evidence.Limit);
            writer.WriteString("unit", evidence.Unit);
            if (evidence.Holds is { } holds) writer.WriteBoolean("holds", holds);
            writer.WriteString("citation", evidence.Source?.ToString() ?? "");
            writer.WriteString("mark", evidence.Source is { } source ? Marks.Name(source.Mark) : "");
            writer.WriteEndObject();
        }
        writer.WriteStartArray("related");
        foreach (var related in finding.Related)
        {
            writer.WriteStartObject();
            writer.WriteString("note", related.Note);
            Place(writer, related.Span);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Place(Utf8JsonWriter writer, SourceSpan span)
    {
        writer.WriteString("file", span.Path);
        writer.WriteNumber("line", span.Position.Line);
        writer.WriteNumber("column", span.Position.Column);
        writer.WriteNumber("length", span.Length);
    }
}
