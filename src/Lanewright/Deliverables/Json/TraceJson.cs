using System.Text.Json;
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
        writer.WriteString("polarity", path.Polarity is { } polarity ? PolarityJson.Polarity(polarity.IsCrossed) : "by its ends");
        writer.WriteStartArray("laneOrder");
        foreach (var lane in path.Polarity?.LaneOrder ?? []) writer.WriteNumberValue(lane);
        writer.WriteEndArray();
        writer.WriteStartArray("cordTypes");
        foreach (var type in path.Polarity?.CordTypes ?? []) writer.WriteStringValue(type);
        writer.WriteEndArray();
        Fibres(writer, path);
        Tests(writer, path);
        writer.WriteNumber("lengthM", Math.Round(path.Length.Metres, 3));
        if (path.Loss is { } whole) writer.WriteNumber("lossDb", Math.Round(whole.Value, 4));
        else writer.WriteNull("lossDb");
        writer.WriteEndObject();
    });

    private static void Fibres(Utf8JsonWriter writer, CablePath path)
    {
        writer.WriteStartArray("fibres");
        foreach (var fibre in path.Fibres)
        {
            writer.WriteStartObject();
            writer.WriteString("from", FibreWords.Start(fibre));
            writer.WriteString("at", FibreWords.Spot(fibre.Start));
            writer.WriteStartArray("trunks");
            for (var i = 0; i < fibre.Hops.Length; i++)
            {
                var hop = fibre.Hops[i];
                writer.WriteStartObject();
                writer.WriteString("near", FibreWords.Spot(hop.Near));
                writer.WriteNumber("fibre", hop.Fibre);
                writer.WriteString("colour", hop.Fibre > 0 ? Drawings.FibreColour.Words(hop.Fibre, path.Patches[i].Trunk.Fibres) : "");
                writer.WriteString("far", FibreWords.Spot(hop.Far));
                writer.WriteEndObject();
            }
            writer.WriteEndArray();
            writer.WriteString("arrives", FibreWords.Spot(fibre.End));
            writer.WriteString("to", FibreWords.End(fibre));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    /// <summary>What the cabling test may show and what the application allows are two limits; a link has to keep both.</summary>
    private static void Tests(Utf8JsonWriter writer, CablePath path)
    {
        writer.WriteStartArray("cablingTests");
        foreach (var test in path.Tests)
        {
            writer.WriteStartObject();
            writer.WriteString("edition", test.Edition);
            if (test.Limit is { } limit) writer.WriteNumber("limitDb", Math.Round(limit.Value, 4));
            else writer.WriteNull("limitDb");
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteStartObject("application");
        writer.WriteString("type", path.TypeName);
        if (path.Allowed is { } most) writer.WriteNumber("limitDb", Math.Round(most, 4));
        else writer.WriteNull("limitDb");
        writer.WriteEndObject();
    }
}
