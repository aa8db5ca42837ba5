using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What becomes of few large flows that a leaf deals out over its uplinks by a hash.</summary>
/// <param name="Device">The leaf whose flows are most for its uplinks.</param>
/// <param name="Flows">Large flows that it passes up at a time.</param>
/// <param name="Uplinks">Its equal-cost uplinks.</param>
/// <param name="FlowRate">Rate of one flow.</param>
/// <param name="LinkRate">Rate of one uplink.</param>
/// <param name="Hash">What the hash does with them.</param>
public sealed record FlowCollisions(
    int Device, int Flows, int Uplinks, BitRate FlowRate, BitRate LinkRate, HashCollisions Hash)
{
    /// <summary>With more flows than this a hash is as good as even, and the exact figure is not worth its work.</summary>
    public const int MostFlows = HashCollisions.MostFlows;

    /// <summary>How full the busiest uplink is expected to be.</summary>
    public Share BusiestUtilisation => Share.From(Hash.BusiestFlows * FlowRate.Gigabits / LinkRate.Gigabits);

    /// <summary>The collisions of a demand that states its flows; null for others, and where no leaf has two uplinks.</summary>
    public static FlowCollisions? Of(DemandStudy study)
    {
        var network = study.Fabric.Map.Network;
        if (study.Demand.Flows is not { } each) return null;
        if (study.Loads is null) return null;
        var flowsOf = new SortedDictionary<int, double>();
        foreach (var host in study.Demand.Senders)
        {
            var links = network.UpLinks(host);
            foreach (var link in links)
            {
                var leaf = network.FarDevice(link, host);
                flowsOf[leaf] = flowsOf.GetValueOrDefault(leaf) + (each / (double)links.Length);
            }
        }
        var crowded = flowsOf.Where(f => network.UpLinks(f.Key).Length > 1)
            .Select(f => (
                Leaf: f.Key, Flows: (int)Math.Round(f.Value * ShareThatLeaves(study, f.Key)), Uplinks: network.UpLinks(f.Key).Length))
            .Where(f => f.Flows is > 0 and <= MostFlows)
            .OrderByDescending(f => f.Flows / (double)f.Uplinks).ThenBy(f => f.Leaf)
            .ToList();
        if (crowded.Count == 0) return null;
        var (device, flows, uplinks) = crowded[0];
        var sender = study.Demand.Senders.First(h => network.UpLinks(h).Length > 0);
        var rate = (study.Demand.Rate ?? study.Fabric.Map.LineRate(sender)).BitsPerSecond / each;
        return new FlowCollisions(device, flows, uplinks, BitRate.FromBitsPerSecond(rate),
            network.Statement(network.UpLinks(device)[0]).Rate, HashCollisions.Of(flows, uplinks));
    }

    /// <summary>The part of what a leaf takes from its hosts that it passes up: flows between its own hosts meet no other.</summary>
    private static double ShareThatLeaves(DemandStudy study, int leaf)
    {
        var (map, node) = (study.Fabric.Map, study.Fabric.Map.NodeOf(leaf));
        var (taken, passed) = (0.0, 0.0);
        for (var link = 0; link < map.Graph.Links.Length; link++)
        {
            var ends = map.Graph.Links[link];
            if (ends.A != node && ends.B != node) continue;
            var far = ends.A == node ? ends.B : ends.A;
            if (map.Graph.Nodes[far].IsTerminal) taken += study.GigabitsFrom(link, far);
            else if (map.Tier(far) > map.Tier(node)) passed += study.GigabitsFrom(link, node);
        }
        return taken > 0 ? Math.Min(1, passed / taken) : 0;
    }
}
