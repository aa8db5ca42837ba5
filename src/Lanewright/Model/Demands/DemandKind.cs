namespace Lanewright.Model.Demands;

/// <summary>Who sends to whom.</summary>
public enum DemandKind
{
    /// <summary>Each host of one side sends evenly over the ports of the other side.</summary>
    Spread,

    /// <summary>Each host sends evenly to all others.</summary>
    AllToAll,

    /// <summary>Each host sends everything to one other host, the one half of all hosts further on.</summary>
    Permutation,

    /// <summary>Many hosts send to one.</summary>
    Incast,

    /// <summary>Any traffic that no host's rate forbids: the worst of it counts.</summary>
    Hose,
}
