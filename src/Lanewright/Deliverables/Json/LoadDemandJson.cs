using System.Text.Json;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;

namespace Lanewright.Deliverables.Json;

/// <summary>One demand of an answer about load.</summary>
internal sealed class LoadDemandJson(Utf8JsonWriter writer, DemandStudy study, LoadAnswer answer)
{
    /// <summary>Writes it.</summary>
    public void Write()
    {
        writer.WriteStartObject();
        writer.WriteString("name", study.Demand.Name);
        writer.WriteString("kind", LoadWords.Kind(study));
        LoadJson.WriteHeadline(writer, study, study.WorstCase is { } own ? (study.Fabric, own) : null);
        Throughput("throughput", study.Throughput);
        Throughput("throughputBestSplit", study.BestThroughput);
        Collisions();
        Incast();
        Interval("availability", study.Availability);
        writer.WriteStartArray("takenAsUp");
        foreach (var kind in study.TakenAsUp) writer.WriteStringValue(LoadWords.Failure(kind));
        writer.WriteEndArray();
        if (answer.Pairs) Pairs();
        writer.WriteEndObject();
    }

    private void Throughput(string name, Throughput? known)
    {
        if (known is not { } throughput)
        {
            writer.WriteNull(name);
            return;
        }
        writer.WriteStartObject(name);
        writer.Figure("atLeast", throughput.AtLeast.Value);
        writer.Figure("atMost", throughput.AtMost.Value);
        writer.WriteBoolean("exact", throughput.IsExact);
        writer.WriteEndObject();
    }

    private void Collisions()
    {
        if (study.Collisions is not { } met)
        {
            writer.WriteNull("collisions");
            return;
        }
        writer.WriteStartObject("collisions");
        writer.WriteString("switch", study.Fabric.Map.Plan.Devices.Name(met.Device));
        writer.WriteNumber("flows", met.Flows);
        writer.WriteNumber("links", met.Uplinks);
        writer.Figure("flowRate", met.FlowRate.Gigabits);
        writer.Figure("linkRate", met.LinkRate.Gigabits);
        writer.WriteNumber("noCollision", met.Hash.NoCollision.Value);
        writer.Figure("busyLinks", met.Hash.BusyLinks);
        writer.Figure("busiestFlows", met.Hash.BusiestFlows);
        writer.Figure("sharingFlows", met.Hash.SharingFlows);
        writer.Figure("lineRateThroughput", met.Hash.Throughput.Value);
        writer.Figure("busiestUtilisation", met.BusiestUtilisation.Value);
        writer.WriteEndObject();
    }

    private void Incast()
    {
        if (study.Queue is not { } queue)
        {
            writer.WriteNull("incast");
            return;
        }
        writer.WriteStartObject("incast");
        writer.Figure("overload", queue.Overload.Value);
        writer.Figure("queueBytes", queue.QueueBytes);
        writer.WriteEndObject();
    }

    private void Pairs()
    {
        if (study.Pairs(LoadAnswer.MostPairs, answer.Seed) is not { } pairs)
        {
            writer.WriteNull("pairs");
            return;
        }
        writer.WriteStartObject("pairs");
        writer.WriteNumber("count", pairs.PairCount);
        writer.WriteNumber("evaluated", pairs.Evaluated);
        writer.WriteBoolean("exact", pairs.IsExact);
        writer.Figure("maxUtilisation", pairs.WorstUtilisation.Value);
        writer.WriteStartArray("worst");
        foreach (var unit in pairs.WorstPair)
            writer.WriteStringValue(LoadWords.Failure(study.Fabric.Failures[unit]));
        writer.WriteEndArray();
        Interval("overloading", pairs.Overloading);
        Interval("cutting", pairs.Cutting);
        writer.WriteEndObject();
    }

    /// <summary>Shares close to one are told apart by their last places.</summary>
    private void Interval(string name, ShareInterval? interval)
    {
        if (interval is not { } known)
        {
            writer.WriteNull(name);
            return;
        }
        writer.WriteStartObject(name);
        writer.WriteNumber("lower", known.Lower.Value);
        writer.WriteNumber("estimate", known.Estimate.Value);
        writer.WriteNumber("upper", known.Upper.Value);
        writer.WriteEndObject();
    }
}
