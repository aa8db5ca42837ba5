using System.Collections.Immutable;
using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Which part of the traffic of every two bundles crosses one link of each class. It does not depend on how much bundles send, so
/// that one pass serves many questions.</summary>
internal sealed class HoseCrossings
{
    /// <summary>Shares of the work that are joined one after the other, so that nothing depends on how many cores there are.</summary>
    private const int Shares = 16;

    /// <summary>Problems solved side by side before it is looked whether the next ones can matter.</summary>
    private const int AtOnce = 8;

    private readonly FabricGraph graph;
    private readonly (int Arc, int Size)[] classes;
    private readonly List<Crossing>[] crossings;

    /// <summary>Finds them.</summary>
    /// <exception cref="ArgumentException">The rule is the ideal split, which has no fixed shares to take the worst of.</exception>
    public HoseCrossings(FabricGraph graph, ImmutableArray<Terminal> terminals, SplitRule rule)
    {
        if (rule == SplitRule.Ideal) throw new ArgumentException("the ideal split has no fixed shares", nameof(rule));
        this.graph = graph;
        Orbits = SymmetryClasses.Of(graph, TrafficMatrix.AllToAll(terminals)).Orbits;
        classes =
        [
            .. Enumerable.Range(0, graph.Arcs.Target.Length)
                .GroupBy(arc => Orbits.OfSide(graph.Arcs.Side[arc]))
                .Select(c => (Arc: c.MinBy(arc => graph.Arcs.Side[arc]), Size: c.Count())),
        ];
        crossings = Find(HoseEnds.Of(graph, terminals), rule);
    }

    /// <summary>What is alike.</summary>
    public Orbits Orbits { get; }

    /// <summary>The worst case of every class; null for one that nothing crosses.</summary>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public IEnumerable<LinkWorstCase?> Solve(HoseEnds ends, CancellationToken cancel = default)
    {
        var found = new LinkWorstCase?[classes.Length];
        cancel.ThrowIfCancellationRequested();
        Parallel.For(0, classes.Length, new ParallelOptions { CancellationToken = cancel }, i => found[i] = Solve(ends, i));
        return found;
    }

    /// <summary>The worst case of the classes that may hold the fullest link.</summary>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public IEnumerable<LinkWorstCase?> SolveFullest(HoseEnds ends, CancellationToken cancel = default)
    {
        var order = Enumerable.Range(0, classes.Length)
            .Select(i => (Class: i, Bound: Bound(ends, i)))
            .Where(c => c.Bound > 0)
            .OrderByDescending(c => c.Bound).ThenBy(c => c.Class)
            .ToArray();
        var found = new List<LinkWorstCase?>();
        foreach (var next in order.Chunk(AtOnce))
        {
            // A class whose bound is what was found may be the fullest link by its number.
            if (found.Count > 0 && next[0].Bound < found.Max(f => f?.Utilisation.Value ?? 0)) break;
            cancel.ThrowIfCancellationRequested();
            var solved = new LinkWorstCase?[next.Length];
            Parallel.For(0, next.Length, i => solved[i] = Solve(ends, next[i].Class));
            found.AddRange(solved);
        }
        return found;
    }

    /// <summary>How full the fullest link is at most, by what senders alone or receivers alone could make of it, and the bundles that
    /// would do it.</summary>
    public (double AtMost, IEnumerable<int> Senders, IEnumerable<int> Receivers) FullestBound(HoseEnds ends)
    {
        var bounds = Enumerable.Range(0, classes.Length).Select(i => Bound(ends, i)).ToArray();
        if (bounds.Length == 0) return (0, [], []);
        var most = Array.IndexOf(bounds, bounds.Max());
        return (bounds[most], crossings[most].Select(c => c.From).Distinct(), crossings[most].Select(c => c.To).Distinct());
    }

    private LinkWorstCase? Solve(HoseEnds ends, int index) =>
        HoseProblem.Solve(graph, ends, crossings[index], graph.Arcs.Side[classes[index].Arc], classes[index].Size);

    private double Bound(HoseEnds ends, int index) =>
        HoseProblem.AtMost(ends, crossings[index]) / graph.Links[graph.Arcs.Side[classes[index].Arc] / 2].Gigabits;

    /// <summary>The traffic that crosses one arc of each class, between bundles that take part and are not cabled to each other.</summary>
    private List<Crossing>[] Find(HoseEnds ends, SplitRule rule)
    {
        var blocks = Destination.Of(graph.Arcs, ends.Nodes).Chunk(PathBlock.Lanes).ToArray();
        var parts = new List<Crossing>[Math.Clamp(blocks.Length, 1, Shares)][];
        Parallel.For(0, parts.Length, share =>
        {
            var pass = new CrossingPass(graph, rule);
            var lists = classes.Select(_ => new List<Crossing>()).ToArray();
            for (var block = share * blocks.Length / parts.Length; block < (share + 1) * blocks.Length / parts.Length; block++)
            {
                pass.Search(blocks[block]);
                for (var i = 0; i < classes.Length; i++) pass.List(classes[i].Arc, blocks[block], lists[i]);
            }
            parts[share] = lists;
        });
        return [.. Enumerable.Range(0, classes.Length)
            .Select(i => parts.SelectMany(p => p[i]).Where(c => ends.MaySend(c.From, c.To)).ToList())];
    }
}
