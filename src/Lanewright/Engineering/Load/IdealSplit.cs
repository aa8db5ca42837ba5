namespace Lanewright.Engineering.Load;

/// <summary>The split that keeps the busiest link as empty as can be: a linear program over sources and links.</summary>
public static class IdealSplit
{
    /// <summary>Variables, after what is alike by symmetry was merged, beyond which the program is not tried: ten seconds or
    /// so.</summary>
    public const int MostVariables = 10_000;

    /// <summary>Loads under the ideal split; null when the program would be too large to solve in reasonable time.</summary>
    /// <exception cref="ArgumentException">A demand does not end at bundles of hosts.</exception>
    public static LinkLoads? Of(FabricGraph graph, TrafficMatrix traffic)
    {
        var wanted = FlowDemand.Of(graph, new FabricTraffic(graph, traffic));
        var (fromA, fromB) = (new double[graph.Links.Length], new double[graph.Links.Length]);
        if (wanted.Sources.Length == 0) return new LinkLoads(graph, fromA, fromB, wanted.UnroutedGigabits);
        if (FlowProgram.Solve(graph, traffic, wanted, avoidsDetours: true) is not { } solved) return null;
        for (var link = 0; link < fromA.Length; link++)
            (fromA[link], fromB[link]) = (solved.SideGigabits[link * 2], solved.SideGigabits[(link * 2) + 1]);
        return new LinkLoads(graph, fromA, fromB, wanted.UnroutedGigabits);
    }
}
