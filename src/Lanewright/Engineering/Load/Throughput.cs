using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The largest factor by which a traffic matrix can be scaled and still be routed, with a proof from both sides.</summary>
/// <param name="AtLeast">A factor for which a routing was found.</param>
/// <param name="AtMost">A factor that prices on the links prove cannot be exceeded: all capacity at its price, over the least price of
/// all demand.</param>
/// <param name="IsExact">Whether the linear program was solved, so that both meet but for rounding.</param>
public sealed record Throughput(Share AtLeast, Share AtMost, bool IsExact)
{
    /// <summary>Computes the factor, or bounds where the program is too large. A matrix with demand that has no path scales to 0;
    /// null for a matrix without demand.</summary>
    public static Throughput? Of(FabricGraph graph, TrafficMatrix traffic)
    {
        var demand = new FabricTraffic(graph, traffic);
        var wanted = FlowDemand.Of(graph, demand);
        if (wanted.UnroutedGigabits > 0) return new Throughput(Share.From(0), Share.From(0), true);
        if (wanted.Sources.Length == 0) return null;
        var distances = new FlowDistances(graph);
        if (FlowProgram.Solve(graph, traffic, wanted, avoidsDetours: false) is { } solved)
        {
            var fullest = 0.0;
            foreach (var side in new FlowSides(graph).All)
                fullest = Math.Max(fullest, solved.SideGigabits[side] / graph.Links[side / 2].Gigabits);
            return new Throughput(Share.From(1 / fullest), Share.From(Bound(graph, wanted, distances, solved.SidePrices)), true);
        }
        var routed = new[] { SplitRule.PerHop, SplitRule.PathWeighted }
            .Max(rule => 1 / LoadSolver.OnShortestPaths(graph, traffic, rule).MaxUtilisation.Value);
        return new Throughput(Share.From(routed), Share.From(SimpleBound(graph, wanted, distances)), false);
    }

    /// <summary>The factor under the split that loads were computed with: until their fullest link is full.</summary>
    /// <param name="loads">The loads; something flows.</param>
    public static Throughput OfLoads(LinkLoads loads)
    {
        var factor = Share.From(loads.UnroutedGigabits > 0 ? 0 : 1 / loads.MaxUtilisation.Value);
        return new Throughput(factor, factor, true);
    }

    private static double Bound(FabricGraph graph, FlowDemand wanted, FlowDistances distances, double[] prices)
    {
        var capacity = new FlowSides(graph).All.Sum(side => prices[side] * graph.Links[side / 2].Gigabits);
        var needed = 0.0;
        foreach (var to in Enumerable.Range(0, graph.Nodes.Length).Where(to => wanted.BySource.Any(row => row[to] > 0)))
        {
            var priced = distances.To(to, prices);
            for (var i = 0; i < wanted.Sources.Length; i++)
                if (wanted.BySource[i][to] > 0) needed += wanted.BySource[i][to] * priced[wanted.Sources[i]];
        }
        return needed > 0 ? capacity / needed : double.MaxValue;
    }

    /// <summary>The best of a few prices that are often right: all links between switches alike, and the links of one bundle
    /// alone.</summary>
    private static double SimpleBound(FabricGraph graph, FlowDemand wanted, FlowDistances distances)
    {
        var sides = new FlowSides(graph);
        var prices = new double[graph.Links.Length * 2];
        foreach (var side in sides.All)
            prices[side] = graph.Nodes[sides.From(side)].IsTerminal || graph.Nodes[sides.From(side ^ 1)].IsTerminal ? 0 : 1;
        var bound = Bound(graph, wanted, distances, prices);
        for (var node = 0; node < graph.Nodes.Length; node++)
        {
            if (!graph.Nodes[node].IsTerminal) continue;
            var capacity = sides.Leaving(node).Sum(side => graph.Links[side / 2].Gigabits);
            var at = Array.BinarySearch(wanted.Sources, node);
            var sent = at < 0 ? 0 : wanted.BySource[at].Sum();
            var taken = wanted.BySource.Sum(row => row[node]);
            if (Math.Max(sent, taken) > 0) bound = Math.Min(bound, capacity / Math.Max(sent, taken));
        }
        return bound;
    }
}
