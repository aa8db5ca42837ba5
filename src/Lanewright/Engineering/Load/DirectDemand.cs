namespace Lanewright.Engineering.Load;

/// <summary>Demand between two bundles of hosts that are cabled to each other: it takes that cable and meets no switch.</summary>
internal sealed class DirectDemand
{
    private readonly FabricGraph graph;

    /// <summary>Finds the direct links of a graph.</summary>
    /// <param name="graph">The graph.</param>
    /// <param name="gigabitsBySide">Where loads go: two numbers a link, from end A and from end B.</param>
    public DirectDemand(FabricGraph graph, double[] gigabitsBySide)
    {
        this.graph = graph;
        GigabitsBySide = gigabitsBySide;
    }

    private double[] GigabitsBySide { get; }

    /// <summary>Takes what goes over direct links out of a column, and loads the links. Each column is taken once, so that passes may run
    /// side by side.</summary>
    /// <param name="to">The receiving bundle.</param>
    /// <param name="ends">The senders, rising.</param>
    /// <param name="column">What each sends.</param>
    public void Remove(int to, int[] ends, double[] column)
    {
        if (graph.Arcs.DirectLinks.Length == 0) return;
        var here = graph.Arcs.DirectLinks.Where(l => graph.Links[l].A == to || graph.Links[l].B == to);
        foreach (var links in here.GroupBy(l => Other(l, to)))
        {
            var at = Array.BinarySearch(ends, links.Key);
            if (at < 0) continue;
            double all = links.Sum(l => graph.Links[l].Count);
            foreach (var link in links)
                GigabitsBySide[(link * 2) + (graph.Links[link].A == to ? 1 : 0)] += column[at] * (graph.Links[link].Count / all);
            column[at] = 0;
        }
    }

    private int Other(int link, int node) => graph.Links[link].A == node ? graph.Links[link].B : graph.Links[link].A;
}
