using System.Collections.Immutable;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>What a picture of a fabric shows: every switch while there are few, otherwise classes with their counts.</summary>
/// <param name="Nodes">The boxes, tier by tier from the hosts up.</param>
/// <param name="Edges">The lines.</param>
/// <param name="Drawn">What a box stands for, in words.</param>
/// <param name="IsByClass">Whether boxes of switches stand for several.</param>
internal sealed record FabricPicture(
    ImmutableArray<PictureNode> Nodes, ImmutableArray<PictureEdge> Edges, string Drawn, bool IsByClass)
{
    /// <summary>Boxes side by side at most when each is one switch.</summary>
    public const int MostSingle = 40;

    /// <summary>Boxes side by side at most when each is a class.</summary>
    public const int MostClasses = 14;

    /// <summary>The finest picture in which no tier is crowded.</summary>
    /// <param name="study">The demand.</param>
    /// <param name="utilisation">How full a link of the network is.</param>
    public static FabricPicture Of(DemandStudy study, Func<int, Share> utilisation)
    {
        var map = study.Fabric.Map;
        var nodes = Enumerable.Range(0, map.Graph.Nodes.Length).Where(n => map.Tier(n) >= 0).ToList();
        var alike = new AlikeNames(study, nodes);
        var ways = new (string Drawn, int Most, Func<int, string> Name)[]
        {
            ("each switch, hosts by group", MostSingle, n => map.Graph.Nodes[n].IsTerminal ? GroupOf(map, n) : map.Name(n)),
            ("groups of the plan", MostClasses, n => GroupOf(map, n)),
            ("what is alike under this demand", MostClasses, alike.NameOf),
            ("runs of groups", MostClasses, n => StemOf(GroupOf(map, n))),
            ("device models", MostClasses, n => map.Plan.Devices.Group(map.Devices(n)[0]).Model.Name),
            ("tiers", MostClasses, n => map.Tier(n) == 0 ? "hosts" : "switches"),
        };
        var way = ways.FirstOrDefault(w => IsReadable(map, nodes, w.Name, w.Most), ways[^1]);
        return Build(map, utilisation, nodes, way.Name, way.Drawn, way.Most == MostClasses);
    }

    /// <summary>The group of a node.</summary>
    public static string GroupOf(FabricMap map, int node) => map.Plan.Devices.Group(map.Devices(node)[0]).Name;

    /// <summary>Groups that differ in their numbers alone, such as those of pods, under one name.</summary>
    private static string StemOf(string group) => AlikeNames.StemOf(group) is { Length: > 0 } stem ? stem + "*" : group;

    private static bool IsReadable(FabricMap map, List<int> nodes, Func<int, string> name, int most) =>
        nodes.GroupBy(map.Tier).All(tier => tier.Select(name).Distinct().Count() <= most);

    private static FabricPicture Build(
        FabricMap map, Func<int, Share> utilisation, List<int> nodes, Func<int, string> name, string drawn, bool isByClass)
    {
        var boxes = new List<PictureNode>();
        var boxOf = new Dictionary<int, int>();
        foreach (var box in nodes.GroupBy(n => (Tier: map.Tier(n), Name: name(n))).OrderBy(g => g.Key.Tier).ThenBy(g => g.Min()))
        {
            foreach (var node in box) boxOf[node] = boxes.Count;
            boxes.Add(new PictureNode(box.Key.Tier, box.Key.Name, box.Sum(n => (long)map.Devices(n).Length), [.. box]));
        }
        var edges = Enumerable.Range(0, map.Graph.Links.Length)
            .Where(l => boxOf.ContainsKey(map.Graph.Links[l].A) && boxOf.ContainsKey(map.Graph.Links[l].B))
            .GroupBy(l => Ends(boxOf[map.Graph.Links[l].A], boxOf[map.Graph.Links[l].B]))
            .Select(g => Edge(map, utilisation, g.Key, [.. g]));
        return new FabricPicture([.. boxes], [.. edges.OrderBy(e => e.Worst).ThenBy(e => e.Upper).ThenBy(e => e.Lower)], drawn, isByClass);
    }

    /// <summary>Boxes are numbered from the hosts up.</summary>
    private static (int Upper, int Lower) Ends(int a, int b) => (Math.Max(a, b), Math.Min(a, b));

    private static PictureEdge Edge(
        FabricMap map, Func<int, Share> utilisation, (int Upper, int Lower) ends, ImmutableArray<int> links)
    {
        var (count, sum, worst) = (0L, 0.0, 0.0);
        foreach (var link in links)
        {
            var full = utilisation(link).Value;
            var parallel = map.Graph.Links[link].Count;
            (count, sum, worst) = (count + parallel, sum + (full * parallel), Math.Max(worst, full));
        }
        return new PictureEdge(ends.Upper, ends.Lower, count, Share.From(worst), Share.From(sum / count), links);
    }
}
