using System.Collections.Immutable;

namespace Lanewright.Workbench.Sheets;

/// <summary>The list of sheets.</summary>
internal static class Register
{
    /// <summary>All kinds of sheets, in the order of the set.</summary>
    public static ImmutableArray<RegisterEntry> All { get; } =
    [
        new("brief", "Brief", true, true, BriefSheet.Write),
        new("options", "Options", true, true, OptionsSheet.Write),
        new("floor", "Floor", true, true, FloorSheet.Write),
        new("racks", "Racks", true, true, RacksSheet.Write),
        new("fabric", "Fabric", true, true, FabricSheet.Write),
        new("links", "Links", true, false, LinksSheet.Write),
        new("lines", "Lines", true, true, LinesSheet.Write),
        new("plant", "Plant", true, true, PlantSheet.Write),
        new("parts", "Parts", true, true, PartsSheet.Write),
        new("findings", "Findings", true, true, FindingsSheet.Write),
        new("plan", "Plan", true, false, PlanSheet.Write),
        new("compare", "What if", true, false, CompareSheet.Write),
        new("documents", "Documents", true, false, DocumentsSheet.Write),
        new("classes", "Class of links", false, true, ClassSheet.Write),
        new("devices", "Device", false, true, DeviceSheet.Write),
        new("why", "Where a number comes from", false, true, WhySheet.Write),
        new("rules", "Rule", false, false, RuleSheet.Write),
        new("find", "Search", false, false, FindSheet.Write),
    ];

    /// <summary>The sheets that are listed.</summary>
    public static ImmutableArray<RegisterEntry> Listed { get; } = [.. All.Where(e => e.IsListed)];

    /// <summary>The kind of sheet at a place; null when there is none.</summary>
    public static RegisterEntry? Find(string key) => All.FirstOrDefault(e => e.Key == key);
}
