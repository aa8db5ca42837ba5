using System.Collections.Immutable;

namespace Lanewright.Engineering.Lines.Routes;

/// <summary>Places and the ways between them.</summary>
public sealed class RouteGraph
{
    /// <summary>Routes looked at before the search for a pair gives up.</summary>
    private const int MostRoutes = 20_000;

    private readonly ImmutableArray<ImmutableArray<int>> at;

    /// <summary>Takes the number of places and the ways between them.</summary>
    public RouteGraph(int places, ImmutableArray<RouteEdge> edges)
    {
        Places = places;
        Edges = edges;
        var lists = Enumerable.Range(0, places).Select(_ => ImmutableArray.CreateBuilder<int>()).ToArray();
        for (var e = 0; e < edges.Length; e++)
        {
            lists[edges[e].A].Add(e);
            if (edges[e].B != edges[e].A) lists[edges[e].B].Add(e);
        }
        at = [.. lists.Select(l => l.ToImmutable())];
    }

    /// <summary>How many places there are.</summary>
    public int Places { get; }

    /// <summary>The ways between them.</summary>
    public ImmutableArray<RouteEdge> Edges { get; }

    /// <summary>The cheapest route over edges that are allowed; null when there is none.</summary>
    public Route? Cheapest(int from, int to, Func<int, bool> allowed)
    {
        var (costs, via) = CostsTo(to, allowed);
        if (double.IsPositiveInfinity(costs[from])) return null;
        var edges = ImmutableArray.CreateBuilder<int>();
        for (var here = from; here != to; here = Edges[via[here]].Other(here)) edges.Add(via[here]);
        return new Route(edges.ToImmutable(), costs[from]);
    }

    /// <summary>The cheapest pair of routes that share no edge and no risk. Routes come up in order of cost, each with the cheapest that
    /// shares nothing with it; once twice the cost of a route is no less than the best pair, no better one is left.</summary>
    /// <returns>The pair, or null; and whether the search went to its end, so that null is a proof.</returns>
    public (RoutePair? Pair, bool IsProven) CheapestPair(int from, int to)
    {
        RoutePair? best = null;
        var looked = 0;
        foreach (var first in ByCost(from, to))
        {
            if (best is not null && 2 * first.Cost >= best.Cost) return (best, true);
            if (++looked > MostRoutes) return (best, false);
            var (edges, risks) = (first.Edges.ToHashSet(), first.Edges.SelectMany(e => Edges[e].Risks).ToHashSet());
            var second = Cheapest(from, to, e => !edges.Contains(e) && !Edges[e].Risks.Any(risks.Contains));
            if (second is not null && (best is null || first.Cost + second.Cost < best.Cost)) best = new RoutePair(first, second);
        }
        return (best, true);
    }

    /// <summary>Single edges without which there is no route, and single risks that take the last one with them.</summary>
    public (ImmutableArray<int> Edges, ImmutableArray<int> Risks) Separating(int from, int to)
    {
        ImmutableArray<int> edges = [.. Enumerable.Range(0, Edges.Length).Where(cut => Cheapest(from, to, e => e != cut) is null)];
        var risks = Edges.SelectMany(e => e.Risks).Distinct().Order()
            .Where(risk => Cheapest(from, to, e => !Edges[e].Risks.Contains(risk)) is null);
        return (edges, [.. risks]);
    }

    /// <summary>All routes without a place twice, cheapest first; none at all where there are more than so many.</summary>
    public ImmutableArray<Route> All(int from, int to, int most)
    {
        ImmutableArray<Route> found = [.. ByCost(from, to).Take(most + 1)];
        return found.Length > most ? [] : found;
    }

    /// <summary>Routes without a place twice, cheapest first.</summary>
    private IEnumerable<Route> ByCost(int from, int to)
    {
        var (left, _) = CostsTo(to, _ => true);
        if (double.IsPositiveInfinity(left[from])) yield break;
        var open = new PriorityQueue<Beginning, (double, int)>();
        var made = 0;
        open.Enqueue(new Beginning(from, [], 0, [from]), (left[from], made));
        while (open.TryDequeue(out var begun, out _))
        {
            if (begun.Place == to)
            {
                yield return new Route(begun.Edges, begun.Cost);
                continue;
            }
            foreach (var e in at[begun.Place])
            {
                var next = Edges[e].Other(begun.Place);
                if (begun.Seen.Contains(next) || double.IsPositiveInfinity(left[next])) continue;
                var cost = begun.Cost + Edges[e].Cost;
                open.Enqueue(new Beginning(next, begun.Edges.Add(e), cost, begun.Seen.Add(next)), (cost + left[next], ++made));
            }
        }
    }

    /// <summary>What the way from each place costs, and the edge it begins with. A place is given its edge by one that was settled before
    /// it, so that ways end even where edges cost nothing.</summary>
    private (double[] Costs, int[] Via) CostsTo(int to, Func<int, bool> allowed)
    {
        var (costs, via) = (new double[Places], new int[Places]);
        Array.Fill(costs, double.PositiveInfinity);
        costs[to] = 0;
        var open = new PriorityQueue<int, (double, int)>();
        open.Enqueue(to, (0, to));
        while (open.TryDequeue(out var place, out var key))
        {
            if (key.Item1 > costs[place]) continue;
            foreach (var e in at[place])
            {
                var next = Edges[e].Other(place);
                if (!allowed(e) || key.Item1 + Edges[e].Cost >= costs[next]) continue;
                (costs[next], via[next]) = (key.Item1 + Edges[e].Cost, e);
                open.Enqueue(next, (costs[next], next));
            }
        }
        return (costs, via);
    }

    private sealed record Beginning(int Place, ImmutableArray<int> Edges, double Cost, ImmutableHashSet<int> Seen);
}
