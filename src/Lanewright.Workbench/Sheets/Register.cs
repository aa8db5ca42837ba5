using System.Collections.Immutable;

namespace Lanewright.Workbench.Sheets;

/// <summary>The list of sheets.</summary>
internal static class Register
{
    /// <summary>All kinds of sheets, in the order of the set.</summary>
    public static ImmutableArray<RegisterEntry> All { get; } =
    [
        new("brief", "Brief", true, BriefSheet.Write),
        new("options", "Options", true, OptionsSheet.Write),
        new("floor", "Floor", true, FloorSheet.Write),
        new("racks", "Racks", true, RacksSheet.Write),
        new("fabric", "Fabric", true, FabricSheet.Write),
        new("links", "Links", true, LinksSheet.Write),
        new("lines", "Lines", true, LinesSheet.Write),
        new("parts", "Parts", true, PartsSheet.Write),
        new("findings", "Findings", true, FindingsSheet.Write),
        new("plan", "Plan", true, PlanSheet.Write),
        new("compare", "What if", true, CompareSheet.Write),
        new("documents", "Documents", true, DocumentsSheet.Write),
        new("classes", "Class of links", false, ClassSheet.Write),
        new("devices", "Device", false, DeviceSheet.Write),
        new("rules", "Rule", false, RuleSheet.Write),
        new("find", "Search", false, FindSheet.Write),
    ];

    /// <summary>The sheets that are listed.</summary>
    public static ImmutableArray<RegisterEntry> Listed { get; } = [.. All.Where(e => e.IsListed)];

    /// <summary>The kind of sheet at a place; null when there is none.</summary>
    public static RegisterEntry? Find(string key) => All.FirstOrDefault(e => e.Key == key);
}
