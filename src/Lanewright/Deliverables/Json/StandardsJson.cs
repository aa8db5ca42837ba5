using System.Text.Json;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>Standards values as JSON.</summary>
public static class StandardsJson
{
    /// <summary>Writes a list of subjects.</summary>
    public static void WriteList(IEnumerable<(string Table, FactSheet Sheet)> found, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteStartArray("subjects");
        foreach (var (table, sheet) in found)
        {
            writer.WriteStartObject();
            writer.WriteString("table", table);
            writer.WriteString("subject", sheet.Subject);
            writer.WriteString("mark", Marks.Name(sheet.Facts.Max(f => f.Source.Mark)));
            writer.WriteStartObject("values");
            foreach (var fact in sheet.Facts) writer.WriteString(fact.Field, fact.Value);
            writer.WriteEndObject();
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    /// <summary>Writes subjects whole, every value with its source.</summary>
    public static void WriteSheets(IEnumerable<(string Table, FactSheet Sheet)> found, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteStartArray("subjects");
        foreach (var (table, sheet) in found)
        {
            writer.WriteStartObject();
            writer.WriteString("table", table);
            writer.WriteString("subject", sheet.Subject);
            writer.WriteStartArray("values");
            foreach (var fact in sheet.Facts) Write(writer, fact);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter writer, Fact fact)
    {
        writer.WriteStartObject();
        writer.WriteString("field", fact.Field);
        writer.WriteString("value", fact.Value);
        writer.WriteString("unit", fact.Unit);
        writer.WriteString("document", fact.Source.Document);
        writer.WriteString("clause", fact.Source.Clause);
        writer.WriteString("edition", fact.Source.Edition);
        writer.WriteString("mark", Marks.Name(fact.Source.Mark));
        writer.WriteString("readIn", fact.Source.ReadIn);
        writer.WriteString("note", fact.Source.Note);
        writer.WriteEndObject();
    }
}
