using System.Collections.Immutable;
using System.Text.Json;
using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Pathways;

/// <summary>Ways through any number of halls, against all ways there are as a general-purpose graph library lists them.</summary>
public sealed class HallWayTests
{
    private const double Wide = 10;

    private static readonly RackType Kind =
        new("rack", 48, Length.FromMillimetres(600), Length.FromMillimetres(1200), Length.FromMillimetres(150), default);

    // Source: networkx, all simple paths of the graph of points with the rules of a plan laid on them: an exit is passed from a hall to a
    // route, from a route to a hall or from route to route, racks are ends, no way comes back into its hall or leaves the one it ends in.
    [Fact]
    public void Ways_AreTheShortestOfAllThereAre()
    {
        var (questions, ours) = (new List<string>(), new List<double?[]>());
        Gen.Select(Gen.Int[3, 5], Gen.Int[0, 4].Array[5], Gen.Int[0, 59].Array[36], Gen.Int[1, 60].Array[9], Gen.Int[0, 5]).Sample(
            (halls, kinds, ends, lengths, spare) =>
            {
                var net = Net(halls, kinds, [.. Routes(halls, ends, lengths).Take(halls + spare)]);
                var racks = net.Building.Racks;
                var pairs = racks.SelectMany(a => racks.Where(b => a.Index < b.Index && a.Hall != b.Hall), (a, b) => (a, b)).ToList();
                questions.Add(JsonSerializer.Serialize(new
                {
                    pairs = pairs.Select(p => new[]
                    {
                        net.PointOf(p.a.Index), net.PointOf(p.b.Index), p.a.Hall.Index, p.b.Hall.Index,
                    }),
                    racks = racks.Select(r => net.PointOf(r.Index)),
                    exits = Enumerable.Range(0, net.Points.Length).Where(net.IsExit),
                    edges = net.Edges.Select(e => new[]
                    {
                        e.A, e.B, e.Metres, e.Route < 0 ? e.Hall : net.Building.Routes[e.Route].From.Index,
                        e.Route < 0 ? e.Hall : net.Building.Routes[e.Route].To.Index, e.Route < 0 ? 0 : 1,
                    }),
                }));
                var ways = new ShortestWays(net);
                ways.Expect(pairs.Select(p => WayQuestion.Between(p.a.Index, p.b.Index, 0)));
                ours.Add([.. pairs.Select(p => Metres(net, ways, WayQuestion.Between(p.a.Index, p.b.Index, 0)))]);
            },
            iter: 300, threads: 1);
        var answers = Python.Ask(Script, questions);
        Assert.Equal(ours.Count, answers.Count);
        var (found, through) = (0, 0);
        for (var i = 0; i < ours.Count; i++)
        {
            var theirs = JsonSerializer.Deserialize<double?[][]>(answers[i])!;
            Assert.Equal(theirs.Length, ours[i].Length);
            for (var p = 0; p < theirs.Length; p++)
            {
                Assert.True(theirs[p][0] is null == ours[i][p] is null, questions[i]);
                if (theirs[p][0] is not { } metres) continue;
                Assert.Equal(metres, ours[i][p]!.Value, 6);
                found++;
                if (theirs[p][1] > 1) through++;
            }
        }
        Assert.True(found > 1000 && through > 300, $"{found} found, {through} through further halls");
    }

    // By hand: in hall 1 the tray from the west exit and the one to the east exit both come to the middle exit and do not meet, and no
    // cable goes out to hall 2 there only to come back beside where it was; from hall 0 through hall 2 it comes in by the middle exit.
    [Fact]
    public void Ways_PassAnExitOnce()
    {
        var routes = new[] { (0, 0, 1, 0, 5), (1, 2, 2, 0, 10), (1, 1, 3, 0, 5) };
        int[] kinds = [0, 4, 0, 0];
        Assert.Null(TrayGrid.Way(Net(4, kinds, [.. routes]), 0, 6));
        var net = Net(4, kinds, [.. routes, (2, 0, 0, 0, 100)]);
        var way = TrayGrid.Way(net, 0, 6)!;
        Assert.Equal(100 + 10 + 5, way.Surveyed.Metres, 9);
        Assert.Equal(["beside"], TrayGrid.Names(net, way));
    }

