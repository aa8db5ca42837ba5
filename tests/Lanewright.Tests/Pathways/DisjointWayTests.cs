using System.Text.Json;
using CsCheck;
using Lanewright.Engineering.Pathways;

namespace Lanewright.Tests.Pathways;

/// <summary>Two ways without a stretch in common, against the flows and cuts of a general-purpose graph library.</summary>
public sealed class DisjointWayTests
{
    private sealed record Answer(int Flow, double Cost, int[] Bridges, int Apart, double ApartCost);

    // The textbook trap (Suurballe 1974; worked by hand): the shortest way takes the middle tray and leaves no second way, though two
    // exist.
    [Fact]
    public void ShortestWayIsGivenUp_WhereItWouldBlockTheSecond()
    {
        var trays = new[]
        {
            TrayGrid.Tray("left-up", 0, 0, 0, 2), TrayGrid.Tray("left-down", 0, 0, 0, -2),
            TrayGrid.Tray("top-1", 0, 2, 4, 2), TrayGrid.Tray("top-2", 4, 2, 8, 2),
            TrayGrid.Tray("bottom-1", 0, -2, 4, -2), TrayGrid.Tray("bottom-2", 4, -2, 8, -2),
            TrayGrid.Tray("right-up", 8, 2, 8, 0), TrayGrid.Tray("right-down", 8, -2, 8, 0),
        };
        var net = TrayGrid.Net(trays, [TrayGrid.Rack(0, 0, 0), TrayGrid.Rack(1, 8, 0)]);
        var (one, other) = new DisjointSearch(net).Find((0, null), (1, null), (1, null), 0)!.Value;
        Assert.False(one.Shares(other));
        Assert.Equal(2 * (2 + 8 + 2), one.Metres + other.Metres, 9);
    }

    // Source: networkx, max_flow_min_cost with one unit a stretch, and its bridges: how many ways there are without a stretch in common,
    // and which stretches every way needs; with one unit a point as well, how long two are together that do not meet. On random grids
    // with gaps, to one rack and to two.
    [Fact]
    public void TwoWays_AreTheLibrarysFlowOfTwo()
    {
        var questions = new List<string>();
        var ours = new List<(double Cost, int[] Shared)>();
        var places = Gen.Int[0, 1000];
        Gen.Select(Gen.Int[2, 5], Gen.Int[2, 5], Gen.Int[0, 3].Array[60], Gen.Int[1, 9].Array[12], places, places).Sample(
            (rows, columns, gaps, steps, first, second) =>
            {
                var trays = TrayGrid.Grid(rows, columns, [.. gaps.Select(g => g > 0)], [.. steps.Select(s => (double)s)]).ToList();
                if (trays.Count < 2) return;
                var points = trays
                    .SelectMany(t => new[] { (t.FromX.Metres, t.FromY.Metres), (t.ToX.Metres, t.ToY.Metres) }).Distinct().ToList();
                var (a, b) = (points[first % points.Count], points[second % points.Count]);
                if (a == points[0] || b == points[0]) return;
                var racks = new[] { points[0], a, b }.Select((p, i) => TrayGrid.Rack(i, p.Item1, p.Item2)).ToList();
                var net = TrayGrid.Net(trays, racks);
                if (new DisjointSearch(net).Find((0, null), (1, null), (2, null), 0) is not { } found) return;
                var shared = found.One.Stretches.Intersect(found.Other.Stretches).Order().ToArray();
                questions.Add(JsonSerializer.Serialize(new
                {
                    source = net.PointOf(0),
                    ends = new[] { net.PointOf(1), net.PointOf(2) },
                    // Cables leave the hall at an exit and never pass it.
                    edges = net.Edges.Where(e => !net.IsExit(e.A) && !net.IsExit(e.B))
                        .Select(e => new[] { e.A, e.B, (int)Math.Round(e.Metres * 1000), e.Stretch }),
                }));
                ours.Add((Whole(net, found.One) + Whole(net, found.Other), shared));
            },
            iter: 400, threads: 1);
        Assert.True(questions.Count > 20, $"{questions.Count} cases");
        var answers = Python.Ask(Script, questions);
        var compared = 0;
        for (var i = 0; i < ours.Count; i++)
        {
            var theirs = JsonSerializer.Deserialize<Answer>(answers[i], JsonSerializerOptions.Web)!;
            // Without a way of two there is a cut of one: exactly the stretches in common.
            Assert.Equal(theirs.Flow == 2, ours[i].Shared.Length == 0);
            Assert.Equal(theirs.Bridges, ours[i].Shared);
            Assert.True(ours[i].Shared.Length > 0 || ours[i].Cost >= (theirs.Cost / 1000) - 0.01);
            if (theirs.Apart < 2) continue;
            Assert.Equal(theirs.ApartCost / 1000, ours[i].Cost, 1e-2);
            compared++;
        }
        // Few: where both begin at one tray point they meet there.
        Assert.True(compared > 0, "none of equal length");
        Assert.Contains(ours, o => o.Shared.Length == 0);
        Assert.Contains(ours, o => o.Shared.Length > 0);
    }

