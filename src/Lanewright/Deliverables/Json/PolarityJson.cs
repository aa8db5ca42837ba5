using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>An answer about polarity as JSON.</summary>
public static class PolarityJson
{
    /// <summary>Writes it.</summary>
    public static void Write(PolarityAnswer answer, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("verdict", Word(answer.Verdict));
        writer.WriteString("mark", Marks.Name(answer.Mark));
        writer.WriteString("kind", answer.Chain.IsDuplex ? "duplex" : answer.Chain.IsFanOut ? "fan-out" : "parallel");
        writer.WriteNumber("positions", answer.Chain.Positions);
        writer.WriteStartArray("chain");
        foreach (var part in answer.Chain.Parts)
        {
            writer.WriteStartObject();
            writer.WriteString("kind", Kind(part.Kind));
            writer.WriteString("type", part.Name);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteString("polarity", Polarity(answer.IsCrossed));
        Numbers("laneOrder", answer.LaneOrder);
        Numbers("map", answer.Map);
        writer.WriteBoolean("mapLeavesOutCords", answer.Chain.IsLinkWithoutCords);
        writer.WriteStartArray("pairs");
        foreach (var pair in answer.Pairs)
        {
            writer.WriteStartObject();
            writer.WriteNumber("near", pair.Near);
            writer.WriteNumber("far", pair.Far);
            writer.WriteBoolean("crossed", pair.IsCrossed);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteNumber("reversals", answer.Chain.Reversals);
        writer.WriteStartArray("reasons");
        foreach (var reason in answer.Reasons) writer.WriteStringValue(reason);
        writer.WriteEndArray();
        writer.WriteEndObject();

        void Numbers(string name, IEnumerable<int> numbers)
        {
            writer.WriteStartArray(name);
            foreach (var number in numbers) writer.WriteNumberValue(number);
            writer.WriteEndArray();
        }
    });

    /// <summary>Whether transmitters meet receivers, in one word.</summary>
    public static string Polarity(bool? isCrossed) => isCrossed switch { true => "crossed", false => "not crossed", null => "unknown" };

    /// <summary>What becomes of light on a way through trunks, in few words: also where transmitters would meet receivers and the ends
    /// do not mate or lanes change places.</summary>
    public static string Polarity(WayPolarity? way) => way switch
    {
        null => Polarity((bool?)null),
        { IsMated: false } => "not mated",
        { IsCrossed: true, Verdict: Verdict.Fail } => "lanes exchanged",
        _ => Polarity(way.IsCrossed),
    };

    /// <summary>A verdict in one word.</summary>
    public static string Word(Verdict verdict) =>
        verdict switch { Verdict.Pass => "works", Verdict.Fail => "fails", _ => "unproven" };

    /// <summary>A kind of part in one word.</summary>
    public static string Kind(Standards.ArrayPartKind kind) => kind switch
    {
        Standards.ArrayPartKind.Cable => "cable",
        Standards.ArrayPartKind.Adapter => "adapter",
        Standards.ArrayPartKind.Cord => "cord",
        _ => "transition",
    };
}
