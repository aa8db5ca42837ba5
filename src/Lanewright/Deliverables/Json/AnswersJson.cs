using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Mating;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>Answers to single questions as JSON.</summary>
public static class AnswersJson
{
    /// <summary>One link by its type.</summary>
    public static void Write(SingleLink link, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("type", link.TypeName);
        writer.WriteString("medium", link.MediumName);
        writer.WriteString("verdict", Checks.Word(link.Verdict));
        writer.WriteString("mark", Marks.Name(link.Mark));
        writer.Number("latencyNs", link.Latency.Value.Nanoseconds);
        ChecksJson.Write(writer, "checks", link.Checks);
        writer.WriteEndObject();
    });

    /// <summary>Ways to carry a rate.</summary>
    public static void Write(IEnumerable<Solution> candidates, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteStartArray("candidates");
        foreach (var candidate in candidates)
        {
            writer.WriteStartObject();
            SolutionJson.WriteKeys(writer, candidate);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    /// <summary>Two ends held together.</summary>
    public static void Write(MatingAnswer answer, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("verdict", Word(answer.Verdict));
        writer.WriteStartArray("conditions");
        foreach (var condition in answer.Conditions) writer.WriteStringValue(condition);
        writer.WriteEndArray();
        writer.WriteStartArray("reasons");
        foreach (var reason in answer.Reasons)
        {
            writer.WriteStartObject();
            writer.WriteString("code", CheckCodes.Of(reason.CheckName)?.Code ?? "");
            writer.WriteString("name", CheckCodes.Of(reason.CheckName)?.Name ?? reason.CheckName);
            writer.WriteString("text", reason.Text);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    /// <summary>A verdict on two ends in one word.</summary>
    public static string Word(MatingVerdict verdict) => verdict switch
    {
        MatingVerdict.Works => "works",
        MatingVerdict.Conditional => "conditional",
        _ => "never",
    };
}
