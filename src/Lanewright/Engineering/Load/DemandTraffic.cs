using System.Collections.Immutable;
using Lanewright.Model.Demands;

namespace Lanewright.Engineering.Load;

/// <summary>A demand of a plan as a traffic matrix over the nodes of its network.</summary>
internal static class DemandTraffic
{
    /// <summary>The matrix; null when fewer than two hosts of the demand are linked to the network, and for a hose, which is any
    /// matrix.</summary>
    public static TrafficMatrix? Of(FabricMap map, Demand demand)
    {
        var senders = map.Terminals(demand.Senders, demand.Rate);
        var receivers = map.Terminals(demand.Receivers, demand.Rate);
        var hosts = senders.Union(receivers).Sum(t => t.Members);
        if (senders.IsEmpty || receivers.IsEmpty || hosts < 2) return null;
        return demand.Kind switch
        {
            DemandKind.AllToAll => TrafficMatrix.AllToAll(senders),
            DemandKind.Permutation => TrafficMatrix.Shift(senders, hosts / 2),
            DemandKind.Incast => TrafficMatrix.Incast(senders, receivers[0].Node),
            DemandKind.Spread => TrafficMatrix.Spread(senders, PortByPort(map, receivers)),
            _ => null,
        };
    }

    /// <summary>Receivers counted by their ports, where those differ.</summary>
    private static ImmutableArray<Terminal> PortByPort(FabricMap map, ImmutableArray<Terminal> receivers)
    {
        int Ports(Terminal terminal) => map.Network.LinkCount(map.Devices(terminal.Node)[0]);
        var isEven = receivers.Select(Ports).Distinct().Count() == 1;
        return isEven ? receivers : [.. receivers.Select(r => r with { Members = r.Members * Ports(r) })];
    }
}