    // By hand: the far hall's trays do not meet. The nearer route comes in at the west exit, whose tray leads to the middle exit; the rack
    // in the east is reached by the farther route alone, which comes in there.
    [Fact]
    public void AnExitReachedFromWithin_HidesNoWayThatComesInThere()
    {
        var net = Net(2, [0, 4], [(0, 0, 1, 0, 5), (0, 0, 1, 2, 80)]);
        Assert.Equal(5, TrayGrid.Way(net, 0, 2)!.Surveyed.Metres, 9);
        Assert.Equal(80, TrayGrid.Way(net, 0, 3)!.Surveyed.Metres, 9);
    }

    // All pairs of ways there are (brute force): two share as little as any two do. Where a way would pass an exit twice the answer is left
    // open, which is rare.
    [Fact]
    public void TwoWays_ShareAsLittleAsAnyTwo()
    {
        var (apart, sharing, open) = (0, 0, 0);
        Gen.Select(Gen.Int[3, 5], Gen.Int[0, 4].Array[5], Gen.Int[0, 59].Array[36], Gen.Int[1, 60].Array[9], Gen.Int[1, 4]).Sample(
            (halls, kinds, ends, lengths, spare) =>
            {
                var net = Net(halls, kinds, [.. Routes(halls, ends, lengths).Take(halls + spare)]);
                var search = new DisjointSearch(net);
                var ways = Ways(net, 0, 2).ToList();
                var found = search.Find((0, null), (2, null), (2, null), 0);
                if (search.IsUndecided) open++;
                if (search.IsUndecided) return;
                Assert.Equal(ways.Count > 0, found is not null);
                if (found is not { } pair) return;
                var common = pair.One.Stretches.Intersect(pair.Other.Stretches).Count()
                    + pair.One.Routes.Intersect(pair.Other.Routes).Count();
                Assert.Equal(ways.Min(one => ways.Min(other => one.Intersect(other).Count())), common);
                if (common == 0) apart++;
                else sharing++;
            },
            iter: 600, threads: 1);
        Assert.True(apart > 50 && sharing > 50 && open < apart, $"{apart} apart, {sharing} sharing, {open} open");
    }

    /// <summary>The stretches and routes of every way there is, routes numbered below nothing.</summary>
    private static IEnumerable<HashSet<int>> Ways(WayNet net, int one, int other)
    {
        var (source, end, taken) = (net.PointOf(one), net.PointOf(other), new Stack<int>());
        var (own, far) = (net.Building.Racks[one].Hall, net.Building.Racks[other].Hall);
        var passed = new HashSet<int> { source };
        return From(source, false);

        IEnumerable<HashSet<int>> From(int point, bool cameByRoute)
        {
            if (point == end)
            {
                yield return [.. taken];
                yield break;
            }
            foreach (var e in net.EdgesAt(point).ToArray())
            {
                var (edge, next) = (net.Edges[e], net.Edges[e].Far(point));
                if (edge.Route >= 0 && !LeadsOn(net.Building.Routes[edge.Route], edge.A == point)) continue;
                if (edge.Route < 0 && net.IsExit(point) && !cameByRoute) continue;
                if ((net.IsRack(next) && next != end) || !passed.Add(next)) continue;
                var isKept = edge.Stretch >= 0 || edge.Route >= 0;
                if (isKept) taken.Push(edge.Route >= 0 ? -1 - edge.Route : edge.Stretch);
                foreach (var way in From(next, edge.Route >= 0)) yield return way;
                if (isKept) taken.Pop();
                passed.Remove(next);
            }
        }

        bool LeadsOn(HallRoute route, bool isOnward) => route.EndOf(!isOnward).Hall != far && route.EndOf(isOnward).Hall != own;
    }

