using System.Text.Json;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>What the networks of a plan carry, as JSON. A utilisation is a fraction, 1 is full; rates are in Gb/s.</summary>
public static class LoadJson
{
    /// <summary>Fullest links listed, one of each class.</summary>
    public const int MostBusiest = 20;

    /// <summary>Writes the answer.</summary>
    /// <param name="answer">The demands asked about and what is said of them.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(LoadAnswer answer, Stream stream) => JsonText.Write(stream, writer =>
    {
        var fabric = answer.Fabric;
        writer.WriteStartObject();
        writer.WriteString("plan", fabric.Map.Plan.Name);
        writer.WriteString("rule", LoadWords.Split(fabric.Rule));
        writer.WriteNumber("errors", answer.Errors);
        WriteNames(writer, "leftOut", fabric.Map.Plan.DemandsLeftOut);
        WriteNames(writer, "inPart", fabric.Map.Plan.DemandsInPart);
        writer.WriteString("worstCaseOf", answer.WorstOf);
        WriteHeadline(writer, answer.Governing, answer.Worst);
        WriteBisection(writer, fabric.Bisection);
        writer.WriteStartArray("oversubscription");
        foreach (var tier in fabric.Oversubscription)
        {
            writer.WriteStartObject();
            writer.WriteNumber("tier", tier.Tier);
            writer.WriteNumber("switches", tier.Switches);
            writer.WriteString("worst", fabric.Map.Plan.Devices.Name(tier.Device));
            writer.Figure("below", tier.Below.Gigabits);
            writer.Figure("above", tier.Above.Gigabits);
            writer.Figure("ratio", tier.Ratio);
            if (fabric.WantedOf(tier) is { } wanted) writer.Figure("wanted", wanted.Value);
            else writer.WriteNull("wanted");
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        WriteLatency(writer, fabric);
        writer.WriteStartArray("demands");
        foreach (var study in answer.Demands) new LoadDemandJson(writer, study, answer).Write();
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void WriteNames(Utf8JsonWriter writer, string key, IEnumerable<string> names)
    {
        writer.WriteStartArray(key);
        foreach (var name in names) writer.WriteStringValue(name);
        writer.WriteEndArray();
    }

    /// <summary>The keys that the answer as a whole and each demand have alike.</summary>
    internal static void WriteHeadline(Utf8JsonWriter writer, DemandStudy study, (NetworkStudy Fabric, HoseWorstCase Case)? worst)
    {
        writer.Figure("maxUtilisation", study.MaxUtilisation.Value);
        writer.Figure("maxAccessUtilisation", study.MaxAccessUtilisation.Value);
        writer.Figure("unrouted", study.UnroutedGigabits);
        WriteBusiest(writer, study);
        WriteWorstCase(writer, worst);
        WriteFailures(writer, study);
    }

    private static void WriteBusiest(Utf8JsonWriter writer, DemandStudy study)
    {
        writer.WriteStartArray("busiest");
        foreach (var busy in study.Busiest(MostBusiest))
        {
            writer.WriteStartObject();
            writer.WriteString("from", study.Fabric.Map.Name(busy.From));
            writer.WriteString("to", study.Fabric.Map.Name(busy.To));
            writer.WriteNumber("links", busy.Parallel);
            writer.Figure("rate", busy.Rate.Gigabits);
            writer.Figure("gigabits", busy.Gigabits);
            writer.Figure("utilisation", busy.Utilisation.Value);
            writer.WriteNumber("classSize", busy.ClassSize);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void WriteWorstCase(Utf8JsonWriter writer, (NetworkStudy Fabric, HoseWorstCase Case)? worst)
    {
        if (worst is not { Fabric.Map: var map } known || known.Fabric.WorstInside(known.Case) is not { } link)
        {
            writer.WriteNull("worstCase");
            return;
        }
        var ends = map.Graph.Links[link.Link];
        writer.WriteStartObject("worstCase");
        writer.Figure("maxUtilisation", link.Utilisation.Value);
        writer.Figure("atMost", link.AtMost.Value);
        writer.WriteString("from", map.Name(link.FromA ? ends.A : ends.B));
        writer.WriteString("to", map.Name(link.FromA ? ends.B : ends.A));
        writer.WriteNumber("classSize", link.ClassSize);
        writer.WriteStartArray("matrix");
        foreach (var flow in link.Matrix)
        {
            writer.WriteStartObject();
            writer.WriteString("from", map.Name(flow.From));
            writer.WriteString("to", map.Name(flow.To));
            writer.Figure("gigabits", flow.Rate.Gigabits);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void WriteFailures(Utf8JsonWriter writer, DemandStudy study)
    {
        // An empty list may mean that nothing can fail, or that nobody looked.
        writer.WriteBoolean("areFailuresWorkedOut", study.AreFailuresWorkedOut);
        writer.WriteStartArray("failures");
        var units = study.Fabric.Failures;
        foreach (var failure in study.Failures)
        {
            writer.WriteStartObject();
            writer.WriteString("what", LoadWords.Failure(units[failure.Units[0]]));
            writer.WriteString("kind", LoadWords.Failure(failure.Kind));
            writer.WriteNumber("classSize", failure.Size);
            writer.WriteNumber("hostsCut", failure.HostsLost);
            writer.WriteNumber("hostsDown", failure.MembersDown);
            writer.Figure("lost", failure.LostGigabits);
            writer.Figure("unrouted", failure.UnroutedGigabits);
            writer.Figure("maxUtilisation", study.After(failure).Value);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void WriteBisection(Utf8JsonWriter writer, Bisection bisection)
    {
        writer.Figure("bisection", bisection.AtLeast.Gigabits);
        writer.Figure("bisectionAtMost", bisection.AtMost.Gigabits);
        writer.WriteString("bisectionProof", LoadWords.Proof(bisection.Proof));
    }

    private static void WriteLatency(Utf8JsonWriter writer, NetworkStudy fabric)
    {
        if (fabric.Latency is not { } latency)
        {
            writer.WriteNull("latency");
            return;
        }
        writer.WriteStartObject("latency");
        WriteDelay("shortest", latency.Shortest, latency.ShortestFrom, latency.ShortestTo);
        WriteDelay("longest", latency.Longest, latency.LongestFrom, latency.LongestTo);
        writer.WriteString("mark", Marks.Name(latency.Mark));
        writer.WriteEndObject();

        void WriteDelay(string name, Delay delay, int from, int to)
        {
            writer.WriteStartObject(name);
            writer.WriteString("from", fabric.Map.Name(from));
            writer.WriteString("to", fabric.Map.Name(to));
            writer.WriteNumber("links", delay.Links);
            writer.WriteNumber("switches", delay.Switches);
            writer.Figure("ns", delay.Total.Nanoseconds);
            writer.Figure("switchingNs", delay.Switching.Nanoseconds);
            writer.Figure("codingNs", delay.Coding.Nanoseconds);
            writer.Figure("wayNs", delay.Way.Nanoseconds);
            writer.WriteEndObject();
        }
    }

    /// <summary>A number with the places that count: shares of loads are exact fractions, and six decimals would hide it.</summary>
    internal static void Figure(this Utf8JsonWriter writer, string name, double value) =>
        writer.WriteNumber(name, Math.Round(value, 12) + 0.0);
}
