using System.Diagnostics;
using System.Text.Json;
using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;

namespace Lanewright.Bench;

/// <summary>The same graph in a general-purpose graph library (networkx), for a ratio: all distances from some racks.</summary>
internal static class WaysReference
{
    private const int Sources = 20;

    private const string Script = """
        import json, sys, time, networkx
        asked = json.load(sys.stdin)
        graph = networkx.Graph()
        for a, b, metres in asked["edges"]:
            graph.add_edge(int(a), int(b), weight=metres)
        start = time.perf_counter()
        for source in asked["sources"]:
            networkx.single_source_dijkstra(graph, source)
        print(time.perf_counter() - start)
        """;

    /// <summary>Prints how long both take for as many racks.</summary>
    public static void Run(WayNet net)
    {
        var asked = JsonSerializer.Serialize(new
        {
            sources = Enumerable.Range(0, Sources).Select(net.PointOf),
            edges = net.Edges.Select(e => new[] { e.A, e.B, e.Metres }),
        });
        if (Ask(asked) is not { } theirs)
        {
            Console.WriteLine("  no ratio: networkx is not installed");
            return;
        }
        var racks = net.Building.Racks.Length;
        var ours = Clock.Best(2, () =>
        {
            var ways = new ShortestWays(net);
            ways.Expect(Enumerable.Range(0, Sources)
                .SelectMany(s => Enumerable.Range(s + 1, racks - s - 1).Select(t => new WayQuestion(s, t, 0))));
            for (var s = 0; s < Sources; s++)
                for (var t = s + 1; t < racks; t++)
                    _ = ways.Between(new WayQuestion(s, t, 0));
        });
        Console.WriteLine($"  all ways from {Sources} racks: {Numerals.Fixed(ours, 0)} ms, "
            + $"in networkx {Numerals.Fixed(theirs * 1000, 0)} ms, "
            + $"{Numerals.Fixed(theirs * 1000 / ours, 1)} times as long");
    }

    private static double? Ask(string question)
    {
        try
        {
            var start = new ProcessStartInfo("/usr/bin/python3")
            {
                ArgumentList = { "-c", Script }, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
            };
            using var process = Process.Start(start);
            if (process is null) return null;
            process.StandardInput.Write(question);
            process.StandardInput.Close();
            var answer = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return process.ExitCode == 0 && Numerals.TryReal(answer.Trim(), out var seconds) ? seconds : null;
        }
        catch (Exception error) when (error is System.ComponentModel.Win32Exception or IOException)
        {
            return null;
        }
    }
}
