using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>Counts of a fabric under the names people give them.</summary>
public sealed class FabricFigures
{
    private FabricFigures(IEnumerable<(string Name, object Value)> figures) => All = [.. figures];

    /// <summary>Names with whole numbers or ratios, in the order to show them.</summary>
    public ImmutableArray<(string Name, object Value)> All { get; }

    /// <summary>Names with values as text.</summary>
    public IEnumerable<(string Name, string Text)> Words =>
        All.Select(f => (f.Name, f.Value is long whole ? Numerals.Grouped(whole) : f.Value.ToString() ?? ""));

    /// <summary>A folded Clos of some tiers.</summary>
    public static FabricFigures Of(FoldedClos counts) => new(
    [
        ("hosts", counts.Hosts),
        .. counts.Switches.Select((s, tier) => (TierName(tier, counts.Switches.Length), (object)s)),
        ("switches", counts.AllSwitches),
        ("fabricLinks", counts.FabricLinks),
        ("links", counts.Links),
        ("pods", counts.Pods),
        ("hostsPerPod", counts.HostsPerPod),
        ("paths", counts.Paths),
        ("oversubscription", counts.EndToEnd.ToString()),
        ("unusedPorts", (long)counts.UnusedPorts),
        ("opticEndsPerHost", counts.OpticEndsPerHost.ToString()),
    ]);

    /// <summary>Two tiers for a number of hosts.</summary>
    public static FabricFigures Of(TwoTierCounts counts, long hosts) => new(
    [
        ("hosts", hosts), ("hostPorts", counts.Hosts), ("leaves", (long)counts.Leaves), ("spines", (long)counts.Spines),
        ("switches", (long)counts.Leaves + counts.Spines), ("down", (long)counts.Down), ("up", (long)counts.Up),
        ("parallel", (long)counts.Parallel), ("fabricLinks", counts.FabricLinks), ("links", counts.FabricLinks + counts.Hosts),
    ]);

    /// <summary>Planes side by side.</summary>
    public static FabricFigures Of(PlaneCounts counts, long hosts) => new(
    [
        ("hosts", hosts), ("planes", (long)counts.Planes), ("leaves", (long)counts.Planes * counts.Plane.Leaves),
        ("spines", (long)counts.Planes * counts.Plane.Spines), ("leavesPerPlane", (long)counts.Plane.Leaves),
        ("spinesPerPlane", (long)counts.Plane.Spines), ("switches", (long)counts.Switches), ("hostCables", counts.HostCables),
        ("fabricLinks", counts.FabricLinks),
    ]);

    /// <summary>Rails.</summary>
    public static FabricFigures Of(RailCounts counts) => new(
    [
        ("hosts", (long)counts.Servers), ("servers", (long)counts.Servers), ("accelerators", (long)counts.Accelerators),
        ("acceleratorsPerUnit", (long)counts.AcceleratorsPerUnit), ("leavesPerUnit", (long)counts.LeavesPerUnit),
        ("units", (long)counts.Units), ("leaves", (long)counts.Leaves), ("spines", (long)counts.Spines),
        ("switches", (long)counts.Leaves + counts.Spines),
    ]);

    private static string TierName(int tier, int tiers) => (tier, tiers) switch
    {
        (_, 1) => "boxes",
        (0, 2) => "leaves",
        (1, 2) => "spines",
        (0, 3) => "edge",
        (1, 3) => "aggregation",
        (2, 3) => "cores",
        _ => "tier" + Numerals.Whole(tier + 1),
    };
}
