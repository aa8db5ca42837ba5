using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;

namespace Lanewright.Deliverables.Json;

/// <summary>The way of a cable as JSON.</summary>
public static class TraceJson
{
    /// <summary>Writes it: the first leg, and under <c>otherLegs</c> the others of a fan-out where all are asked for.</summary>
    /// <param name="traced">The cable.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(TracedCable traced, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("cable", traced.Cable);
        Leg(writer, traced, traced.Legs[0]);
        writer.WriteStartArray("otherLegs");
        foreach (var leg in traced.Legs.Skip(1))
        {
            writer.WriteStartObject();
            Leg(writer, traced, leg);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    /// <summary>Writes a trunk that nothing is patched through.</summary>
    public static void Write(IdleTrunk trunk, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("cable", trunk.Trunk.NameOf(trunk.Number));
        Elements(writer, trunk.Elements);
        writer.WriteString("polarity", PolarityJson.Polarity(trunk.Polarity));
        writer.WriteString("verdict", "idle");
        if (trunk.Length is { } length) writer.WriteNumber("lengthM", Math.Round(length.Metres, 3));
        else writer.WriteNull("lengthM");
        writer.WriteNull("lossDb");
        writer.WriteEndObject();
    });

    private static void Leg(Utf8JsonWriter writer, TracedCable traced, TracedLeg leg)
    {
        var path = leg.Path;
        writer.WriteString("link", leg.Link);
        writer.WriteNumber("leg", leg.Number);
        writer.WriteNumber("legs", traced.Of);
        Elements(writer, path.Elements);
        writer.WriteString("polarity", path.Polarity is { } polarity ? PolarityJson.Polarity(polarity) : "by its ends");
        writer.WriteStartArray("laneOrder");
        foreach (var lane in path.Polarity?.LaneOrder ?? []) writer.WriteNumberValue(lane);
        writer.WriteEndArray();
        writer.WriteStartArray("cordTypes");
        foreach (var type in path.Polarity?.CordTypes ?? []) writer.WriteStringValue(type);
        writer.WriteEndArray();
        writer.WriteString("verdict", Checks.Word(leg.Verdict));
        writer.WriteStartArray("reasons");
        foreach (var reason in leg.Reasons) writer.WriteStringValue(reason);
        writer.WriteEndArray();
        Fibres(writer, path);
        Tests(writer, path);
        writer.WriteNumber("lengthM", Math.Round(path.Length.Metres, 3));
        if (path.Loss is { } whole) writer.WriteNumber("lossDb", Math.Round(whole.Value, 4));
        else writer.WriteNull("lossDb");
    }

    private static void Elements(Utf8JsonWriter writer, ImmutableArray<PathElement> elements)
    {
        writer.WriteStartArray("elements");
        foreach (var element in elements)
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
    }

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
        if (path.AllowedForTrunks is { } left && !path.Patches.IsEmpty) writer.WriteNumber("trunksLimitDb", Math.Round(left, 4));
        else writer.WriteNull("trunksLimitDb");
        writer.WriteEndObject();
    }
}
