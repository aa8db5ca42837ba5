using System.Text.Json;
using Lanewright.Engineering.Placement;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Json;

/// <summary>Where things should stand, as JSON.</summary>
public static class PlacementJson
{
    /// <summary>Writes it.</summary>
    public static void Write(DesignedPlan designed, PlacementAnswer answer, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("currency", designed.Plan.Currency);
        writer.WriteStartArray("groups");
        foreach (var placement in answer.Groups) Write(writer, designed, placement);
        writer.WriteEndArray();
        if (answer.WhyNone.Length > 0) writer.WriteString("whyNoGroups", answer.WhyNone);
        writer.WriteStartArray("withoutPlace");
        foreach (var group in answer.Placeless)
        {
            writer.WriteStartObject();
            writer.WriteString("group", designed.Plan.Devices.Groups[group.Group].Name);
            writer.WriteString("why", PlacementWords.Of(group));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteStartArray("rows");
        foreach (var order in answer.Rows) Write(writer, designed, order);
        writer.WriteEndArray();
        writer.WriteStartArray("distance");
        foreach (var (link, steps) in answer.Steps)
        {
            writer.WriteStartObject();
            writer.WriteString("links", link.SetNames);
            writer.WriteStartArray("steps");
            foreach (var step in steps) Write(writer, step);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter writer, DesignedPlan designed, GroupPlacement placement)
    {
        writer.WriteStartObject();
        writer.WriteString("group", designed.Plan.Devices.Groups[placement.Group].Name);
        Costs(writer, placement.Now, placement.Best, placement.NoLessThan, placement.IsExact);
        Amount(writer, "costOfDetours", placement.Detours);
        writer.WriteStartArray("devices");
        foreach (var move in placement.Moves)
        {
            writer.WriteStartObject();
            writer.WriteString("device", designed.Plan.Devices.Name(move.Device));
            writer.WriteString("rack", move.From.Rack.Name);
            writer.WriteNumber("unit", move.From.Unit);
            writer.WriteString("bestRack", move.To.Rack.Name);
            writer.WriteNumber("bestUnit", move.To.Unit);
            Gaps(writer, move.To.Gaps);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteStartArray("racks");
        foreach (var offer in placement.Offers)
        {
            writer.WriteStartObject();
            writer.WriteString("rack", offer.Rack.Name);
            Amount(writer, "firstDeviceCost", offer.Cost);
            Gaps(writer, offer.Gaps);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Gaps(Utf8JsonWriter writer, BearingGaps gaps)
    {
        writer.WriteStartArray("unproven");
        foreach (var words in PlacementWords.Open(gaps)) writer.WriteStringValue(words);
        writer.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter writer, DesignedPlan designed, RowOrder order)
    {
        writer.WriteStartObject();
        writer.WriteString("hall", designed.Plan.Building.Halls[order.Hall].FullName);
        writer.WriteBoolean("lookedAt", order.IsLookedAt);
        if (order.IsLookedAt) Costs(writer, order.Now, order.Best, order.NoLessThan, order.IsExact);
        Amount(writer, "costOfDetours", order.Detours);
        writer.WriteStartArray("order");
        foreach (var row in order.Order) writer.WriteStringValue(row);
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter writer, MediaStep step)
    {
        writer.WriteStartObject();
        writer.WriteNumber("fromM", Math.Round(step.From.Metres, 3));
        writer.WriteNumber("toM", Math.Round(step.To.Metres, 3));
        writer.WriteString("medium", step.Medium);
        writer.WriteString("cable", step.Cable);
        writer.WriteString("module", step.Module);
        writer.WriteNumber("costAtShortest", step.First.Units);
        writer.WriteNumber("costAMetreMore", step.EachMetre.Units);
        writer.WriteEndObject();
    }

    private static void Costs(Utf8JsonWriter writer, double now, double best, double bound, bool isExact)
    {
        Amount(writer, "costNow", now);
        Amount(writer, "costBest", best);
        Amount(writer, "noLessThan", bound);
        writer.WriteBoolean("isExact", isExact);
    }

    private static void Amount(Utf8JsonWriter writer, string name, double units)
    {
        if (double.IsFinite(units)) writer.WriteNumber(name, Math.Round((decimal)units, 2));
        else writer.WriteNull(name);
    }
}
