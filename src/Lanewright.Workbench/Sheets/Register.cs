using System.Collections.Immutable;

namespace Lanewright.Workbench.Sheets;

/// <summary>The list of sheets.</summary>
internal static class Register
{
    /// <summary>All kinds of sheets, in the order of the set.</summary>
    public static ImmutableArray<RegisterEntry> All { get; } =
    [
        new("brief", "Brief", true, SideChoice.Beside, BriefSheet.Write),
        new("options", "Options", true, SideChoice.Beside, OptionsSheet.Write),
        new("floor", "Floor", true, SideChoice.Beside, FloorSheet.Write),
        new("racks", "Racks", true, SideChoice.Beside, RacksSheet.Write),
        new("fabric", "Fabric", true, SideChoice.Beside, FabricSheet.Write),
        new("links", "Links", true, SideChoice.Either, LinksSheet.Write),
        new("lines", "Lines", true, SideChoice.Beside, LinesSheet.Write),
        new("plant", "Plant", true, SideChoice.Beside, PlantSheet.Write),
        new("parts", "Parts", true, SideChoice.Beside, PartsSheet.Write),
        new("findings", "Findings", true, SideChoice.Beside, FindingsSheet.Write),
        new("plan", "Plan", true, SideChoice.None, PlanSheet.Write),
        new("compare", "What if", true, SideChoice.None, CompareSheet.Write),
        new("documents", "Documents", true, SideChoice.Beside, DocumentsSheet.Write),
        new("classes", "Class of links", false, SideChoice.Beside, ClassSheet.Write),
        new("devices", "Device", false, SideChoice.Beside, DeviceSheet.Write),
        new("why", "Where a number comes from", false, SideChoice.Beside, WhySheet.Write),
        new("rules", "Rule", false, SideChoice.None, RuleSheet.Write),
        new("find", "Search", false, SideChoice.Beside, FindSheet.Write),
    ];

    /// <summary>The sheets that are listed.</summary>
    public static ImmutableArray<RegisterEntry> Listed { get; } = [.. All.Where(e => e.IsListed)];

    /// <summary>The kind of sheet at a place; null when there is none.</summary>
    public static RegisterEntry? Find(string key) => All.FirstOrDefault(e => e.Key == key);
}
