using System.Text.Json;
using Lanewright.Notation;

namespace Lanewright.Deliverables.Json;

/// <summary>A shape as JSON Schema, draft 2020-12.</summary>
public static class SchemaJson
{
    /// <summary>Writes the schema of a file.</summary>
    public static void Write(MapShape shape, string title, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
        writer.WriteString("title", title);
        Keys(writer, shape);
        writer.WriteEndObject();
    });

    private static void Keys(Utf8JsonWriter writer, Shape shape)
    {
        switch (shape)
        {
            case ScalarShape scalar: Scalar(writer, scalar); break;
            case MapShape map: Map(writer, map); break;
            case NamesShape names: Names(writer, names); break;
            case ListShape list: List(writer, list); break;
            case EitherShape either: Either(writer, either); break;
            default: throw new InvalidOperationException("a shape without a schema: " + shape.GetType().Name);
        }
    }

    private static void Scalar(Utf8JsonWriter writer, ScalarShape scalar)
    {
        if (!scalar.Choices.IsEmpty)
        {
            writer.WriteStartArray("enum");
            foreach (var choice in scalar.Choices) writer.WriteStringValue(choice);
            if (scalar.MayBeSwitch)
            {
                writer.WriteBooleanValue(true);
                writer.WriteBooleanValue(false);
            }
            writer.WriteEndArray();
            return;
        }
        if (scalar.MayBeNumber)
        {
            writer.WriteStartArray("type");
            writer.WriteStringValue("string");
            writer.WriteStringValue("number");
            writer.WriteEndArray();
        }
        else
        {
            writer.WriteString("type", "string");
        }
        if (scalar.Pattern is { } pattern) writer.WriteString("pattern", pattern);
        writer.WriteString("description", scalar.Words);
    }

    private static void Map(Utf8JsonWriter writer, MapShape map)
    {
        writer.WriteString("type", "object");
        writer.WriteBoolean("additionalProperties", false);
        writer.WriteStartObject("properties");
        foreach (var key in map.Keys)
        {
            writer.WriteStartObject(key.Name);
            writer.WriteString("title", key.Otherwise.Length > 0 ? $"{key.Meaning} (otherwise: {key.Otherwise})" : key.Meaning);
            Keys(writer, key.Value);
            writer.WriteEndObject();
        }
        writer.WriteEndObject();
        writer.WriteStartArray("required");
        foreach (var key in map.Keys.Where(k => k.IsRequired)) writer.WriteStringValue(key.Name);
        writer.WriteEndArray();
    }

    private static void Names(Utf8JsonWriter writer, NamesShape names)
    {
        writer.WriteString("type", "object");
        writer.WriteStartObject("additionalProperties");
        Keys(writer, names.Entry);
        writer.WriteEndObject();
    }

    private static void List(Utf8JsonWriter writer, ListShape list)
    {
        writer.WriteStartArray("anyOf");
        writer.WriteStartObject();
        Keys(writer, list.Item);
        writer.WriteEndObject();
        writer.WriteStartObject();
        writer.WriteString("type", "array");
        writer.WriteStartObject("items");
        Keys(writer, list.Item);
        writer.WriteEndObject();
        writer.WriteEndObject();
        writer.WriteEndArray();
    }

    private static void Either(Utf8JsonWriter writer, EitherShape either)
    {
        writer.WriteStartArray("anyOf");
        foreach (var shape in new Shape[] { either.Short, either.Long })
        {
            writer.WriteStartObject();
            Keys(writer, shape);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }
}
