using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Loads of a whole fabric that divides per hop, kept destination by destination, so that the loss of links between switches is
/// worked out from what changes: where a switch keeps other next hops, only what flows on from there; elsewhere that destination
/// anew.</summary>
internal sealed class HopLoads
{
    /// <summary>Destinations times nodes up to which flows are kept.</summary>
    private const long MostKept = 8_000_000;

    /// <summary>Two links are equally full within this: sums in another order differ in the last places.</summary>
    private const double AsFull = 1 + 1e-12;

    private readonly FabricGraph graph;
    private readonly Destination[] destinations;
    private readonly HopTree[] trees;
    private readonly LinkLoads loads;

    private HopLoads(FabricGraph graph, TrafficMatrix traffic, Destination[] destinations)
    {
        this.graph = graph;
        this.destinations = destinations;
        loads = LoadSolver.OnShortestPaths(graph, traffic, SplitRule.PerHop);
        trees = new HopTree[destinations.Length];
        var demand = new FabricTraffic(graph, traffic);
        Parallel.For(0, trees.Length, i => trees[i] = HopTree.Of(graph.Arcs, destinations[i], SentTo(demand, destinations[i])));
    }

    /// <summary>Keeps the flows of a whole fabric; null where there are too many.</summary>
    public static HopLoads? Of(FabricGraph graph, TrafficMatrix traffic)
    {
        var demand = new FabricTraffic(graph, traffic);
        var destinations = Destination.Of(graph.Arcs, demand.Ends.Where(demand.Reaches));
        return (long)destinations.Length * graph.Nodes.Length > MostKept ? null : new HopLoads(graph, traffic, destinations);
    }

    /// <summary>Whether an outage takes down nothing but links between switches.</summary>
    public bool Knows(Outage outage) =>
        outage.Nodes.IsEmpty && outage.Members.IsEmpty && outage.Links.All(l => graph.BundleOf(l.Link) < 0);

    /// <summary>What an outage of links between switches does; null where it parts the fabric, or leaves demand without a path.</summary>
    public OutageEffect? After(Outage outage)
    {
        var hurt = new HopDamage(graph, outage);
        if (!hurt.StaysJoined()) return null;
        var changed = new double[graph.Links.Length * 2];
        for (var i = 0; i < trees.Length; i++)
            if (!trees[i].Change(graph.Arcs, destinations[i], hurt, changed)) return null;
        var (fullest, at) = (0.0, -1);
        for (var link = 0; link < graph.Links.Length; link++)
        {
            var capacity = graph.Links[link].Rate.Gigabits * (graph.Links[link].Count - hurt.LostOf(link));
            if (capacity <= 0) continue;
            var full = Math.Max(loads.GigabitsFromA(link) + changed[link * 2], loads.GigabitsFromB(link) + changed[(link * 2) + 1])
                / capacity;
            if (full > fullest * AsFull) (fullest, at) = (full, link);
        }
        return new OutageEffect(Share.From(fullest), at, 0, 0, loads.UnroutedGigabits, loads.UnroutedGigabits);
    }

    private double[] SentTo(FabricTraffic demand, Destination destination)
    {
        var sent = new double[graph.Nodes.Length];
        var (column, scratch) = (new double[demand.Ends.Length], new double[graph.OriginCount]);
        var direct = graph.Arcs.DirectLinks.Length == 0 ? null : new DirectDemand(graph, new double[graph.Links.Length * 2]);
        foreach (var terminal in destination.Terminals)
        {
            demand.Column(terminal, column, scratch);
            direct?.Remove(terminal, demand.Ends, column);
            for (var i = 0; i < column.Length; i++) sent[demand.Ends[i]] += column[i];
        }
        return sent;
    }
}
