using System.Text.Json;
using Lanewright.Engineering.Plant;

namespace Lanewright.Deliverables.Json;

/// <summary>A sizing of trunks as JSON.</summary>
public static class TrunkSizesJson
{
    /// <summary>Writes it.</summary>
    public static void Write(TrunkSizing sizing, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteBoolean("proven", sizing.IsExact);
        writer.WriteNumber("bound", sizing.Bound.Units);
        if (sizing.Price is { } price) writer.WriteNumber("price", price.Units);
        else writer.WriteNull("price");
        writer.WriteStartArray("panelsTooSmall");
        foreach (var panel in sizing.Short)
        {
            writer.WriteStartObject();
            writer.WriteString("panel", panel.Name);
            writer.WriteNumber("places", panel.Places);
            writer.WriteNumber("ends", panel.Ends);
            writer.WriteStartArray("trunks");
            foreach (var group in panel.Groups) writer.WriteStringValue(group);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteStartArray("groups");
        foreach (var group in sizing.Groups)
        {
            writer.WriteStartObject();
            writer.WriteString("trunk", group.Trunk.Name);
            writer.WriteNumber("growthPercent", Math.Round(sizing.GrowthOf(group.Trunk).Percent, 6));
            writer.WriteNumber("portsUsed", group.State.Ports);
            writer.WriteNumber("portsWanted", group.Wanted);
            writer.WriteNumber("fibresLit", group.State.FibresLit);
            if (group.Planned is { } planned) writer.WriteNumber("plannedPrice", planned.Units);
            else writer.WriteNull("plannedPrice");
            Mix(writer, "fewest", group, group.Fewest);
            Mix(writer, "cheapest", group, group.Cheapest);
            writer.WriteStartArray("sizes");
            foreach (var kind in group.Kinds) Mix(writer, null, group, TrunkFrontier.Alone(kind, group.Wanted));
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void Mix(Utf8JsonWriter writer, string? name, TrunkProposal group, TrunkMix? mix)
    {
        if (mix is null)
        {
            writer.WriteNull(name ?? "mix");
            return;
        }
        if (name is null) writer.WriteStartObject();
        else writer.WriteStartObject(name);
        writer.WriteStartArray("mix");
        foreach (var (kind, count) in mix.Counts)
        {
            writer.WriteStartObject();
            writer.WriteString("cable", kind.Cable.Name);
            writer.WriteString("cassette", kind.Cassette?.Name);
            writer.WriteNumber("fibres", kind.Fibres);
            writer.WriteNumber("count", count);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteNumber("trunks", mix.Trunks);
        writer.WriteNumber("ports", mix.Ports);
        writer.WriteNumber("fibres", mix.Fibres);
        writer.WriteNumber("litPercent", Math.Round(group.Lit(mix) * 100, 3));
        writer.WriteNumber("price", mix.Price.Units);
        writer.WriteEndObject();
    }
}
