using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>Names for nodes that symmetry proves alike under a demand: those of their groups where these are numbered on, otherwise that of
/// the first.</summary>
internal sealed class AlikeNames
{
    private readonly DemandStudy study;
    private readonly IReadOnlyList<int> nodes;
    private readonly Lazy<Dictionary<int, string>> names;

    /// <summary>Names the nodes of a picture.</summary>
    public AlikeNames(DemandStudy study, IReadOnlyList<int> nodes)
    {
        this.study = study;
        this.nodes = nodes;
        names = new(() => nodes.GroupBy(study.AlikeOf).ToDictionary(g => g.Key, NameOf));
    }

    /// <summary>The name that a node has in common with all that are like it, and with no others.</summary>
    public string NameOf(int node) => names.Value[study.AlikeOf(node)];

    /// <summary>A name without the number at its end; empty where it has none, or is nothing else.</summary>
    public static string StemOf(string group)
    {
        var stem = group.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        return stem.Length == group.Length ? "" : stem;
    }

    private string NameOf(IEnumerable<int> alike)
    {
        var own = alike.ToHashSet();
        var map = study.Fabric.Map;
        var groups = own.Select(n => FabricPicture.GroupOf(map, n)).Distinct().Order(Text.NaturalOrder.Instance).ToList();
        // Part of a group, or groups that have others mixed in, are told by their first device.
        var isWhole = nodes.All(n => own.Contains(n) || !groups.Contains(FabricPicture.GroupOf(map, n)));
        if (!isWhole) return map.Plan.Devices.Name(map.Devices(own.Min())[0]) + (own.Count > 1 ? " ..." : "");
        if (groups.Count == 1) return groups[0];
        var stem = StemOf(groups[0]);
        var isRun = stem.Length > 0 && groups.Select((g, i) => g == stem + Numerals.Whole(Number(groups[0], stem) + i)).All(same => same);
        return isRun ? $"{groups[0]}..{Numerals.Whole(Number(groups[^1], stem))}" : $"{groups[0]}, {groups[1]} ...";
    }

    private static long Number(string group, string stem) =>
        long.TryParse(group.AsSpan(stem.Length), System.Globalization.NumberFormatInfo.InvariantInfo, out var number) ? number : 0;
}
