namespace Lanewright.Engineering.Load;

/// <summary>What flows towards one destination: how far every node is, and what it passes on.</summary>
internal sealed class HopTree
{
    private readonly int[] distance;
    private readonly double[] flow;
    private readonly double[] sent;

    private HopTree(int[] distance, double[] flow, double[] sent)
    {
        this.distance = distance;
        this.flow = flow;
        this.sent = sent;
    }

    /// <summary>Finds it.</summary>
    /// <param name="arcs">The whole fabric.</param>
    /// <param name="destination">Where everything goes.</param>
    /// <param name="sent">What each node sends there, in Gb/s.</param>
    public static HopTree Of(FabricArcs arcs, Destination destination, double[] sent) => Of(arcs, destination, sent, null);

    /// <summary>Adds what an outage changes on every directed link, in Gb/s.</summary>
    /// <returns>Whether all demand still has a path; where it has not, nothing that was added is of use.</returns>
    public bool Change(FabricArcs arcs, Destination destination, HopDamage hurt, double[] changed)
    {
        List<int>? tails = null;
        foreach (var (from, to) in hurt.Arcs)
        {
            if (flow[from] <= 0 || distance[to] != distance[from] - 1 || tails?.Contains(from) == true) continue;
            if (HopsLeft(arcs, from, hurt) == 0) return Anew(arcs, destination, hurt, changed);
            (tails ??= []).Add(from);
        }
        if (tails is not null) Ripple(arcs, destination, hurt, tails, changed);
        return true;
    }

    private static HopTree Of(FabricArcs arcs, Destination destination, double[] sent, HopDamage? hurt)
    {
        var distance = new int[arcs.NodeCount];
        Array.Fill(distance, int.MaxValue);
        var order = new List<int>(arcs.NodeCount);
        for (var arc = destination.Arcs.Start.Value; arc < destination.Arcs.End.Value; arc++)
        {
            if (distance[arcs.Target[arc]] == 1) continue;
            distance[arcs.Target[arc]] = 1;
            order.Add(arcs.Target[arc]);
        }
        for (var at = 0; at < order.Count; at++)
        {
            var node = order[at];
            if (arcs.IsTerminal[node]) continue;
            for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++)
            {
                if (distance[arcs.Target[arc]] != int.MaxValue || (hurt is not null && hurt.Left(arc) == 0)) continue;
                distance[arcs.Target[arc]] = distance[node] + 1;
                order.Add(arcs.Target[arc]);
            }
        }
        var flow = new double[arcs.NodeCount];
        for (var node = 0; node < sent.Length; node++)
            if (distance[node] != int.MaxValue) flow[node] = sent[node];
        var tree = new HopTree(distance, flow, sent);
        for (var at = order.Count - 1; at >= 0; at--) tree.PassOn(arcs, order[at], hurt);
        return tree;
    }

    /// <summary>Divides what a node has over its next hops.</summary>
    private void PassOn(FabricArcs arcs, int node, HopDamage? hurt)
    {
        if (flow[node] <= 0 || distance[node] == 1) return;
        var each = flow[node] / HopsLeft(arcs, node, hurt);
        for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++)
            if (IsHop(arcs, node, arc)) flow[arcs.Target[arc]] += each * Left(arcs, arc, hurt);
    }

    private bool IsHop(FabricArcs arcs, int node, int arc) =>
        distance[arcs.Target[arc]] == distance[node] - 1 && !arcs.IsTerminal[arcs.Target[arc]];

    private static double Left(FabricArcs arcs, int arc, HopDamage? hurt) => hurt?.Left(arc) ?? arcs.Count[arc];

    private double HopsLeft(FabricArcs arcs, int node, HopDamage? hurt)
    {
        var hops = 0.0;
        for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++)
            if (IsHop(arcs, node, arc)) hops += Left(arcs, arc, hurt);
        return hops;
    }

    /// <summary>Where every switch keeps a next hop, distances stay, and only what flows on from the hurt ones changes.</summary>
    private void Ripple(FabricArcs arcs, Destination destination, HopDamage hurt, List<int> tails, double[] changed)
    {
        var more = new Dictionary<int, double>();
        var levels = new SortedDictionary<int, List<int>>();
        void Add(int node, double gigabits)
        {
            if (more.TryGetValue(node, out var before)) more[node] = before + gigabits;
            else
            {
                more[node] = gigabits;
                if (!levels.TryGetValue(-distance[node], out var level)) levels[-distance[node]] = level = [];
                level.Add(node);
            }
        }

        foreach (var tail in tails) Add(tail, 0);
        while (levels.Count > 0)
        {
            var level = levels.First();
            levels.Remove(level.Key);
            foreach (var node in level.Value)
            {
                if (distance[node] == 1)
                {
                    Arrive(arcs, destination, node, more[node], changed);
                    continue;
                }
                var (before, after) = (flow[node] / HopsLeft(arcs, node, null), (flow[node] + more[node]) / HopsLeft(arcs, node, hurt));
                for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++)
                {
                    if (!IsHop(arcs, node, arc)) continue;
                    var part = (after * hurt.Left(arc)) - (before * arcs.Count[arc]);
                    if (part == 0) continue;
                    changed[arcs.Side[arc]] += part;
                    Add(arcs.Target[arc], part);
                }
            }
        }
    }

    /// <summary>A bundle with one link takes the same as before; one with several takes it where it arrives now.</summary>
    private static void Arrive(FabricArcs arcs, Destination destination, int node, double gigabits, double[] changed)
    {
        if (destination.HasOneLink) return;
        for (var arc = destination.Arcs.Start.Value; arc < destination.Arcs.End.Value; arc++)
        {
            if (arcs.Target[arc] != node) continue;
            changed[arcs.Side[arcs.Reverse[arc]]] += gigabits * arcs.Count[arc] / destination.CountTo(node, arcs);
        }
    }

    /// <summary>Distances change: the destination is worked out anew. False where something finds no path any more.</summary>
    private bool Anew(FabricArcs arcs, Destination destination, HopDamage hurt, double[] changed)
    {
        var now = Of(arcs, destination, sent, hurt);
        for (var node = 0; node < sent.Length; node++)
            if (sent[node] > 0 && now.distance[node] == int.MaxValue && distance[node] != int.MaxValue) return false;
        AddLoads(arcs, destination, null, changed, -1);
        now.AddLoads(arcs, destination, hurt, changed, 1);
        return true;
    }

    private void AddLoads(FabricArcs arcs, Destination destination, HopDamage? hurt, double[] changed, int sign)
    {
        for (var node = 0; node < flow.Length; node++)
        {
            if (flow[node] <= 0) continue;
            if (distance[node] == 1)
            {
                Arrive(arcs, destination, node, sign * flow[node], changed);
                continue;
            }
            var each = sign * flow[node] / HopsLeft(arcs, node, hurt);
            for (var arc = arcs.First[node]; arc < arcs.First[node + 1]; arc++)
                if (IsHop(arcs, node, arc)) changed[arcs.Side[arc]] += each * Left(arcs, arc, hurt);
        }
    }
}
