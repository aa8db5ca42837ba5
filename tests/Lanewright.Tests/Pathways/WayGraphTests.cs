using System.Text.Json;
using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;

namespace Lanewright.Tests.Pathways;

/// <summary>Pathways as a graph, and the shortest ways along them against a general-purpose graph library.</summary>
public sealed class WayGraphTests
{
    [Fact]
    public void CrossingTrays_AreJoinedWhereTheyCross()
    {
        var net = TrayGrid.Net(
            [TrayGrid.Tray("a", 0, 2, 10, 2), TrayGrid.Tray("b", 4, 0, 4, 6)], [TrayGrid.Rack(0, 0, 2), TrayGrid.Rack(1, 4, 6)]);
        Assert.Equal(4 + 4, TrayGrid.Way(net, 0, 1)!.Metres, 9);
        Assert.Equal(["a", "b"], TrayGrid.Names(net, TrayGrid.Way(net, 0, 1)));
    }

    [Fact]
    public void TouchingEnds_AreJoined_AndGapsAreNot()
    {
        var racks = new[] { TrayGrid.Rack(0, 0, 0), TrayGrid.Rack(1, 6, 0) };
        var touching = TrayGrid.Net([TrayGrid.Tray("a", 0, 0, 3, 0), TrayGrid.Tray("b", 3, 0, 6, 0)], racks);
        Assert.Equal(6, TrayGrid.Way(touching, 0, 1)!.Metres, 9);
        Assert.Null(TrayGrid.Way(TrayGrid.Net([TrayGrid.Tray("a", 0, 0, 2.9, 0), TrayGrid.Tray("b", 3, 0, 6, 0)], racks), 0, 1));
    }

    // Heights worked by hand: a drop of 0.4 m from tray to tray counts, one of 3 m needs a riser, and then counts along the riser.
    [Fact]
    public void TraysOfTwoHeights_AreJoinedByADropOrARiser()
    {
        var racks = new[] { TrayGrid.Rack(0, 0, 0), TrayGrid.Rack(1, 4, 5) };
        var low = TrayGrid.Tray("low", 0, 0, 4, 0);
        var high = TrayGrid.Tray("high", 4, 0, 4, 5) with { FromHeight = Length.FromMetres(3), ToHeight = Length.FromMetres(3) };
        Assert.Equal(4 + 0.4 + 5, TrayGrid.Way(TrayGrid.Net([low, high], racks), 0, 1)!.Metres, 9);
        var far = high with { FromHeight = Length.FromMetres(5.6), ToHeight = Length.FromMetres(5.6) };
        Assert.Null(TrayGrid.Way(TrayGrid.Net([low, far], racks), 0, 1));
        var riser = TrayGrid.Tray("riser", 4, 0, 4, 0) with { FromHeight = Length.FromMetres(2), ToHeight = Length.FromMetres(6) };
        var way = TrayGrid.Way(TrayGrid.Net([low, far, riser], racks), 0, 1)!;
        Assert.Equal(4 + 3 + 5, way.Metres, 9);
        Assert.Equal((2.6, 5.6), (Math.Round(way.LowHeight, 6), Math.Round(way.HighHeight, 6)));
    }

    [Fact]
    public void PathwaysOfTwoSides_AreNeverJoined()
    {
        var racks = new[] { TrayGrid.Rack(0, 0, 0), TrayGrid.Rack(1, 4, 5) };
        var (a, b) = (TrayGrid.Tray("a", 0, 0, 4, 0), TrayGrid.Tray("b", 4, 0, 4, 5));
        Assert.NotNull(TrayGrid.Way(TrayGrid.Net([a with { Side = "A" }, b], racks), 0, 1));
        Assert.Null(TrayGrid.Way(TrayGrid.Net([a with { Side = "A" }, b with { Side = "B" }], racks), 0, 1));
    }

