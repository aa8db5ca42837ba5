using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>A fabric in which the hosts of one bundle stand in two.</summary>
/// <param name="Graph">The fabric; the second part is its last node.</param>
/// <param name="Terminals">Its terminals.</param>
internal sealed record DividedBundle(FabricGraph Graph, ImmutableArray<Terminal> Terminals)
{
    /// <summary>Divides a bundle all of whose hosts take part.</summary>
    /// <param name="graph">A whole fabric.</param>
    /// <param name="terminals">Its terminals.</param>
    /// <param name="node">The bundle.</param>
    /// <param name="stay">How many of its hosts stay in it, from 1 and fewer than all.</param>
    public static DividedBundle Of(FabricGraph graph, ImmutableArray<Terminal> terminals, int node, int stay)
    {
        var (kind, members) = graph.Nodes[node];
        var links = graph.Links.ToBuilder();
        for (var l = 0; l < graph.Links.Length; l++)
        {
            var link = graph.Links[l];
            if (link.A != node && link.B != node) continue;
            links[l] = link with { Count = link.Count / members * stay };
            links.Add(link with
            {
                A = link.A == node ? graph.Nodes.Length : link.A,
                B = link.B == node ? graph.Nodes.Length : link.B,
                Count = link.Count / members * (members - stay),
            });
        }
        return new DividedBundle(
            new FabricGraph(
                [.. graph.Nodes.SetItem(node, FabricNode.Hosts(kind, stay)), FabricNode.Hosts(kind, members - stay)], links.ToImmutable()),
            [
                .. terminals.Select(t => t.Node == node ? t with { Members = stay } : t),
                .. terminals.Where(t => t.Node == node).Select(t => t with { Node = graph.Nodes.Length, Members = members - stay }),
            ]);
    }

    /// <summary>Whether a bundle can be divided: all its hosts take part, alike, and it has several.</summary>
    public static bool IsPossible(FabricGraph graph, ImmutableArray<Terminal> terminals, int node) => graph.Whole is null
        && graph.Nodes[node].Members > 1
        && terminals.Where(t => t.Node == node).ToList() is [{ } only] && only.Members == graph.Nodes[node].Members;
}
