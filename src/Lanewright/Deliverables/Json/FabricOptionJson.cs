using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;

namespace Lanewright.Deliverables.Json;

/// <summary>One option for a fabric, as JSON.</summary>
internal static class FabricOptionJson
{
    /// <summary>Writes it as an object.</summary>
    public static void Write(Utf8JsonWriter writer, FabricOption option)
    {
        writer.WriteStartObject();
        Counts(writer, option);
        Prices(writer, option);
        Switches(writer, option.Switches);
        Uplinks(writer, option.Uplinks);
        Parts(writer, "modulesByModel", option.ModulesByModel);
        Parts(writer, "cablesByModel", option.CablesByModel);
        Parts(writer, "smallParts", option.SmallParts);
        NextLane(writer, option.NextLaneRate);
        Years(writer, option.Years);
        writer.WriteEndObject();
    }

    private static void Counts(Utf8JsonWriter writer, FabricOption option)
    {
        writer.WriteString("shape", FabricShapes.Word(option.Shape));
        writer.WriteString("name", option.Needs.Name);
        writer.WriteNumber("tiers", option.Tiers);
        writer.WriteNumber("planes", option.Needs.Planes);
        writer.WriteNumber("leaves", option.Leaves);
        writer.WriteNumber("spines", option.Spines);
        writer.WriteNumber("cores", option.Cores);
        writer.WriteNumber("hosts", option.Hosts);
        writer.WriteNumber("hostPorts", option.HostPorts);
        writer.WriteNumber("fabricLinks", option.FabricLinks);
        writer.WriteNumber("modules", option.Modules);
        writer.WriteNumber("cables", option.Cables);
        var ratio = option.Needs.Oversubscription;
        writer.WriteString("oversubscription", string.Join(", ", ratio));
        writer.WriteBoolean("portsMeet", option.Needs.PortsMeet);
        writer.WriteNumber("survives", option.Needs.Survives);
        writer.WriteString("uplinkRate", option.Uplinks.IsEmpty ? null : option.Uplinks[0].Rate.ToString());
        writer.WriteString("breakout", option.Uplinks.IsEmpty ? null : option.Uplinks[0].UpperMode.ToString());
        writer.WriteNumber("portsUsed", option.Switches.Sum(s => (long)s.PortsUsed));
        writer.WriteNumber("portsFree", option.Switches.Sum(s => (long)s.PortsFree));
        writer.WriteNumber("growthLeft", option.GrowthLeft);
    }

    private static void Prices(Utf8JsonWriter writer, FabricOption option)
    {
        SizingJson.Money(writer, "price", option.Price);
        SizingJson.Money(writer, "priceOverYears", option.PriceOverYears);
        SizingJson.Money(writer, "lowerBound", option.LowerBound);
        writer.Number("gap", option.Gap.Value);
        Cost(writer, "cost", option.Cost);
        Cost(writer, "costOverYears", option.CostOverYears);
        writer.Number("energyKwh", option.EnergyOverYears.KilowattHours);
        writer.Number("watts", option.Watts.Value);
        writer.WriteNumber("rackUnits", option.RackUnits);
        writer.Number("wattsInFullestRack", option.Needs.RackPower.Value);
        writer.Number("kilogramsInFullestRack", option.Needs.RackWeight.Kilograms);
    }

    private static void Cost(Utf8JsonWriter writer, string name, FabricCost cost)
    {
        writer.WriteStartObject(name);
        SizingJson.Money(writer, "switches", cost.Switches);
        SizingJson.Money(writer, "modules", cost.Modules);
        SizingJson.Money(writer, "cables", cost.Cables);
        SizingJson.Money(writer, "smallParts", cost.SmallParts);
        SizingJson.Money(writer, "energy", cost.Energy);
        writer.WriteEndObject();
    }

    private static void Switches(Utf8JsonWriter writer, ImmutableArray<SwitchUse> switches)
    {
        writer.WriteStartArray("switches");
        foreach (var use in switches)
        {
            writer.WriteStartObject();
            writer.WriteString("model", use.Model.Name);
            writer.WriteNumber("count", use.Count);
            writer.WriteString("role", FabricWords.Role(use.Role));
            writer.WriteNumber("countOverYears", use.CountOverYears);
            writer.WriteStartArray("cards");
            foreach (var card in use.Cards) writer.WriteStringValue(card.Name);
            writer.WriteEndArray();
            writer.WriteNumber("portsUsed", use.PortsUsed);
            writer.WriteNumber("portsFree", use.PortsFree);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void Uplinks(Utf8JsonWriter writer, ImmutableArray<TierUplinks> uplinks)
    {
        writer.WriteStartArray("uplinks");
        foreach (var tier in uplinks)
        {
            writer.WriteStartObject();
            writer.WriteNumber("tier", tier.Tier);
            writer.WriteString("hosts", tier.Hosts);
            writer.WriteString("rate", tier.Rate.ToString());
            writer.WriteString("lowerBreakout", tier.LowerMode.ToString());
            writer.WriteString("upperBreakout", tier.UpperMode.ToString());
            writer.WriteNumber("uplinks", tier.Uplinks);
            writer.WriteNumber("uppers", tier.Uppers);
            writer.WriteNumber("parallel", tier.Parallel);
            writer.WriteNumber("links", tier.Links);
            writer.WriteString("oversubscription", tier.Achieved.ToString());
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void Parts(Utf8JsonWriter writer, string name, ImmutableArray<FabricPart> parts)
    {
        writer.WriteStartArray(name);
        foreach (var part in parts)
        {
            writer.WriteStartObject();
            writer.WriteString("model", part.Item.Name);
            if (part.Length is { } length) writer.Number("metres", length.Metres);
            writer.WriteNumber("count", part.Count);
            writer.WriteNumber("toBuy", part.ToBuy);
            SizingJson.Money(writer, "unitPrice", part.UnitPrice);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void NextLane(Utf8JsonWriter writer, NextLaneRate next)
    {
        writer.WriteStartObject("nextLaneRate");
        writer.WriteNumber("modules", next.Modules);
        writer.WriteNumber("modulesServing", next.ModulesServing);
        writer.WriteNumber("fibres", next.Fibres);
        writer.WriteNumber("fibresServing", next.FibresServing);
        writer.WriteStartArray("kinds");
        foreach (var kind in next.Kinds)
        {
            writer.WriteStartObject();
            writer.WriteString("kind", kind.Name);
            writer.WriteString("counted", kind.IsFibre ? "fibres" : "modules");
            writer.WriteNumber("count", kind.Count);
            writer.WriteBoolean("serves", kind.Serves);
            writer.WriteString("why", kind.Why);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static void Years(Utf8JsonWriter writer, ImmutableArray<FabricYear> years)
    {
        writer.WriteStartArray("years");
        foreach (var year in years)
        {
            writer.WriteStartObject();
            writer.WriteNumber("year", year.Year);
            writer.WriteNumber("hosts", year.Hosts);
            writer.WriteNumber("leaves", year.Leaves);
            SizingJson.Money(writer, "bought", year.Bought);
            writer.Number("energyKwh", year.Energy.KilowattHours);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }
}