    // Source: two grids of trays with cells left out, steps of the shortest way by breadth-first search (derived): 8, and none at all.
    [Theory]
    [InlineData("....., .###., ....., .#.#., .....", 4, 4, 8.0)]
    [InlineData("..#.., ..#.., ..#..", 0, 4, null)]
    public void WaysRoundGaps_AreAsLongAsTheSteps(string grid, int row, int column, double? steps)
    {
        var cells = grid.Split(", ");
        bool Open(int r, int c) => r < cells.Length && c < cells[r].Length && cells[r][c] == '.';
        var trays = from r in Enumerable.Range(0, cells.Length)
                    from c in Enumerable.Range(0, cells[r].Length)
                    where Open(r, c)
                    from next in new[] { (R: r, C: c + 1), (R: r + 1, C: c) }
                    where Open(next.R, next.C)
                    select TrayGrid.Tray($"{r}-{c}-{next.R}", c, r, next.C, next.R);
        var net = TrayGrid.Net(trays, [TrayGrid.Rack(0, 0, 0), TrayGrid.Rack(1, column, row)]);
        Assert.Equal(steps, TrayGrid.Way(net, 0, 1)?.Metres);
    }

    // Source: shortest path lengths of the general-purpose graph library networkx, on random grids of trays with gaps.
    [Fact]
    public void Ways_AreTheLibrarysShortest()
    {
        var questions = new List<string>();
        var ours = new List<double?[]>();
        Gen.Select(Gen.Int[2, 5], Gen.Int[2, 5], Gen.Bool.Array[60], Gen.Double[0.5, 4].Array[12]).Sample(
            (rows, columns, isThere, steps) =>
            {
                var trays = TrayGrid.Grid(rows, columns, isThere, steps).ToList();
                if (trays.Count == 0) return;
                var racks = trays.Select((t, i) => TrayGrid.Rack(i, (t.FromX.Metres + t.ToX.Metres) / 2, t.ToY.Metres)).ToList();
                var net = TrayGrid.Net(trays, racks);
                var points = racks.Select(r => net.PointOf(r.Index)).ToArray();
                // An exit that cables come down to from two trays side by side is no way from the one to the other.
                var inHall = TrayGrid.Edges(net).Where(e => !net.IsExit((int)e[0]) && !net.IsExit((int)e[1]));
                questions.Add(JsonSerializer.Serialize(new { source = points[0], points, edges = inHall }));
                var ways = racks.Select(r => r.Index == 0 ? null : TrayGrid.Way(net, 0, r.Index)).ToList();
                ours.Add([.. ways.Select(w => w is null ? (double?)null : Whole(net, w, 0))]);
            },
            iter: 200, threads: 1);
        var answers = Python.Ask("""
            import json, sys, networkx
            for line in sys.stdin:
                asked = json.loads(line)
                ends = set(asked["points"])
                found = []
                for end in asked["points"]:
                    graph = networkx.Graph()
                    for a, b, metres in asked["edges"]:
                        a, b = int(a), int(b)
                        # A rack is an end of a way and never on it.
                        if (a in ends and a not in (asked["source"], end)) or (b in ends and b not in (asked["source"], end)): continue
                        before = graph.get_edge_data(a, b, {"weight": metres})["weight"]
                        graph.add_edge(a, b, weight=min(metres, before))
                    try: found.append(networkx.dijkstra_path_length(graph, asked["source"], end))
                    except (networkx.NetworkXNoPath, networkx.NodeNotFound): found.append(None)
                print(json.dumps(found))
            """, questions);
        Assert.Equal(ours.Count, answers.Count);
        for (var i = 0; i < ours.Count; i++)
        {
            var theirs = JsonSerializer.Deserialize<double?[]>(answers[i])!;
            for (var p = 1; p < theirs.Length; p++)
            {
                Assert.Equal(theirs[p] is null, ours[i][p] is null);
                if (theirs[p] is { } metres) Assert.Equal(metres, ours[i][p]!.Value, 9);
            }
        }
    }

    /// <summary>Stretches with what goes up and down at both racks, as the graph counts it.</summary>
    private static double Whole(WayNet net, CableWay way, int from)
    {
        var rackHeight = net.Points[net.PointOf(from)].Z;
        return way.Metres + Math.Abs(way.LowHeight - rackHeight) + Math.Abs(way.HighHeight - rackHeight);
    }
}
