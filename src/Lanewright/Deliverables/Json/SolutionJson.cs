using System.Text.Json;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>A way to make a link as JSON.</summary>
public static class SolutionJson
{
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