    // Points are split in two for the second flow, so that one way alone passes each.
    private const string Script = """
        import json, sys, networkx
        for line in sys.stdin:
            asked = json.loads(line)
            s, ends = asked["source"], asked["ends"]
            def flow(skip=None):
                g = networkx.DiGraph()
                for i, (a, b, mm, stretch) in enumerate(asked["edges"]):
                    if skip is not None and stretch == skip: continue
                    cap = 1 if stretch >= 0 else 2
                    for u, v in ((a, b), (b, a)):
                        mid = ("m", i, u)
                        g.add_edge(u, mid, capacity=cap, weight=mm); g.add_edge(mid, v, capacity=cap, weight=0)
                for e in ends:
                    g.add_edge(e, "T", capacity=2 if ends[0] == ends[1] else 1, weight=0)
                if s not in g or not any(e in g for e in ends): return 0, 0
                f = networkx.max_flow_min_cost(g, s, "T")
                value = sum(f[s].values()) - sum(f[u].get(s, 0) for u in g)
                return min(2, value), networkx.cost_of_flow(g, f)
            def apart():
                g = networkx.DiGraph()
                free = {s, *ends}
                for i, (a, b, mm, stretch) in enumerate(asked["edges"]):
                    for u, v in ((a, b), (b, a)):
                        if v == s or u in ends: continue
                        mid = ("m", i, u)
                        g.add_edge((u, "out"), mid, capacity=1, weight=mm); g.add_edge(mid, (v, "in"), capacity=1, weight=0)
                for n in {x for e in asked["edges"] for x in e[:2]} - free:
                    g.add_edge((n, "in"), (n, "out"), capacity=1, weight=0)
                for e in ends:
                    g.add_edge((e, "in"), "T", capacity=2 if ends[0] == ends[1] else 1, weight=0)
                if (s, "out") not in g: return 0, 0
                f = networkx.max_flow_min_cost(g, (s, "out"), "T")
                return min(2, sum(f[(s, "out")].values())), networkx.cost_of_flow(g, f)
            value, cost = flow()
            bridges = []
            if value < 2:
                bridges = [e[3] for e in asked["edges"] if e[3] >= 0 and flow(e[3])[0] == 0]
            alone, length = apart()
            print(json.dumps({"flow": value, "cost": cost, "bridges": sorted(set(bridges)), "apart": alone, "apartCost": length}))
        """;

    private static double Whole(WayNet net, CableWay way)
    {
        var rackHeight = net.Points[net.PointOf(0)].Z;
        return way.Metres + Math.Abs(way.LowHeight - rackHeight) + Math.Abs(way.HighHeight - rackHeight);
    }
}
