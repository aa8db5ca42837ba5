namespace Lanewright.Engineering.Load;

/// <summary>Loads of all links under a traffic matrix and a split rule.</summary>
public static class LoadSolver
{
    /// <summary>Loads under any rule. Null when the ideal split is asked for a fabric beyond <see cref="IdealSplit.MostVariables"/>.</summary>
    public static LinkLoads? Of(FabricGraph graph, TrafficMatrix traffic, SplitRule rule) =>
        rule == SplitRule.Ideal ? IdealSplit.Of(graph, traffic) : OnShortestPaths(graph, traffic, rule);

    /// <summary>Loads under a rule that keeps to shortest paths.</summary>
    /// <exception cref="ArgumentException">The rule is the ideal split.</exception>
    public static LinkLoads OnShortestPaths(FabricGraph graph, TrafficMatrix traffic, SplitRule rule) => throw new NotSupportedException();
}
