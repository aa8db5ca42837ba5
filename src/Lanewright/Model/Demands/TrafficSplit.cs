namespace Lanewright.Model.Demands;

/// <summary>How switches split traffic over several ways.</summary>
public enum TrafficSplit
{
    /// <summary>Each switch splits equally over its next links on the shortest ways.</summary>
    PerHop,

    /// <summary>In proportion to the number of shortest paths behind each link.</summary>
    PathWeighted,

    /// <summary>As well as can be: whatever split loads the fullest link least.</summary>
    Ideal,
}
