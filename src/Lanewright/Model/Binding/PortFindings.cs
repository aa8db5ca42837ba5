using Lanewright.Findings;

namespace Lanewright.Model.Binding;

/// <summary>What can be wrong with the ports a plan takes.</summary>
public static class PortFindings
{
    /// <summary>A split that costs the next port, where that port is needed or the port may not be split so.</summary>
    public static FindingKind NeighbourPortLost { get; } = new("LW1307", "NeighbourPortLost", Severity.Error);

    /// <summary>Ports that share one rate asked to run at two.</summary>
    public static FindingKind PortRatesMixed { get; } = new("LW1308", "PortRatesMixed", Severity.Error);

    /// <summary>More logical ports than the silicon has.</summary>
    public static FindingKind PortCeilingExceeded { get; } = new("LW1309", "PortCeilingExceeded", Severity.Error);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [NeighbourPortLost, PortRatesMixed, PortCeilingExceeded];
}
