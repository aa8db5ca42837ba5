using System.Text.Json;
using Lanewright.Deliverables;
using Lanewright.Findings;
using Lanewright.Workbench.Desk;

namespace Lanewright.Workbench;

/// <summary>A text of the plan with what was found in it, for the editor.</summary>
internal static class TextJson
{
    /// <summary>Writes it.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="file">The text.</param>
    /// <param name="have">The version that the editor has; the text of that is not sent again.</param>
    /// <param name="findings">What was found in the plan.</param>
    public static void Write(Utf8JsonWriter json, FileState file, long have, IEnumerable<Finding> findings)
    {
        json.WriteStartObject();
        json.WriteString("file", file.Name);
        if (file.Version != have) json.WriteString("text", file.Text);
        json.WriteNumber("version", file.Version);
        json.WriteBoolean("typed", file.IsTyped);
        json.WriteBoolean("torn", file.IsTorn);
        json.WriteStartArray("findings");
        foreach (var finding in findings.Where(f => f.Span.Path == file.Name))
        {
            var at = finding.Span.Position;
            json.WriteStartObject();
            json.WriteString("severity", FindingsView.Word(finding.Severity));
            json.WriteString("code", finding.Kind.Code);
            json.WriteString("name", finding.Kind.Name);
            json.WriteString("message", finding.Message);
            json.WriteNumber("line", at.Line);
            json.WriteNumber("column", at.Column);
            json.WriteNumber("length", finding.Span.Length);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }
}
