using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Arcs with twins merged: switches with the same neighbours and the same numbers of links to each carry the same, so one of
/// them can stand for all. Spines of a two-tier fabric are one node then, and so are the cores above one aggregation switch.</summary>
internal sealed class TwinArcs
{
    private readonly FabricArcs whole;
    private readonly int[] standsFor;
    private readonly int[] twins;
    private readonly int[] mergedArc;

    private TwinArcs(FabricArcs whole)
    {
        this.whole = whole;
        standsFor = [.. Enumerable.Range(0, whole.NodeCount)];
        twins = new int[whole.NodeCount];
        Array.Fill(twins, 1);
        mergedArc = new int[whole.Target.Length];
        FindTwins();
        Arcs = Merge();
    }

    /// <summary>The merged arcs. Nodes keep their numbers; a node for which another stands has no arcs. The count of an arc is that of
    /// all links from one of the nodes it starts from.</summary>
    public FabricArcs Arcs { get; }

    /// <summary>Merges the twins of a graph.</summary>
    public static TwinArcs Of(FabricArcs whole) => new(whole);

    /// <summary>Gives each arc of the whole graph its part of what a merged arc carries, and adds it by directed link.</summary>
    public void Spread(double[] mergedGigabits, double[] gigabitsBySide)
    {
        for (var node = 0; node < whole.NodeCount; node++)
        {
            for (var arc = whole.First[node]; arc < whole.First[node + 1]; arc++)
            {
                double parts = twins[standsFor[node]] * twins[standsFor[whole.Target[arc]]];
                gigabitsBySide[whole.Side[arc]] += mergedGigabits[mergedArc[arc]] / parts;
            }
        }
    }

    private void FindTwins()
    {
        var first = new Dictionary<(ulong, int), int>();
        var seenAt = new int[whole.NodeCount];
        var counts = new int[whole.NodeCount];
        for (var node = 0; node < whole.NodeCount; node++)
        {
            var degree = whole.First[node + 1] - whole.First[node];
            if (whole.IsTerminal[node] || degree == 0) continue;
            if (first.TryAdd((HashOf(node), degree), node)) continue;
            var other = first[(HashOf(node), degree)];
            if (!AreTwins(node, other, seenAt, counts)) continue;
            standsFor[node] = other;
            twins[other]++;
        }
    }

    private ulong HashOf(int node)
    {
        var sum = 0ul;
        for (var arc = whole.First[node]; arc < whole.First[node + 1]; arc++)
            sum = unchecked(sum + Mixing.Stir((ulong)whole.Target[arc], (ulong)whole.Count[arc]));
        return sum;
    }

    /// <summary>Whether two switches have the same neighbours by the same counts, each by one link only.</summary>
    private bool AreTwins(int node, int other, int[] seenAt, int[] counts)
    {
        for (var arc = whole.First[node]; arc < whole.First[node + 1]; arc++)
        {
            if (seenAt[whole.Target[arc]] == node + 1) return false;
            (seenAt[whole.Target[arc]], counts[whole.Target[arc]]) = (node + 1, whole.Count[arc]);
        }
        for (var arc = whole.First[other]; arc < whole.First[other + 1]; arc++)
        {
            if (seenAt[whole.Target[arc]] != node + 1 || counts[whole.Target[arc]] != whole.Count[arc]) return false;
            // Met once is met: a second link to the same neighbour finds no mark.
            seenAt[whole.Target[arc]] = 0;
        }
        return true;
    }

    private FabricArcs Merge()
    {
        var kept = new int[whole.Target.Length];
        Array.Fill(kept, -1);
        var first = new int[whole.NodeCount + 1];
        var count = 0;
        for (var node = 0; node < whole.NodeCount; node++)
        {
            for (var arc = whole.First[node]; arc < whole.First[node + 1] && standsFor[node] == node; arc++)
                if (standsFor[whole.Target[arc]] == whole.Target[arc]) kept[arc] = count++;
            first[node + 1] = count;
        }
        var merged = new FabricArcs(whole, first, kept, twins);
        var arcTo = new int[whole.NodeCount];
        for (var node = 0; node < whole.NodeCount; node++)
        {
            var stands = standsFor[node];
            for (var arc = first[stands]; arc < first[stands + 1]; arc++) arcTo[merged.Target[arc]] = arc;
            // Several links to one neighbour that is no twin of another keep an arc each.
            for (var arc = whole.First[node]; arc < whole.First[node + 1]; arc++)
                mergedArc[arc] = kept[arc] >= 0 ? kept[arc] : arcTo[standsFor[whole.Target[arc]]];
        }
        return merged;
    }
}
