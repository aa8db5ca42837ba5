using System.Text.Json;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Json;

/// <summary>Every link with its checks: checks stand once for each class, and each link names its class.</summary>
public static class LinksJson
{
    /// <summary>Writes classes and links.</summary>
    public static void Write(DesignedPlan designed, Stream stream)
    {
        var plan = designed.Plan;
        var design = designed.Design;
        JsonText.Write(stream, writer =>
        {
            writer.WriteStartObject();
            writer.WriteString("plan", plan.Name);
            writer.WriteString("currency", plan.Currency);
            writer.WriteStartArray("classes");
            foreach (var choice in design.Choices) Write(writer, plan, choice);
            if (!plan.Lines.IsEmpty) LineLinksJson.Classes(writer, designed);
            writer.WriteEndArray();
            writer.WriteStartArray("links");
            Links(writer, plan, design);
            if (!plan.LinePorts.IsEmpty) LineLinksJson.Links(writer, designed);
            writer.WriteEndArray();
            writer.WriteEndObject();
        });
    }

    private static void Write(Utf8JsonWriter writer, Plan plan, ClassChoice choice)
    {
        for (var share = 0; share < Math.Max(1, choice.Shares.Length); share++)
        {
            writer.WriteStartObject();
            writer.WriteString("class", Identifiers.Class(choice.Class.Index, share));
            writer.WriteString("set", choice.Class.SetNames);
            writer.WriteString("rate", choice.Class.Statement.Rate.ToString());
            if (choice.Shares.IsEmpty)
            {
                writer.WriteNumber("count", choice.Class.Count);
                SolutionJson.WriteNone(writer);
                writer.WriteNull("exceedanceChance");
            }
            else
            {
                writer.WriteNumber("count", choice.Shares[share].Links);
                SolutionJson.WriteKeys(writer, choice.Shares[share].Solution);
                writer.Number("exceedanceChance", LossExceedance.Of(plan.Policy, plan.Standards, choice.Shares[share].Solution));
            }
            Candidates(writer, plan, choice);
            writer.WriteEndObject();
        }
    }

    private static void Candidates(Utf8JsonWriter writer, Plan plan, ClassChoice choice)
    {
        writer.WriteStartArray("others");
        foreach (var other in choice.Candidates.Where(c => c.Name != choice.Chosen?.Name))
        {
            writer.WriteStartObject();
            writer.WriteString("name", other.Name);
            writer.WriteString("verdict", Checks.Word(other.Verdict));
            writer.Number("price", (double)other.Price.Units);
            writer.Number("watts", other.Power.Value);
            writer.WriteString("lostBy", LostBy.Reason(other, choice.Winner, plan.Currency));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void Links(Utf8JsonWriter writer, Plan plan, LinkDesign design)
    {
        var labels = new PlaceLabels(plan);
        for (var link = 0; link < plan.Links.Count; link++)
        {
            writer.WriteStartObject();
            writer.WriteString("link", Identifiers.Link(link));
            writer.WriteString("class", Identifiers.Class(design.ClassOf(link), design.ShareOf(link)));
            writer.WriteString("fromDevice", plan.Devices.Name(plan.Links.FromDevice(link)));
            writer.WriteString("fromPort", labels.Port(plan.Links.FromDevice(link), plan.Links.FromPort(link)));
            writer.WriteString("toDevice", plan.Devices.Name(plan.Links.ToDevice(link)));
            writer.WriteString("toPort", labels.Port(plan.Links.ToDevice(link), plan.Links.ToPort(link)));
            writer.WriteString("cable", Identifiers.Cable(design.CableOf(link)));
            writer.WriteEndObject();
            if (link % FlushEvery == FlushEvery - 1) writer.Flush();
        }
    }

    /// <summary>Links kept in memory before they go to the stream.</summary>
    private const int FlushEvery = 4096;
}
