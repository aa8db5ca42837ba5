using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>What an outage makes of a graph: lower counts, nodes down, and members of bundles that were hit set apart from the
/// rest.</summary>
internal sealed class GraphDamage
{
    private readonly List<FabricNode> nodes;
    private readonly List<FabricLink> links;
    private readonly List<bool> down;
    private readonly List<int> nodeOrigin;
    private readonly List<int> linkOrigin;

    private GraphDamage(FabricGraph whole)
    {
        Whole = whole;
        nodes = [.. whole.Nodes];
        links = [.. whole.Links];
        down = [.. new bool[nodes.Count]];
        nodeOrigin = [.. Enumerable.Range(0, nodes.Count)];
        linkOrigin = [.. Enumerable.Range(0, links.Count)];
    }

    /// <summary>The graph while nothing was down.</summary>
    public FabricGraph Whole { get; }

    /// <summary>Nodes, those set apart at the end.</summary>
    public ImmutableArray<FabricNode> Nodes => [.. nodes];

    /// <summary>Links, those of nodes set apart at the end.</summary>
    public ImmutableArray<FabricLink> Links => [.. links];

    /// <summary>Whether each node is down.</summary>
    public List<bool> Down => down;

    /// <summary>The whole graph's node of each node.</summary>
    public List<int> NodeOrigin => nodeOrigin;

    /// <summary>The whole graph's link of each link.</summary>
    public List<int> LinkOrigin => linkOrigin;

    /// <summary>Whether a bundle has fewer members than it had, or stands in several parts.</summary>
    public bool IsSplit { get; private set; }

    /// <summary>Applies an outage to a whole graph.</summary>
    public static GraphDamage Of(FabricGraph whole, Outage outage)
    {
        var result = new GraphDamage(whole);
        foreach (var node in outage.Nodes) result.down[node] = true;
        var hits = new SortedDictionary<int, MemberHits>();
        foreach (var (link, cables) in LostCables.Of(whole, outage)) result.Lose(link, cables, hits);
        foreach (var lost in outage.Members) HitsOf(hits, whole, lost.Node).TakeDown(lost.First, lost.Count);
        foreach (var (node, hit) in hits)
            if (!result.down[node]) result.Split(node, hit);
        return result;
    }

    private static MemberHits HitsOf(SortedDictionary<int, MemberHits> hits, FabricGraph whole, int node)
    {
        if (!hits.TryGetValue(node, out var found)) hits[node] = found = new MemberHits(whole.Nodes[node].Members);
        return found;
    }

    private void Lose(int link, SortedSet<int> cables, SortedDictionary<int, MemberHits> hits)
    {
        var bundle = Whole.BundleOf(link);
        if (bundle < 0)
        {
            links[link] = links[link] with { Count = links[link].Count - cables.Count };
            return;
        }
        var members = HitsOf(hits, Whole, bundle);
        foreach (var (member, count) in LostCables.ByMember(cables, Whole.LinksEach(link))) members.Lose(link, member, count);
    }

    /// <summary>Sets members with different losses apart: the first group, the unhurt where there are any, keeps the node.</summary>
    private void Split(int node, MemberHits hits)
    {
        IsSplit = true;
        var all = Whole.Nodes[node].Members;
        var groups = hits.Groups();
        if (groups.Count == 0)
        {
            down[node] = true;
            return;
        }
        var keepsNode = true;
        foreach (var (losses, members) in groups)
        {
            var at = node;
            if (!keepsNode)
            {
                at = nodes.Count;
                nodes.Add(Whole.Nodes[node]);
                down.Add(false);
                nodeOrigin.Add(node);
            }
            nodes[at] = nodes[at] with { Members = members };
            foreach (var link in Whole.LinksOf(node))
            {
                var each = (Whole.Links[link].Count / all) - losses.GetValueOrDefault(link);
                PlaceLink(link, node, at, each * members);
            }
            keepsNode = false;
        }
    }

    private void PlaceLink(int link, int node, int at, int count)
    {
        var whole = Whole.Links[link];
        if (at == node)
        {
            links[link] = whole with { Count = count };
            return;
        }
        if (count == 0) return;
        links.Add(whole.A == node ? whole with { A = at, Count = count } : whole with { B = at, Count = count });
        linkOrigin.Add(link);
    }
}
