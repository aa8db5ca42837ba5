using System.Collections.Immutable;
using System.Diagnostics;
using System.Text.Json;
using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Tests.Pathways;

/// <summary>Pathways as a graph, and the shortest ways along them against a general-purpose graph library.</summary>
public sealed class WayGraphTests
{
    private static readonly Hall Room = new(0, "site", "hall", Length.FromMetres(2.6), default, default, default);

    [Fact]
    public void CrossingTrays_AreJoinedWhereTheyCross()
    {
        var graph = new WayGraph([Tray("a", 0, 2, 10, 2), Tray("b", 4, 0, 4, 6)], [new WayPoint(0, 3), new WayPoint(5, 6)]);
        Assert.Equal(4 + 4, graph.From(graph.Drops[0]).MetresTo(graph.Drops[1]), 9);
        Assert.Equal(4, graph.Segments.Length); // each tray in two; the drops meet ends
    }

    [Fact]
    public void TouchingEnds_AreJoined_AndGapsAreNot()
    {
        ImmutableArray<WayPoint> drops = [new WayPoint(0, 0), new WayPoint(6, 0)];
        var touching = new WayGraph([Tray("a", 0, 0, 3, 0), Tray("b", 3, 0, 6, 0)], drops);
        Assert.Equal(6, touching.From(touching.Drops[0]).MetresTo(touching.Drops[1]), 9);
        var apart = new WayGraph([Tray("a", 0, 0, 2.9, 0), Tray("b", 3, 0, 6, 0)], drops);
        Assert.True(double.IsInfinity(apart.From(apart.Drops[0]).MetresTo(apart.Drops[1])));
    }

    // Source: shortest path lengths of the general-purpose graph library networkx, on random grids of trays with gaps.
    [Fact]
    public void Ways_AreTheLibrarysShortest()
    {
        var questions = new List<string>();
        var ours = new List<double[]>();
        Gen.Select(Gen.Int[2, 5], Gen.Int[2, 5], Gen.Bool.Array[60], Gen.Double[0.5, 4].Array[12]).Sample(
            (rows, columns, isThere, steps) =>
            {
                var graph = new WayGraph([.. Grid(rows, columns, isThere, steps)], [new WayPoint(0, 0)]);
                if (graph.Segments.IsEmpty) return;
                questions.Add(JsonSerializer.Serialize(new
                {
                    source = graph.Drops[0],
                    points = graph.Points.Count,
                    segments = graph.Segments.Select(s => new[] { s.A, s.B, s.Metres }),
                }));
                var tree = graph.From(graph.Drops[0]);
                ours.Add([.. Enumerable.Range(0, graph.Points.Count).Select(tree.MetresTo)]);
                for (var p = 0; p < graph.Points.Count; p++)
                    if (!double.IsInfinity(tree.MetresTo(p)))
                        Assert.Equal(tree.MetresTo(p), tree.To(p).Sum(s => graph.Segments[s].Metres), 9);
            },
            iter: 60, threads: 1);
        var answers = Ask(questions);
        Assert.Equal(ours.Count, answers.Count);
        for (var i = 0; i < ours.Count; i++)
        {
            var theirs = JsonSerializer.Deserialize<double?[]>(answers[i])!;
            for (var p = 0; p < theirs.Length; p++) Assert.Equal(theirs[p] ?? double.PositiveInfinity, ours[i][p], 9);
        }
    }

    private static IEnumerable<Pathway> Grid(int rows, int columns, bool[] isThere, double[] steps)
    {
        double At(int i) => steps.Take(i).Sum();
        var next = 0;
        for (var r = 0; r < rows; r++)
            for (var c = 0; c < columns; c++)
            {
                if (c + 1 < columns && isThere[next++ % isThere.Length]) yield return Tray($"h{r}-{c}", At(c), At(r), At(c + 1), At(r));
                if (r + 1 < rows && isThere[next++ % isThere.Length]) yield return Tray($"v{r}-{c}", At(c), At(r), At(c), At(r + 1));
            }
    }

    private static Pathway Tray(string name, double fromX, double fromY, double toX, double toY) => new(
        Room, name, Length.FromMetres(fromX), Length.FromMetres(fromY), Length.FromMetres(toX), Length.FromMetres(toY),
        Length.FromMillimetres(300), Length.FromMillimetres(100), false, default);

    private static List<string> Ask(IEnumerable<string> questions)
    {
        const string script = """
            import json, sys, networkx
            for line in sys.stdin:
                asked = json.loads(line)
                graph = networkx.Graph()
                graph.add_nodes_from(range(asked["points"]))
                for a, b, metres in asked["segments"]:
                    before = graph.get_edge_data(a, b, {"weight": metres})["weight"]
                    graph.add_edge(int(a), int(b), weight=min(metres, before))
                ways = networkx.single_source_dijkstra_path_length(graph, asked["source"])
                print(json.dumps([ways.get(p) for p in range(asked["points"])]))
            """;
        var start = new ProcessStartInfo("/usr/bin/python3")
        {
            ArgumentList = { "-c", script }, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var process = Process.Start(start) ?? throw new InvalidOperationException("python3 did not start");
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        foreach (var question in questions) process.StandardInput.WriteLine(question);
        process.StandardInput.Close();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, "./check installs what this test needs. " + error.Result);
        return [.. output.Result.Split('\n', StringSplitOptions.RemoveEmptyEntries)];
    }
}
