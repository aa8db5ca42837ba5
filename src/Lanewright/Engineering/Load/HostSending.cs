namespace Lanewright.Engineering.Load;

/// <summary>What hosts still send when some of their links are down: no more than those that are left carry.</summary>
internal static class HostSending
{
    /// <summary>The part of its demand a bundle still sends. A bundle that lost nothing sends all of it, were it more than its links carry:
    /// that is a fault of the demand, and hiding it helps nobody.</summary>
    public static double Kept(FabricGraph graph, FabricGraph whole, TrafficMatrix traffic, int node)
    {
        var origin = graph.OriginOfNode(node);
        double all = whole.Nodes[origin].Members;
        double members = graph.Nodes[node].Members;
        if (members == 0) return 1;
        var had = Gigabits(whole, origin) / all;
        var left = Gigabits(graph, node) / members;
        // A share, as sums over the same links in another order differ in the last places.
        if (left >= had * AsMuch) return 1;
        var wanted = traffic.GigabitsFrom(origin) / all;
        return wanted > left ? left / wanted : 1;
    }

    private const double AsMuch = 1 - 1e-9;

    private static double Gigabits(FabricGraph graph, int node)
    {
        var sum = 0.0;
        foreach (var link in graph.LinksOf(node)) sum += graph.Links[link].Gigabits;
        return sum / graph.HostLinkWidening;
    }
}
