using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>The worst that any traffic can do under the ideal split, from both sides. How full the fullest link is then grows convexly with
/// the traffic, so that its most is at a corner of what hosts may send and no one program finds it. From below: matrices that are worst
/// under the fixed splits, made worse by turns (the prices of links that prove the best split of a matrix, then the matrix that pays most
/// at those prices), and all that the hosts of one switch send. From above: no traffic fills a link more under the ideal split than under a
/// fixed one.</summary>
public static class IdealWorstCase
{
    /// <summary>So many matrices of each fixed split are begun with.</summary>
    private const int MostTried = 3;

    /// <summary>So often a matrix is made worse at most.</summary>
    private const int MostTurns = 10;

    private const double Rounding = 1e-9;

    private static readonly ImmutableArray<SplitRule> Fixed = [SplitRule.PerHop, SplitRule.PathWeighted];

    /// <summary>The fullest link with the matrix that fills it so; null when nothing can flow.</summary>
    /// <param name="graph">The fabric.</param>
    /// <param name="terminals">The hosts, and what each may send and receive.</param>
    /// <param name="cancel">Breaks it off.</param>
    /// <exception cref="OperationCanceledException">It was broken off.</exception>
    public static HoseWorstCase? Of(FabricGraph graph, ImmutableArray<Terminal> terminals, CancellationToken cancel)
    {
        var cases = Fixed.Select(rule => HoseWorstCase.OfFullest(graph, terminals, rule, cancel)).ToList();
        if (cases.Any(c => c.Worst is null)) return cases[0];
        var atMost = cases.Min(c => c.Links.Max(l => l.AtMost.Value));
        var ends = HoseEnds.Of(graph, terminals);
        var found = OneSwitch(graph, ends).ToList();
        var farthest = Dearest(graph, ends, new FlowDistances(graph), Alike(graph));
        foreach (var matrix in cases.SelectMany(c => c.Links.Take(MostTried)).Select(l => l.Matrix).Prepend(farthest))
        {
            cancel.ThrowIfCancellationRequested();
            if (found.Any(f => f.Utilisation.Value >= atMost * (1 - Rounding))) break;
            found.AddRange(ByTurns(graph, ends, matrix));
        }
        if (found.MaxBy(f => f.Utilisation) is not { } worst) return null;
        return new HoseWorstCase([worst with { AtMost = Share.From(Math.Max(worst.Utilisation.Value, atMost)) }]);
    }

    /// <summary>A matrix and those that are worse than it, each with its best split; none where the program is too large.</summary>
    private static IEnumerable<LinkWorstCase> ByTurns(FabricGraph graph, HoseEnds ends, ImmutableArray<Flow> matrix)
    {
        var (sides, distances, before) = (new FlowSides(graph), new FlowDistances(graph), 0.0);
        for (var turn = 0; turn < MostTurns && !matrix.IsEmpty; turn++)
        {
            var traffic = TrafficMatrix.Of(matrix);
            var wanted = FlowDemand.Of(graph, new FabricTraffic(graph, traffic));
            if (wanted.Sources.Length == 0) yield break;
            if (FlowProgram.Solve(graph, traffic, wanted, avoidsDetours: false) is not { } solved) yield break;
            var side = sides.All.MaxBy(s => solved.SideGigabits[s] / graph.Links[s / 2].Gigabits);
            var full = solved.SideGigabits[side] / graph.Links[side / 2].Gigabits;
            if (full <= before * (1 + Rounding)) yield break;
            before = full;
            yield return new LinkWorstCase(side / 2, side % 2 == 0, 1, Share.From(full), Share.From(full), matrix);
            matrix = Dearest(graph, ends, distances, solved.SidePrices);
        }
    }

    /// <summary>Links between switches priced alike.</summary>
    private static double[] Alike(FabricGraph graph)
    {
        var prices = new double[graph.Links.Length * 2];
        for (var side = 0; side < prices.Length; side++)
        {
            var link = graph.Links[side / 2];
            prices[side] = graph.Nodes[link.A].IsTerminal || graph.Nodes[link.B].IsTerminal ? 0 : 1;
        }
        return prices;
    }

