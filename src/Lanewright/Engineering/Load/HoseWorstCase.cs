using System.Collections.Immutable;

namespace Lanewright.Engineering.Load;

/// <summary>The worst that any traffic can do to each link when every host keeps to its rate, sending and receiving.</summary>
/// <param name="Links">One entry for each class of links and direction that carries anything, the fullest first.</param>
public sealed record HoseWorstCase(ImmutableArray<LinkWorstCase> Links)
{
    /// <summary>The fullest link of all; null when nothing can flow.</summary>
    public LinkWorstCase? Worst => Links.IsEmpty ? null : Links[0];

    /// <summary>Whether the worst case of every class was solved, so that no bound lies above what was found.</summary>
    public bool IsExact => Links.All(l => l.IsExact);

    /// <summary>Computes the worst case of every class of links. For a fixed split a link's load is linear in the traffic, so the worst
    /// is a transportation problem (with equal bundles: a matching) over the parts of each pair's traffic that cross the link.</summary>
    /// <exception cref="ArgumentException">The rule is the ideal split, which has no fixed shares to take the worst of.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static HoseWorstCase Of(
        FabricGraph graph, ImmutableArray<Terminal> terminals, SplitRule rule, CancellationToken cancel = default) =>
        Of(graph, terminals, ends => new HoseCrossings(graph, terminals, rule).Solve(ends, cancel));

    /// <summary>The same for the fullest link alone: classes that a simple bound shows to be less full are left out.</summary>
    /// <exception cref="ArgumentException">The rule is the ideal split, which has no fixed shares to take the worst of.</exception>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static HoseWorstCase OfFullest(
        FabricGraph graph, ImmutableArray<Terminal> terminals, SplitRule rule, CancellationToken cancel = default) =>
        Of(graph, terminals, ends => new HoseCrossings(graph, terminals, rule).SolveFullest(ends, cancel));

    private static HoseWorstCase Of(
        FabricGraph graph, ImmutableArray<Terminal> terminals, Func<HoseEnds, IEnumerable<LinkWorstCase?>> solve)
    {
        var ends = HoseEnds.Of(graph, terminals);
        var direct = Enumerable.Range(0, graph.Arcs.DirectLinks.Length * 2)
            .Select(i => HoseProblem.Direct(graph, ends, graph.Arcs.DirectLinks[i / 2], i % 2));
        return new HoseWorstCase([.. solve(ends).Concat(direct)
            .OfType<LinkWorstCase>()
            .OrderByDescending(l => l.Utilisation)
            .ThenBy(l => l.Link)
            .ThenByDescending(l => l.FromA)]);
    }
}
