using Lanewright.Rules;

namespace Lanewright.Deliverables.Json;

/// <summary>Kinds of findings and their pages as JSON.</summary>
public static class CodesJson
{
    /// <summary>Writes all kinds.</summary>
    public static void WriteAll(Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteStartArray("codes");
        foreach (var kind in RuleBook.Kinds)
        {
            writer.WriteStartObject();
            writer.WriteString("code", kind.Code);
            writer.WriteString("name", kind.Name);
            writer.WriteString("severity", FindingsView.Word(kind.Severity));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    /// <summary>Writes a page by its sections.</summary>
    public static void WritePage(RulePage page, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("code", page.Kind.Code);
        writer.WriteString("name", page.Kind.Name);
        writer.WriteString("severity", FindingsView.Word(page.Kind.Severity));
        writer.WriteString("meaning", page.Section("What it means"));
        writer.WriteString("why", page.Section("Why it matters"));
        writer.WriteString("example", page.Section("Example"));
        writer.WriteString("putRight", page.Section("Put right"));
        writer.WriteString("source", page.Section("Source"));
        writer.WriteEndObject();
    });
}
