using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>The worst that any traffic can do to each link when every host keeps to its rate, sending and receiving.</summary>
/// <param name="Links">One entry for each class of links and direction that carries anything, the fullest first.</param>
public sealed record HoseWorstCase(ImmutableArray<LinkWorstCase> Links)
{
    /// <summary>Shares of the work that are joined one after the other, so that nothing depends on how many cores there are.</summary>
    private const int Shares = 16;

    /// <summary>The fullest link of all; null when nothing can flow.</summary>
    public LinkWorstCase? Worst => Links.IsEmpty ? null : Links[0];

    /// <summary>Whether the worst case of every class was solved, so that no bound lies above what was found.</summary>
    public bool IsExact => Links.All(l => l.IsExact);

    /// <summary>Computes the worst case of every class of links. For a fixed split a link's load is linear in the traffic, so the worst
    /// is a transportation problem (with equal bundles: a matching) over the parts of each pair's traffic that cross the link.</summary>
    /// <exception cref="ArgumentException">The rule is the ideal split, which has no fixed shares to take the worst of.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static HoseWorstCase Of(
        FabricGraph graph, ImmutableArray<Terminal> terminals, SplitRule rule, CancellationToken cancel = default)
    {
        if (rule == SplitRule.Ideal) throw new ArgumentException("the ideal split has no fixed shares", nameof(rule));
        var ends = HoseEnds.Of(graph, terminals);
        var orbits = SymmetryClasses.Of(graph, TrafficMatrix.AllToAll(terminals)).Orbits;
        var arcs = graph.Arcs;
        var classes = Enumerable.Range(0, arcs.Target.Length)
            .GroupBy(arc => orbits.OfSide(arcs.Side[arc]))
            .Select(c => (Arc: c.MinBy(arc => arcs.Side[arc]), Size: c.Count()))
            .ToArray();
        var crossings = Crossings(graph, [.. classes.Select(c => c.Arc)], ends, rule);
        var found = new LinkWorstCase?[classes.Length];
        cancel.ThrowIfCancellationRequested();
        Parallel.For(0, classes.Length, new ParallelOptions { CancellationToken = cancel }, i =>
            found[i] = HoseProblem.Solve(graph, ends, crossings[i], arcs.Side[classes[i].Arc], classes[i].Size));
        var direct = Enumerable.Range(0, arcs.DirectLinks.Length * 2)
            .Select(i => HoseProblem.Direct(graph, ends, arcs.DirectLinks[i / 2], i % 2));
        return new HoseWorstCase([.. found.Concat(direct)
            .OfType<LinkWorstCase>()
            .OrderByDescending(l => l.Utilisation)
            .ThenBy(l => l.Link)
            .ThenByDescending(l => l.FromA)]);
    }

    /// <summary>The traffic that crosses each arc, between bundles that take part and are not cabled to each other.</summary>
    private static List<Crossing>[] Crossings(FabricGraph graph, int[] wanted, HoseEnds ends, SplitRule rule)
    {
        var destinations = Destination.Of(graph.Arcs, ends.Nodes);
        var blocks = destinations.Chunk(PathBlock.Lanes).ToArray();
        var parts = new List<Crossing>[Math.Clamp(blocks.Length, 1, Shares)][];
        Parallel.For(0, parts.Length, share =>
        {
            var pass = new CrossingPass(graph, rule);
            var lists = wanted.Select(_ => new List<Crossing>()).ToArray();
            for (var block = share * blocks.Length / parts.Length; block < (share + 1) * blocks.Length / parts.Length; block++)
            {
                pass.Search(blocks[block]);
                for (var i = 0; i < wanted.Length; i++) pass.List(wanted[i], blocks[block], lists[i]);
            }
            parts[share] = lists;
        });
        return [.. Enumerable.Range(0, wanted.Length)
            .Select(i => parts.SelectMany(p => p[i]).Where(c => ends.MaySend(c.From, c.To)).ToList())];
    }
}
