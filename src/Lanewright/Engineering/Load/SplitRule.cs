namespace Lanewright.Engineering.Load;

/// <summary>How traffic divides where several shortest ways lead to its destination. The three give different answers once a link is
/// lost.</summary>
public enum SplitRule
{
    /// <summary>At each switch equally over all next-hop links, whatever lies behind them: plain equal-cost forwarding.</summary>
    PerHop,

    /// <summary>In proportion to the number of shortest paths that are left behind each next-hop link: weighted equal-cost
    /// forwarding.</summary>
    PathWeighted,

    /// <summary>However the busiest link is relieved most, shortest way or not: the optimum of a linear program.</summary>
    Ideal,
}
