using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Finds the hosts that one outage cuts off although they are linked to two switches.</summary>
public static class CutHosts
{
    /// <summary>Hosts that are up, have links to several switches, and cannot reach the largest part of what is left, in order.</summary>
    public static List<int> WithTwoWays(FabricMap map, Outage outage)
    {
        var left = map.Graph.Without(outage);
        var part = SwitchParts(left);
        // A host of two planes belongs to both: it is reached as long as one of them is left.
        var hostsOf = new Dictionary<int, HashSet<int>>();
        foreach (var link in left.Links.Where(l => l.Count > 0))
        {
            foreach (var (host, other) in new[] { (link.A, link.B), (link.B, link.A) })
            {
                if (!left.Nodes[host].IsTerminal || left.IsDown(host) || left.IsDown(other)) continue;
                if (!hostsOf.TryGetValue(part[other], out var hosts)) hostsOf[part[other]] = hosts = [];
                hosts.Add(host);
            }
        }
        var reached = hostsOf.OrderByDescending(p => p.Value.Sum(h => (long)left.Nodes[h].Members)).ThenBy(p => p.Key)
            .Select(p => p.Value).FirstOrDefault() ?? [];
        return
        [
            .. Enumerable.Range(0, left.Nodes.Length)
                .Where(n => left.Nodes[n].IsTerminal && !left.IsDown(n) && !reached.Contains(n))
                .SelectMany(n => map.Devices(left.OriginOfNode(n)).Take(left.Nodes[n].Members))
                .Where(host => HasTwoWays(map.Network, host))
                .Distinct().Order(),
        ];
    }

    private static bool HasTwoWays(PlanNetwork network, int host)
    {
        var links = network.UpLinks(host);
        foreach (var link in links)
            if (network.FarDevice(link, host) != network.FarDevice(links[0], host)) return true;
        return false;
    }

    /// <summary>A number for each node: that of the lowest node it is joined to by switches. Hosts join nothing: one with two links is no
    /// way between two switches.</summary>
    private static int[] SwitchParts(FabricGraph graph)
    {
        var parts = new UnionFind(graph.Nodes.Length);
        foreach (var link in graph.Links)
            if (link.Count > 0 && !graph.Nodes[link.A].IsTerminal && !graph.Nodes[link.B].IsTerminal) parts.Join(link.A, link.B);
        return [.. Enumerable.Range(0, graph.Nodes.Length).Select(parts.Find)];
    }
}
