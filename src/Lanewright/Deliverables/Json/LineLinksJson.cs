using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>Channels of lines among the links of a plan: each route is a class, with the keys that classes of links have.</summary>
internal static class LineLinksJson
{
    /// <summary>Writes a class a route.</summary>
    public static void Classes(Utf8JsonWriter writer, DesignedPlan designed)
    {
        foreach (var line in designed.Lines.Value.Lines)
            for (var route = 0; route < line.Routes.Length; route++) Class(writer, designed, line, route);
    }

    /// <summary>Writes a link a channel whose ports the plan names.</summary>
    public static void Links(Utf8JsonWriter writer, DesignedPlan designed)
    {
        var plan = designed.Plan;
        var labels = new PlaceLabels(plan);
        foreach (var port in plan.LinePorts)
        {
            writer.WriteStartObject();
            writer.WriteString("link", Identifiers.LineChannel(port.Line, port.Route, port.Channel));
            writer.WriteString("class", Identifiers.Line(port.Line, port.Route));
            writer.WriteString("fromDevice", plan.Devices.Name(port.FromDevice));
            writer.WriteString("fromPort", labels.Port(port.FromDevice, port.FromPort));
            writer.WriteString("toDevice", plan.Devices.Name(port.ToDevice));
            writer.WriteString("toPort", labels.Port(port.ToDevice, port.ToPort));
            writer.WriteString("cable", "");
            writer.WriteEndObject();
        }
    }

    private static void Class(Utf8JsonWriter writer, DesignedPlan designed, LineResult line, int number)
    {
        var route = line.Routes[number];
        var design = route.Answer.Design;
        var (from, to) = (route.Terminals.From, route.Terminals.To);
        var code = designed.Plan.Standards.Wavelength(design.TypeName)?.Code ?? "";
        writer.WriteStartObject();
        writer.WriteString("class", Identifiers.Line(line.Statement.Index, number));
        writer.WriteString("set", line.Statement.Name);
        writer.WriteString("rate", line.Statement.Rate.ToString());
        writer.WriteNumber("count", line.Statement.Channels);
        writer.WriteString("name", $"{LineWords.Name(design.Scheme)} over {route.Name}");
        writer.WriteString("type", design.TypeName);
        writer.WriteString("medium", "line");
        writer.WriteString("verdict", Checks.Word(route.Verdict));
        writer.WriteString("mark", Marks.Name(design.Mark));
        writer.Number("lengthM", route.Length.Metres);
        writer.Number("price", (double?)route.Answer.Price?.Total?.Units / line.Statement.Channels);
        writer.Number("watts", from?.Power.Value + to?.Power.Value);
        writer.Number("latencyNs", design.Latency?.Value.Nanoseconds);
        writer.WriteString("fromModule", from?.Name ?? "");
        writer.WriteString("toModule", to?.Name ?? "");
        writer.WriteString("cable", "");
        writer.WriteString("attenuator", "");
        writer.WriteString("fromFec", code);
        writer.WriteString("toFec", code);
        writer.WriteBoolean("autonegotiation", false);
        ChecksJson.Write(writer, "checks", [.. design.Checks, .. route.Terminals.Checks]);
        writer.WriteNull("exceedanceChance");
        writer.WriteStartArray("others");
        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
