using System.Collections.Immutable;
using System.Diagnostics;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Bench;

/// <summary>Three-tier fat trees: building the graph, all-to-all on the general graph, every single link lost, and the same work in a
/// general-purpose graph library of another language where it is installed.</summary>
internal static class FabricBench
{
    private const int Runs = 5;

    /// <summary>Prints a line a step and radix.</summary>
    public static void Run(IReadOnlyList<int> radices)
    {
        Console.WriteLine();
        Console.WriteLine("fabrics: three-tier fat trees, a bundle of hosts a switch at the edge");
        var before = (Hosts: 0L, Time: 0.0);
        foreach (var k in radices)
        {
            var fabric = KnownFabric.FatTree(k);
            var graph = fabric.Graph;
            var build = Clock.Best(Runs, () => graph = new FabricGraph(fabric.Graph.Nodes, fabric.Graph.Links));
            var traffic = fabric.AllToAll;
            var hop = Clock.Best(Runs, () => LoadSolver.OnShortestPaths(graph, traffic, SplitRule.PerHop));
            var paths = Clock.Best(Runs, () => LoadSolver.OnShortestPaths(graph, traffic, SplitRule.PathWeighted));
            var classes = 0;
            var find = Clock.Best(Runs, () => classes = SymmetryClasses.Of(graph, traffic).LinkClasses.Distinct().Count());
            var units = Units(graph);
            var sweep = Clock.Best(Runs, () => FailureSweep.Of(graph, traffic, SplitRule.PerHop, units));
            var hose = Clock.Best(1, () => HoseWorstCase.Of(graph, fabric.Terminals, SplitRule.PerHop));
            Console.WriteLine($"  k = {k}: {Numerals.Whole(fabric.Hosts)} hosts, {Numerals.Whole(fabric.Switches)} switches, "
                + $"{Numerals.Whole(fabric.FabricLinks)} links between them");
            Console.WriteLine($"    build {Numerals.Fixed(build, 1)} ms; all-to-all per hop {Numerals.Fixed(hop, 0)} ms, "
                + $"by paths {Numerals.Fixed(paths, 0)} ms; worst case of all traffic {Numerals.Fixed(hose, 0)} ms");
            Console.WriteLine($"    every single link lost, exact: {Numerals.Fixed(sweep, 0)} ms, of which finding {classes} classes of "
                + $"{Numerals.Whole(units.Length)} links {Numerals.Fixed(find, 0)} ms");
            if (before.Hosts > 0)
            {
                // Work on the general graph is edge switches times arcs: hosts to the power 5/3.
                var power = Math.Log(hop / before.Time) / Math.Log(fabric.Hosts / (double)before.Hosts);
                Console.WriteLine($"    all-to-all grows as hosts to the power {Numerals.Fixed(power, 2)}: "
                    + $"{Numerals.Fixed(Math.Pow(2, power), 2)} times when hosts double");
            }
            before = (fabric.Hosts, hop);
            Compare(fabric);
        }
    }

    private static ImmutableArray<FailureUnit> Units(FabricGraph graph) =>
        [.. Enumerable.Range(0, graph.Links.Length).Select(l => new FailureUnit(Numerals.Whole(l), FailureKind.Link, Outage.OfLink(l)))];

    /// <summary>Edge betweenness is half of the load by paths when every switch sends 1 to every other: the same work on both
    /// sides.</summary>
    private static void Compare(KnownFabric fabric)
    {
        var inside = fabric.Graph.Links.Where(l => !fabric.Graph.Nodes[l.A].IsTerminal).Select(l => (l.A, l.B, l.Count)).ToList();
        if (Library(fabric.Switches, inside) is not { } theirs)
        {
            Console.WriteLine("    no graph library to compare with: install python3-igraph");
            return;
        }
        var every = KnownFabric.Of(
            Enumerable.Repeat(1, fabric.Switches), inside, Enumerable.Range(0, fabric.Switches).Select(s => (s, 1, fabric.Switches - 1)));
        var most = 0.0;
        var ours = Clock.Best(2, () =>
        {
            var loads = LoadSolver.OnShortestPaths(every.Graph, every.AllToAll, SplitRule.PathWeighted);
            most = Enumerable.Range(0, inside.Count).Max(l => loads.GigabitsFromA(l) + loads.GigabitsFromB(l)) / 2;
        });
        Console.WriteLine($"    loads by paths between all switches: here {Numerals.Fixed(ours, 0)} ms, "
            + $"edge betweenness in igraph (one core) {Numerals.Fixed(theirs.Milliseconds, 0)} ms, "
            + $"ratio {Numerals.Fixed(ours / theirs.Milliseconds, 2)}; "
            + $"fullest link {Numerals.Plain(most)} here, {Numerals.Plain(theirs.Most)} there");
    }

    private static (double Milliseconds, double Most)? Library(int switches, List<(int A, int B, int Count)> links)
    {
        const string script = """
            import sys, time, igraph
            n = int(sys.stdin.readline())
            graph = igraph.Graph(n=n, edges=[tuple(int(w) for w in line.split()) for line in sys.stdin])
            best = 1e99
            for _ in range(2):
                start = time.perf_counter()
                most = max(graph.edge_betweenness(directed=False))
                best = min(best, time.perf_counter() - start)
            print(best * 1000, most)
            """;
        try
        {
            var start = new ProcessStartInfo("/usr/bin/python3")
            {
                ArgumentList = { "-c", script }, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
            };
            using var process = Process.Start(start);
            if (process is null) return null;
            var output = process.StandardOutput.ReadToEndAsync();
            var error = process.StandardError.ReadToEndAsync();
            process.StandardInput.WriteLine(switches);
            foreach (var link in links) process.StandardInput.WriteLine($"{link.A} {link.B}");
            process.StandardInput.Close();
            process.WaitForExit();
            var words = output.Result.Split(' ');
            return error.Result.Length == 0 && Numerals.TryReal(words[0], out var time) && Numerals.TryReal(words[1].Trim(), out var most)
                ? (time, most)
                : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }
}
