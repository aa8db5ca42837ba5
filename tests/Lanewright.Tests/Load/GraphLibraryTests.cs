using System.Text.Json;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Random connected fabrics against a general-purpose graph library of another language (networkx, from the distribution): loads
/// by paths against its edge betweenness, bisection against its largest flow, the worst matrix against its matching, distances.</summary>
public sealed class GraphLibraryTests
{
    private const int Graphs = 30;
    private const int Parts = 1 << 20;

    [Fact]
    public void Loads_Flows_Matchings_AreTheLibrarys()
    {
        var fabrics = Enumerable.Range(1, Graphs).Select(Fabric).ToArray();
        var worst = fabrics.Select(Worst).ToArray();
        var answers = Ask(fabrics.Zip(worst, Question));
        Assert.Equal(Graphs, answers.Count);
        for (var i = 0; i < Graphs; i++)
        {
            using var answer = JsonDocument.Parse(answers[i]);
            var (graph, terminals) = (fabrics[i].Graph, fabrics[i].Terminals);
            // Each ordered pair of switches sends 1, so that both directions together are twice what the library counts for pairs.
            var all = TrafficMatrix.AllToAll([.. terminals.Select(t => t with { Rate = KnownFabric.Unit * (terminals.Length - 1) })]);
            var loads = LoadSolver.OnShortestPaths(graph, all, SplitRule.PathWeighted);
            var theirs = answer.RootElement.GetProperty("loads").EnumerateArray().Select(l => l.GetDouble() * 2).ToArray();
            for (var link = 0; link < theirs.Length; link++)
                Assert.Equal(theirs[link], loads.GigabitsFromA(link) + loads.GigabitsFromB(link), 1e-9);
            Assert.Equal(answer.RootElement.GetProperty("longest").GetInt32() / 2, (HopCounts.Of(graph)?.Longest ?? 0) - 2);
            var matching = answer.RootElement.GetProperty("matching").GetInt64() / (double)Parts;
            Assert.Equal(matching, worst[i].Utilisation.Value * graph.Links[worst[i].Link].Count, terminals.Length / (double)Parts);
            // One division cannot carry less than the worst does.
            var flow = answer.RootElement.GetProperty("flow").GetDouble();
            Assert.True(Bisection.Of(graph, terminals) is { IsExact: true } b && b.AtMost.Gigabits <= flow + 1e-9);
        }
    }

    [Fact]
    public void Bisection_IsTheLibrarysLeastFlow()
    {
        var fabrics = Enumerable.Range(1, 6).Select(i => Fabric(i * 3)).Where(f => f.Terminals.Length <= 8).ToArray();
        Assert.NotEmpty(fabrics);
        var questions = new List<string>();
        var owner = new List<int>();
        for (var i = 0; i < fabrics.Length; i++)
        {
            var n = fabrics[i].Terminals.Length;
            for (var half = 1; half < 1 << n; half++)
            {
                if (int.PopCount(half) != n / 2) continue;
                questions.Add(Question(fabrics[i], null, half));
                owner.Add(i);
            }
        }
        double FlowOf(string answer) => JsonDocument.Parse(answer).RootElement.GetProperty("flow").GetDouble();
        var flows = Ask(questions).Zip(owner, (answer, i) => (i, Flow: FlowOf(answer)));
        foreach (var fabric in flows.GroupBy(f => f.i))
        {
            var ours = Bisection.Of(fabrics[fabric.Key].Graph, fabrics[fabric.Key].Terminals);
            Assert.Equal(fabric.Min(f => f.Flow), ours.AtMost.Gigabits, 1e-9);
        }
    }

    /// <summary>A ring with random chords and parallel links, a host of 4 Gb/s on each switch.</summary>
    private static KnownFabric Fabric(int seed)
    {
        var random = new Random(seed);
        var n = random.Next(4, 9);
        var links = Enumerable.Range(0, n).Select(i => (i, (i + 1) % n, random.Next(1, 3))).ToList();
        for (var chord = random.Next(0, n); chord > 0; chord--)
        {
            var (a, b) = (random.Next(n), random.Next(n));
            if (a != b) links.Add((a, b, random.Next(1, 4)));
        }
        var fabric = KnownFabric.Of(Enumerable.Repeat(1, n), links, Enumerable.Range(0, n).Select(s => (s, 1, 1000)));
        return fabric with { Terminals = [.. fabric.Terminals.Select(t => t with { Rate = BitRate.FromGigabits(4) })] };
    }

    private static LinkWorstCase Worst(KnownFabric fabric)
    {
        var ofOne = fabric.Terminals.Select(t => t with { Rate = KnownFabric.Unit });
        var worst = HoseWorstCase.Of(fabric.Graph, [.. ofOne], SplitRule.PathWeighted);
        return worst.Links.First(l => !fabric.Graph.Nodes[fabric.Graph.Links[l.Link].A].IsTerminal);
    }

    private static string Question(KnownFabric fabric, LinkWorstCase worst) =>
        Question(fabric, worst, (1 << (fabric.Terminals.Length / 2)) - 1);

    private static string Question(KnownFabric fabric, LinkWorstCase? worst, int half)
    {
        var n = fabric.Switches;
        var paths = new PathByPath(fabric.Graph);
        var crossings = worst is null ? [] :
            from a in fabric.Terminals
            from b in fabric.Terminals
            where a.Node != b.Node
            let side = (worst.Link * 2) + (worst.FromA ? 0 : 1)
            let part = paths.Shortest(a.Node, b.Node, perHop: false).Sum(p => p.Path.Contains(side) ? p.Chance : 0)
            where part > 0
            select new[] { a.Node, b.Node, (long)Math.Round(part * Parts) };
        return JsonSerializer.Serialize(new
        {
            switches = n,
            links = fabric.Graph.Links.Where(l => !fabric.Graph.Nodes[l.A].IsTerminal).Select(l => new[] { l.A, l.B, l.Count }),
            split = new[] { 1, 0 }.Select(side => Enumerable.Range(0, n).Where(s => ((half >> s) & 1) == side)),
            hosts = 4,
            crossings,
        });
    }

    private static List<string> Ask(IEnumerable<string> questions) =>
        Python.AskFile(Repository.Path("tests", "cases", "graph_reference.py"), questions);
}
