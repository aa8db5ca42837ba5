using System.Text.Encodings.Web;
using System.Text.Json;

namespace Lanewright.Deliverables.Json;

/// <summary>Writes JSON in one way everywhere: indented, camelCase names, numbers without trailing digits of rounding.</summary>
public static class JsonText
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>Writes one document.</summary>
    public static void Write(Stream stream, Action<Utf8JsonWriter> content)
    {
        using var writer = new Utf8JsonWriter(stream, Options);
        content(writer);
        writer.Flush();
        stream.WriteByte((byte)'\n');
    }

    /// <summary>A number, or null.</summary>
    public static void Number(this Utf8JsonWriter writer, string name, double? value)
    {
        if (value is { } number) writer.WriteNumber(name, Math.Round(number, 6) + 0.0);
        else writer.WriteNull(name);
    }

    /// <summary>A share that may be very small, with four digits that count; or null.</summary>
    public static void Share(this Utf8JsonWriter writer, string name, double? value)
    {
        if (value is not { } share) writer.WriteNull(name);
        else if (share <= double.Epsilon) writer.WriteNumber(name, 0);
        else
        {
            const int digits = 4;
            var scale = Math.Pow(10, digits - 1 - Math.Floor(Math.Log10(share)));
            writer.WriteNumber(name, double.IsFinite(scale) ? Math.Round(share * scale) / scale : 0);
        }
    }
}
