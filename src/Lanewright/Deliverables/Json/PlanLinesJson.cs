using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Json;

/// <summary>The lines of a plan as JSON.</summary>
public static class PlanLinesJson
{
    /// <summary>Writes them.</summary>
    public static void Write(IReadOnlyList<LineResult> lines, DesignedPlan designed, Stream stream, string? swept = null) => JsonText.Write(
        stream, writer =>
    {
        var plan = designed.Plan;
        // What could not be read is missing below, and rules see more than one line at a time.
        var errors = PlanFaults.OfLines(designed.Findings).Length;
        writer.WriteStartObject();
        writer.WriteNumber("errors", errors);
        // The line that comes out worst stands for all, with the keys that a line by itself has.
        var governing = lines.SelectMany(l => l.Routes).OrderByDescending(r => r.Verdict)
            .ThenBy(r => r.Answer.Design.Worst?.Margin ?? default).FirstOrDefault();
        if (governing is not null) LineJson.WriteKeys(writer, governing.Answer, plan.Catalogue, plan.Currency,
            errors > 0 ? Verdict.Fail : lines.Max(l => l.Verdict));
        writer.WriteStartArray("lines");
        foreach (var line in lines) Line(writer, line, plan, swept);
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void Line(Utf8JsonWriter writer, LineResult line, Plan plan, string? swept)
    {
        writer.WriteStartObject();
        writer.WriteString("name", line.Statement.Name);
        writer.WriteString("from", line.Statement.From.Name);
        writer.WriteString("to", line.Statement.To.Name);
        writer.WriteString("verdict", Checks.Word(line.Verdict));
        writer.Number("capacityGbps", line.Capacity.Gigabits);
        writer.Number("availabilityPercent", LineWords.CutOff(line.Availability));
        writer.Number("latencyDifferenceUs", line.Difference?.Nanoseconds / 1000);
        writer.WriteNumber("routesWanted", line.Statement.Routes);
        Texts(writer, "separating", line.Separating);
        writer.WriteStartArray("conflicts");
        foreach (var conflict in line.Conflicts)
        {
            writer.WriteStartObject();
            Texts(writer, "way", conflict.Way);
            Texts(writer, "otherWay", conflict.OtherWay);
            Texts(writer, "share", conflict.Share);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        Texts(writer, "shared", line.Shared);
        writer.WriteStartArray("cuts");
        foreach (var cut in line.Cuts)
        {
            writer.WriteStartObject();
            writer.WriteString("what", cut.What);
            writer.WriteString("kind", cut.IsDuct ? "duct" : "span");
            writer.Number("capacityLeftGbps", cut.Left.Gigabits);
            writer.WriteStartArray("routesLost");
            foreach (var route in cut.RoutesLost) writer.WriteNumberValue(route + 1);
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteStartArray("routes");
        foreach (var route in line.Routes)
        {
            writer.WriteStartObject();
            Texts(writer, "spans", route.Spans.Select(s => s.Name));
            Texts(writer, "sites", route.Sites.Select(s => s.Name));
            writer.Number("availabilityPercent", LineWords.CutOff(route.Availability));
            writer.WriteString("fromModule", route.Terminals.From?.Name ?? "");
            writer.WriteString("toModule", route.Terminals.To?.Name ?? "");
            ChecksJson.Write(writer, "portChecks", route.Terminals.Checks);
            LineJson.WriteKeys(writer, route.Answer, plan.Catalogue, plan.Currency, route.Verdict);
            if (swept is not null) LineJson.Sweep(writer, LineSweep.Over(route.Answer, swept));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter writer, string name, IEnumerable<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (var text in texts) writer.WriteStringValue(text);
        writer.WriteEndArray();
    }
}
