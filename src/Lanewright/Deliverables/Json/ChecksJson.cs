using System.Text.Json;
using Lanewright.Engineering.Links;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>Comparisons as JSON.</summary>
public static class ChecksJson
{
    /// <summary>Writes a list of comparisons under a name.</summary>
    public static void Write(Utf8JsonWriter writer, string name, IEnumerable<Check> checks)
    {
        writer.WriteStartArray(name);
        foreach (var check in checks) Write(writer, check);
        writer.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter writer, Check check)
    {
        writer.WriteStartObject();
        writer.WriteString("name", check.Name);
        writer.Number("value", check.Value);
        writer.Number("limit", check.Limit);
        writer.Number("margin", check.Margin);
        writer.WriteString("unit", check.Unit);
        writer.WriteString("verdict", Checks.Word(check.Verdict));
        writer.WriteString("citation", check.Source?.ToString() ?? "");
        writer.WriteString("mark", Marks.Name(check.Mark));
        if (check.End.Length > 0) writer.WriteString("end", check.End);
        if (check.IsConditional) writer.WriteBoolean("conditional", true);
        if (check.IsAdvice) writer.WriteBoolean("advice", true);
        if (check.Note.Length > 0) writer.WriteString("note", check.Note);
        writer.WriteEndObject();
    }
}
