using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What each link carries in each direction, summed over its parallel links.</summary>
public sealed class LinkLoads
{
    private readonly double[] fromA;
    private readonly double[] fromB;

    internal LinkLoads(FabricGraph graph, double[] fromA, double[] fromB, double unroutedGigabits)
    {
        Graph = graph;
        this.fromA = fromA;
        this.fromB = fromB;
        UnroutedGigabits = unroutedGigabits;
        BusiestLink = -1;
        for (var link = 0; link < fromA.Length; link++)
        {
            if (Utilisation(link) <= MaxUtilisation) continue;
            MaxUtilisation = Utilisation(link);
            BusiestLink = link;
        }
    }

    /// <summary>The fabric the loads belong to.</summary>
    public FabricGraph Graph { get; }

    /// <summary>Demand between nodes that are up which finds no path, in Gb/s.</summary>
    public double UnroutedGigabits { get; }

    /// <summary>How full the busiest link is.</summary>
    public Share MaxUtilisation { get; }

    /// <summary>The fullest link, the lowest of those equally full; -1 when nothing flows.</summary>
    public int BusiestLink { get; }

    /// <summary>Load of a link from its end A to its end B, in Gb/s.</summary>
    public double GigabitsFromA(int link) => fromA[link];

    /// <summary>Load of a link from its end B to its end A, in Gb/s.</summary>
    public double GigabitsFromB(int link) => fromB[link];

    /// <summary>How full the busier direction of a link is; 1 is full. A link that is down carries nothing.</summary>
    public Share Utilisation(int link)
    {
        var capacity = Graph.Links[link].Gigabits;
        return capacity > 0 ? Share.From(Math.Max(fromA[link], fromB[link]) / capacity) : Share.From(0);
    }

    /// <summary>The fullest links, fullest first; links equally full in the order of their numbers.</summary>
    public ImmutableArray<int> Busiest(int most) =>
        [.. Enumerable.Range(0, fromA.Length).OrderByDescending(Utilisation).ThenBy(link => link).Take(most)];
}