    /// <summary>The traffic that pays most when each flow takes its cheapest way.</summary>
    private static ImmutableArray<Flow> Dearest(FabricGraph graph, HoseEnds ends, FlowDistances distances, double[] prices)
    {
        var nodes = ends.Nodes;
        var worth = new double[nodes.Length, nodes.Length];
        for (var to = 0; to < nodes.Length; to++)
        {
            var priced = distances.To(nodes[to], prices);
            for (var from = 0; from < nodes.Length; from++)
                if (ends.MaySend(nodes[from], nodes[to]) && double.IsFinite(priced[nodes[from]])) worth[from, to] = priced[nodes[from]];
        }
        long[] rates = [.. nodes.Select(ends.RateOf)];
        var most = worth.Cast<double>().Max();
        if (most <= 0) return [];
        for (var i = 0; i < nodes.Length; i++)
            for (var j = 0; j < nodes.Length; j++) worth[i, j] /= most;
        var sent = Transportation.Of(rates, rates, worth).Sent;
        return
        [
            .. from f in Enumerable.Range(0, nodes.Length)
               from t in Enumerable.Range(0, nodes.Length)
               where sent[f, t] > 0 && worth[f, t] > 0
               select new Flow(nodes[f], nodes[t], BitRate.FromBitsPerSecond(sent[f, t])),
        ];
    }

    /// <summary>All that the hosts of one switch send to others: whatever the split, its links up carry it between them, so that one is at
    /// least as full as their mean.</summary>
    private static IEnumerable<LinkWorstCase> OneSwitch(FabricGraph graph, HoseEnds ends)
    {
        var sides = new FlowSides(graph);
        var distances = new FlowDistances(graph);
        var reached = ends.Nodes.ToDictionary(n => n, n => distances.To(n, null));
        for (var node = 0; node < graph.Nodes.Length; node++)
        {
            if (graph.Nodes[node].IsTerminal || graph.IsDown(node)) continue;
            var leaving = sides.Leaving(node).ToList();
            int Far(int side) => sides.From(side ^ 1);
            var inside = leaving.Select(Far).Where(n => graph.Nodes[n].IsTerminal && ends.Nodes.Contains(n)
                && sides.Leaving(n).All(s => Far(s) == node)).Distinct().ToList();
            var up = leaving.Where(s => !graph.Nodes[Far(s)].IsTerminal).ToList();
            if (inside.Count == 0 || up.Count == 0) continue;
            // Who hangs on the switch as well is reached without a link up, and who has no way to it not at all.
            var others = ends.Nodes.Except(inside)
                .Where(n => leaving.All(s => Far(s) != n) && double.IsFinite(reached[n][node]))
                .ToList();
            var matrix = Out(inside, others, ends);
            var full = Share.From(matrix.Sum(f => f.Rate.Gigabits) / up.Sum(s => graph.Links[s / 2].Gigabits));
            yield return new LinkWorstCase(up[0] / 2, up[0] % 2 == 0, 1, full, full, matrix);
        }
    }

    private static ImmutableArray<Flow> Out(List<int> from, List<int> to, HoseEnds ends)
    {
        var taking = to.ToDictionary(n => n, ends.RateOf);
        var matrix = ImmutableArray.CreateBuilder<Flow>();
        foreach (var sender in from)
        {
            var left = ends.RateOf(sender);
            foreach (var receiver in to.Where(t => taking[t] > 0 && ends.MaySend(sender, t)))
            {
                var amount = Math.Min(left, taking[receiver]);
                if (amount == 0) break;
                (left, taking[receiver]) = (left - amount, taking[receiver] - amount);
                matrix.Add(new Flow(sender, receiver, BitRate.FromBitsPerSecond(amount)));
            }
        }
        return matrix.ToImmutable();
    }
}
