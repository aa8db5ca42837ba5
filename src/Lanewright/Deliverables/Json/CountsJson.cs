namespace Lanewright.Deliverables.Json;

/// <summary>Counts of a fabric as JSON.</summary>
public static class CountsJson
{
    /// <summary>Writes one object with a number, or a text for a ratio, under each name.</summary>
    public static void Write(FabricFigures figures, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        foreach (var (name, value) in figures.All)
        {
            if (value is long whole) writer.WriteNumber(name, whole);
            else writer.WriteString(name, value.ToString());
        }
        writer.WriteEndObject();
    });
}