    private const string Script = """
        import json, sys, networkx
        for line in sys.stdin:
            asked = json.loads(line)
            racks, exits = set(asked["racks"]), set(asked["exits"])
            found = []
            for source, end, own, far in asked["pairs"]:
                g = networkx.MultiGraph()
                for i, (a, b, metres, one, other, route) in enumerate(asked["edges"]):
                    a, b = int(a), int(b)
                    if (racks & {a, b}) - {source, end}: continue
                    g.add_edge(a, b, key=i)
                best, passed = None, 0
                if source in g and end in g:
                    for path in networkx.all_simple_edge_paths(g, source, end):
                        total, ok, came = 0, True, 0
                        for u, v, key in path:
                            a, b, metres, one, other, route = asked["edges"][key]
                            left, entered = (one, other) if u == int(a) else (other, one)
                            if route and (left == far or entered == own): ok = False
                            if u in exits and not route and not came: ok = False
                            total, came = total + metres, route
                        if ok and (best is None or total < best - 1e-9):
                            best, passed = total, sum(asked["edges"][k][5] for _, _, k in path)
                found.append([best, passed])
            print(json.dumps(found))
        """;

    private static double? Metres(WayNet net, ShortestWays ways, WayQuestion question)
    {
        if (ways.Between(question) is not { } way) return null;
        var (low, high) = (net.Points[net.PointOf(question.From)].Z, net.Points[net.PointOf(question.To)].Z);
        return way.Total + Math.Abs(way.LowHeight - low) + Math.Abs(way.HighHeight - high);
    }

    /// <summary>Halls with an exit at either end and in the middle: without a tray, with one from end to end, with two that do not meet,
    /// with one that stops short, or with two that do not meet and come to the middle exit both.</summary>
    private static WayNet Net(int count, int[] kinds, ImmutableArray<(int From, int FromExit, int To, int ToExit, int Metres)> routes)
    {
        var halls = Enumerable.Range(0, count).Select(i => new Hall(i, "site", $"h{i}", Length.FromMetres(2.6), default, default, default)
        {
            Exits = [new HallExit("east", Length.FromMetres(Wide), default), new HallExit("middle", Length.FromMetres(Wide / 2), default)],
        }).ToImmutableArray();
        var racks = halls.SelectMany(h => new[] { 0.5, Wide - 0.5 }, (hall, x) => (hall, x))
            .Select((r, i) => new Rack(i, r.hall, "R", i + 1, Length.FromMetres(r.x), Length.FromMetres(1), Kind)).ToImmutableArray();
        var joins = routes.Select(r => new HallRoute(halls[r.From], halls[r.To], Length.FromMetres(r.Metres), null, 0, default)
        {
            FromExit = r.FromExit == 0 ? halls[r.From].Exit : halls[r.From].Exits[r.FromExit - 1],
            ToExit = r.ToExit == 0 ? halls[r.To].Exit : halls[r.To].Exits[r.ToExit - 1],
            Name = $"{r}",
        }).Distinct().ToImmutableArray();
        return WayNet.Of(
            new Building(halls, racks, joins) { Pathways = [.. halls.SelectMany(h => Trays(h, kinds[h.Index]))] },
            StandardsLibrary.Shipped);
    }

    private static IEnumerable<Pathway> Trays(Hall hall, int kind) => kind switch
    {
        0 => [],
        1 => [Tray(hall, "all", 0, 0, Wide)],
        2 => [Tray(hall, "west", 0, 0, 4), Tray(hall, "east", 0, 6, Wide)],
        3 => [Tray(hall, "short", 0.5, 3, Wide)],
        _ => [Tray(hall, "west", 0, 0, 5), Tray(hall, "beside", 0.5, 4.8, Wide)],
    };

    private static Pathway Tray(Hall hall, string name, double y, double from, double to) => new(
        hall, name, Length.FromMetres(from), Length.FromMetres(y), Length.FromMetres(to), Length.FromMetres(y),
        Length.FromMillimetres(300), Length.FromMillimetres(100), false, default);

    private static IEnumerable<(int From, int FromExit, int To, int ToExit, int Metres)> Routes(int halls, int[] ends, int[] lengths)
    {
        for (var i = 0; i < lengths.Length; i++)
        {
            var (from, to) = (ends[4 * i] % halls, ends[(4 * i) + 1] % halls);
            if (from != to) yield return (from, ends[(4 * i) + 2] % 3, to, ends[(4 * i) + 3] % 3, lengths[i]);
        }
    }
}
