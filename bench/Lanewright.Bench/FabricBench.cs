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
    private const int IrregularSwitches = 200;
    private const int IrregularLinks = 8;

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
            var build = Clock.Both(Runs, () => graph = new FabricGraph(fabric.Graph.Nodes, fabric.Graph.Links));
            var traffic = fabric.AllToAll;
            var hop = Clock.Both(Runs, () => LoadSolver.OnShortestPaths(graph, traffic, SplitRule.PerHop));
            var paths = Clock.Both(Runs, () => LoadSolver.OnShortestPaths(graph, traffic, SplitRule.PathWeighted));
            var classes = 0;
            var find = Clock.Both(Runs, () => classes = SymmetryClasses.Of(graph, traffic).LinkClasses.Distinct().Count());
            var units = Units(graph);
            var sweep = Clock.Both(Runs, () => FailureSweep.Of(graph, traffic, SplitRule.PerHop, units));
            var hose = Clock.Both(1, () => HoseWorstCase.Of(graph, fabric.Terminals, SplitRule.PerHop));
            Console.WriteLine($"  k = {k}: {Numerals.Whole(fabric.Hosts)} hosts, {Numerals.Whole(fabric.Switches)} switches, "
                + $"{Numerals.Whole(fabric.FabricLinks)} links between them");
            Console.WriteLine($"    build {Show(build, 1)}; all-to-all per hop {Show(hop)}, "
                + $"by paths {Show(paths)}; worst case of all traffic {Show(hose)}");
            Console.WriteLine($"    every single link lost, exact: {Show(sweep)}, of which finding {classes} classes of "
                + $"{Numerals.Whole(units.Length)} links {Show(find)}");
            if (before.Hosts > 0)
            {
                // Work on the general graph is edge switches times arcs: hosts to the power 5/3.
                var power = Math.Log(hop.Processors / before.Time) / Math.Log(fabric.Hosts / (double)before.Hosts);
                Console.WriteLine($"    all-to-all grows as hosts to the power {Numerals.Fixed(power, 2)}: "
                    + $"{Numerals.Fixed(Math.Pow(2, power), 2)} times when hosts double");
            }
            before = (fabric.Hosts, hop.Processors);
            Compare(fabric);
        }
        Irregular();
    }

    /// <summary>Nothing is alike in a random graph, so that every failure is worked out by itself.</summary>
    private static void Irregular()
    {
        var fabric = KnownFabric.RandomRegular(IrregularSwitches, IrregularLinks, 1);
        var units = Units(fabric.Graph);
        var sweep = Clock.Both(1, () => FailureSweep.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, units));
        var bisection = Bisection.Of(fabric.Graph, fabric.Terminals);
        var cut = Clock.Both(1, () => bisection = Bisection.Of(fabric.Graph, fabric.Terminals));
        Console.WriteLine($"  {IrregularSwitches} switches with {IrregularLinks} links each, at random: every one of "
            + $"{Numerals.Whole(units.Length)} links lost {Show(sweep)}; bisection {Numerals.Plain(bisection.AtLeast.Gigabits)} to "
            + $"{Numerals.Plain(bisection.AtMost.Gigabits)} links {Show(cut)}");
    }

    private static string Show((double Wall, double Processors) time, int places = 0) =>
        $"{Numerals.Fixed(time.Wall, places)} ms ({Numerals.Fixed(time.Processors, places)} of processors)";

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
        var ours = Clock.Both(2, () =>
        {
            var loads = LoadSolver.OnShortestPaths(every.Graph, every.AllToAll, SplitRule.PathWeighted);
            most = Enumerable.Range(0, inside.Count).Max(l => loads.GigabitsFromA(l) + loads.GigabitsFromB(l)) / 2;
        });
        Console.WriteLine($"    loads by paths between all switches: here {Show(ours)}, "
            + $"edge betweenness in igraph (one core) {Show((theirs.Milliseconds, theirs.Processors))}, "
            + $"ratio {Numerals.Fixed(ours.Wall / theirs.Milliseconds, 2)}, by processors "
            + $"{Numerals.Fixed(ours.Processors / theirs.Processors, 2)}; "
            + $"fullest link {Numerals.Plain(most)} here, {Numerals.Plain(theirs.Most)} there");
    }

    private static (double Milliseconds, double Processors, double Most)? Library(int switches, List<(int A, int B, int Count)> links)
    {
        const string script = """
            import sys, time, igraph
            n = int(sys.stdin.readline())
            graph = igraph.Graph(n=n, edges=[tuple(int(w) for w in line.split()) for line in sys.stdin])
            best = processors = 1e99
            for _ in range(2):
                start, before = time.perf_counter(), time.process_time()
                most = max(graph.edge_betweenness(directed=False))
                best = min(best, time.perf_counter() - start)
                processors = min(processors, time.process_time() - before)
            print(best * 1000, processors * 1000, most)
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
            return error.Result.Length == 0 && Numerals.TryReal(words[0], out var time) && Numerals.TryReal(words[1], out var processors)
                && Numerals.TryReal(words[2].Trim(), out var most)
                ? (time, processors, most)
                : null;
        }
        catch (Exception error) when (error is System.ComponentModel.Win32Exception or IOException)
        {
            return null;
        }
    }
}
