using System.Text.Json;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>A way to make a link as JSON.</summary>
public static class SolutionJson
{
    /// <summary>Writes the same keys where no way was found: programs find them all the same.</summary>
    public static void WriteNone(Utf8JsonWriter writer)
    {
        foreach (var key in new[] { "name", "type", "medium" }) writer.WriteString(key, "");
        writer.WriteString("verdict", Checks.Word(Verdict.Fail));
        writer.WriteString("mark", "");
        foreach (var key in new[] { "lengthM", "price", "watts", "latencyNs" }) writer.WriteNull(key);
        foreach (var key in new[] { "fromModule", "toModule", "cable", "attenuator", "fromFec", "toFec" }) writer.WriteString(key, "");
        writer.WriteBoolean("autonegotiation", false);
        ChecksJson.Write(writer, "checks", []);
    }

    /// <summary>Writes the keys of a way into an object that is open.</summary>
    public static void WriteKeys(Utf8JsonWriter writer, Solution solution)
    {
        writer.WriteString("name", solution.Name);
        writer.WriteString("type", solution.TypeName);
        writer.WriteString("medium", solution.MediumName);
        writer.WriteString("verdict", Checks.Word(solution.Verdict));
        writer.WriteString("mark", Marks.Name(solution.Mark));
        writer.Number("lengthM", solution.Length.Metres);
        writer.Number("price", (double)solution.Price.Units);
        writer.Number("watts", solution.Power.Value);
        writer.Number("latencyNs", solution.Latency.Value.Nanoseconds);
        writer.WriteString("fromModule", solution.FromModule?.Name ?? "");
        writer.WriteString("toModule", solution.ToModule?.Name ?? "");
        writer.WriteString("cable", solution.Cable.Name);
        writer.WriteString("attenuator", solution.Attenuator?.Name ?? "");
        writer.WriteString("fromFec", solution.FromFec);
        writer.WriteString("toFec", solution.ToFec);
        writer.WriteBoolean("autonegotiation", solution.Autonegotiates);
        ChecksJson.Write(writer, "checks", solution.Checks);
    }
}
