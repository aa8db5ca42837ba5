namespace Lanewright.Engineering.Load;

/// <summary>The split that keeps the busiest link as empty as can be: a linear program over sources and links.</summary>
public static class IdealSplit
{
    /// <summary>Variables, after what is alike by symmetry was merged, beyond which the program is not tried.</summary>
    public static int MostVariables => 0;

    /// <summary>Loads under the ideal split; null when the program would be too large to solve in reasonable time.</summary>
    public static LinkLoads? Of(FabricGraph graph, TrafficMatrix traffic) => throw new NotSupportedException();
}
