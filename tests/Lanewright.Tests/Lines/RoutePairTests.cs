using System.Collections.Immutable;
using System.Globalization;
using Lanewright.Engineering.Lines.Routes;

namespace Lanewright.Tests.Lines;

/// <summary>Pairs of routes against an independent library and against all pairs there are.</summary>
public sealed class RoutePairTests
{
    // Source: networkx, minimum-cost flow of two units, each edge once.
    [Fact]
    public void Pairs_CostWhatAFlowOfTwoUnitsCosts()
    {
        var random = new Random(20261126);
        var graphs = Enumerable.Range(0, 60).Select(_ => Draw(random, risks: 0)).ToList();
        var script = "import networkx as nx, sys\nfor line in sys.stdin:\n  n,*e=line.split()\n  g=nx.DiGraph()\n"
            + "  g.add_nodes_from(range(int(n)))\n  g.nodes[0]['demand']=-2\n  g.nodes[int(n)-1]['demand']=2\n"
            + "  for k,x in enumerate(e):\n    a,b,c=map(int,x.split(','))\n"
            + "    for i,(u,v) in enumerate(((a,b),(b,a))):\n"
            + "      m='m%d_%d'%(k,i)\n      g.add_edge(u,m,capacity=1,weight=c)\n      g.add_edge(m,v,capacity=1,weight=0)\n"
            + "  try: print(nx.min_cost_flow_cost(g))\n  except nx.NetworkXUnfeasible: print('none')\n";
        var expected = Python.Ask(script, graphs.Select(g => g.Places.ToString(CultureInfo.InvariantCulture) + " " + string.Join(' ',
            g.Edges.Select(e => string.Create(CultureInfo.InvariantCulture, $"{e.A},{e.B},{e.Cost}")))));
        Assert.Equal(graphs.Count, expected.Count);
        for (var i = 0; i < graphs.Count; i++)
        {
            var (pair, isProven) = graphs[i].CheapestPair(0, graphs[i].Places - 1);
            Assert.True(isProven);
            Assert.Equal(expected[i], pair is null ? "none" : pair.Cost.ToString(CultureInfo.InvariantCulture));
        }
        Assert.Contains("none", expected);
        Assert.True(expected.Count(e => e != "none") > 20);
    }

    [Fact]
    public void PairsWithSharedDucts_AreTheCheapestOfAll()
    {
        var random = new Random(5101);
        var found = 0;
        for (var i = 0; i < 80; i++)
        {
            var graph = Draw(random, risks: 5);
            var best = double.PositiveInfinity;
            var routes = All(graph, 0, graph.Places - 1, []).ToList();
            foreach (var one in routes)
                foreach (var other in routes)
                    if (!Shares(graph, one, other)) best = Math.Min(best, Cost(graph, one) + Cost(graph, other));
            var (pair, _) = graph.CheapestPair(0, graph.Places - 1);
            Assert.Equal(best, pair?.Cost ?? double.PositiveInfinity);
            if (pair is not null)
            {
                found++;
                Assert.False(Shares(graph, pair.First.Edges, pair.Second.Edges));
            }
            else
            {
                // A single thing that separates is a proof; where none does, every two routes share something.
                var (edges, risks) = graph.Separating(0, graph.Places - 1);
                Assert.All(edges, cut => Assert.All(routes, r => Assert.Contains(cut, r)));
                Assert.All(risks, risk => Assert.All(routes, r => Assert.Contains(r, e => graph.Edges[e].Risks.Contains(risk))));
            }
        }
        Assert.InRange(found, 15, 75);
    }

    private static bool Shares(RouteGraph graph, IReadOnlyCollection<int> one, IReadOnlyCollection<int> other) =>
        one.Intersect(other).Any()
        || one.SelectMany(e => graph.Edges[e].Risks).Intersect(other.SelectMany(e => graph.Edges[e].Risks)).Any();

    private static double Cost(RouteGraph graph, IEnumerable<int> route) => route.Sum(e => graph.Edges[e].Cost);

    private static IEnumerable<ImmutableArray<int>> All(RouteGraph graph, int here, int to, ImmutableArray<int> so, params int[] seen)
    {
        if (here == to)
        {
            yield return so;
            yield break;
        }
        for (var e = 0; e < graph.Edges.Length; e++)
        {
            if (graph.Edges[e].A != here && graph.Edges[e].B != here) continue;
            var next = graph.Edges[e].Other(here);
            if (next == here || seen.Contains(next)) continue;
            foreach (var route in All(graph, next, to, so.Add(e), [.. seen, here])) yield return route;
        }
    }

    private static RouteGraph Draw(Random random, int risks)
    {
        var places = random.Next(3, 7);
        var edges = Enumerable.Range(0, random.Next(places, 2 * places)).Select(_ =>
        {
            var a = random.Next(places);
            var b = (a + random.Next(1, places)) % places;
            ImmutableArray<int> shared = risks > 0 && random.Next(2) == 0 ? [random.Next(risks)] : [];
            return new RouteEdge(a, b, random.Next(1, 20), shared);
        });
        return new RouteGraph(places, [.. edges]);
    }

    // Where two places are joined at no cost, ways end all the same.
    [Fact]
    public void EdgesThatCostNothing_EndInAWay()
    {
        var graph = new RouteGraph(3,
        [
            new RouteEdge(0, 1, 0, []), new RouteEdge(0, 2, 5, []), new RouteEdge(1, 2, 5, []),
        ]);
        var route = graph.Cheapest(0, 2, _ => true)!;
        Assert.Equal(5, route.Cost);
        Assert.True(route.Edges.Length is 1 or 2);
        Assert.Equal(10, graph.CheapestPair(0, 2).Pair!.Cost);
    }
}
