using Lanewright.Engineering.Plant;

namespace Lanewright.Deliverables.Json;

/// <summary>The way of a cable as JSON.</summary>
public static class TraceJson
{
    /// <summary>Writes it.</summary>
    /// <param name="cable">Its identifier.</param>
    /// <param name="path">The way.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(string cable, CablePath path, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("cable", cable);
        writer.WriteStartArray("elements");
        foreach (var element in path.Elements)
        {
            writer.WriteStartObject();
            writer.WriteString("kind", element.Kind);
            writer.WriteString("id", element.Id);
            writer.WriteString("position", element.Position);
            if (element.Loss is { } loss) writer.WriteNumber("lossDb", Math.Round(loss.Value, 4));
            else writer.WriteNull("lossDb");
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteString("polarity", path.Polarity is { } polarity ? PolarityJson.Polarity(polarity.IsCrossed) : "by its cord");
        writer.WriteStartArray("laneOrder");
        foreach (var lane in path.Polarity?.LaneOrder ?? []) writer.WriteNumberValue(lane);
        writer.WriteEndArray();
        writer.WriteNumber("lengthM", Math.Round(path.Length.Metres, 3));
        if (path.Loss is { } whole) writer.WriteNumber("lossDb", Math.Round(whole.Value, 4));
        else writer.WriteNull("lossDb");
        writer.WriteEndObject();
    });
}
