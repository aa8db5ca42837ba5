namespace Lanewright.Engineering.Load;

/// <summary>Loads of all links under a traffic matrix and a split rule.</summary>
public static class LoadSolver
{
    /// <summary>Shares of the work that are summed one after the other, so that sums do not depend on how many cores there are.</summary>
    private const int Shares = 16;

    /// <summary>Loads under any rule. Null when the ideal split is asked for a fabric beyond
    /// <see cref="IdealSplit.MostVariables"/>.</summary>
    public static LinkLoads? Of(FabricGraph graph, TrafficMatrix traffic, SplitRule rule) =>
        rule == SplitRule.Ideal ? IdealSplit.Of(graph, traffic) : OnShortestPaths(graph, traffic, rule);

    /// <summary>Loads under a rule that keeps to shortest paths.</summary>
    /// <exception cref="ArgumentException">The rule is the ideal split, or a demand does not end at bundles of hosts.</exception>
    public static LinkLoads OnShortestPaths(FabricGraph graph, TrafficMatrix traffic, SplitRule rule)
    {
        if (rule == SplitRule.Ideal) throw new ArgumentException("the ideal split does not keep to shortest paths", nameof(rule));
        var demand = new FabricTraffic(graph, traffic);
        var sides = new double[graph.Links.Length * 2];
        var direct = new DirectDemand(graph, sides);
        var receivers = demand.Ends.Where(demand.Reaches).ToArray();
        var twins = TwinArcs.Of(graph.Arcs);
        var destinations = Destination.Of(twins.Arcs, receivers);
        var blocks = (destinations.Length + PathBlock.Lanes - 1) / PathBlock.Lanes;
        var passes = new LoadPass[Math.Clamp(blocks, 1, Shares)];
        Parallel.For(0, passes.Length, share =>
        {
            var pass = new LoadPass(graph, twins.Arcs, demand, direct, rule);
            for (var block = share * blocks / passes.Length; block < (share + 1) * blocks / passes.Length; block++)
            {
                var first = block * PathBlock.Lanes;
                pass.Add(destinations.AsSpan(first, Math.Min(PathBlock.Lanes, destinations.Length - first)));
            }
            passes[share] = pass;
        });
        foreach (var terminal in receivers.Where(t => graph.Arcs.First[t] == graph.Arcs.First[t + 1])) passes[0].AddApart(terminal);
        return Sum(graph, twins, sides, passes);
    }

    private static LinkLoads Sum(FabricGraph graph, TwinArcs twins, double[] sides, LoadPass[] passes)
    {
        var unrouted = 0.0;
        var merged = new double[twins.Arcs.Target.Length];
        foreach (var pass in passes)
        {
            unrouted += pass.UnroutedGigabits;
            for (var arc = 0; arc < merged.Length; arc++) merged[arc] += pass.ArcGigabits[arc];
        }
        twins.Spread(merged, sides);
        var (fromA, fromB) = (new double[graph.Links.Length], new double[graph.Links.Length]);
        for (var link = 0; link < fromA.Length; link++) (fromA[link], fromB[link]) = (sides[link * 2], sides[(link * 2) + 1]);
        return new LinkLoads(graph, fromA, fromB, unrouted);
    }
}
