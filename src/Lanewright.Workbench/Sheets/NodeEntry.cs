using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>A switch or a bundle of hosts in a table: its first device, with how many are alike.</summary>
internal static class NodeEntry
{
    /// <summary>The entry, which leads to the device.</summary>
    public static Entry Of(SheetPaper paper, FabricMap map, int node)
    {
        var name = map.Plan.Devices.Name(map.Devices(node)[0]);
        return new Entry(map.Devices(node).Length > 1 ? $"{name} and {Numerals.Grouped(map.Devices(node).Length - 1)} alike" : name,
            paper.Site.To("devices", name));
    }
}
