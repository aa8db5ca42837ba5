using System.Collections.Immutable;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Bench;

/// <summary>Ways of many cables along a grid of trays: making the graph, and the way of every cable between racks at random
/// places.</summary>
internal static class WaysBench
{
    private const int Runs = 3;

    /// <summary>Prints a line a number of cables, for a hall of about 5,000 points and for one twice as large.</summary>
    public static void Run(IReadOnlyList<int> sizes)
    {
        Run(sizes, 34, 1000);
        Run(sizes, 54, 2000);
    }

    private static void Run(IReadOnlyList<int> sizes, int lines, int racks)
    {
        Console.WriteLine();
        var (building, nodes) = Grid(lines, racks);
        Console.WriteLine($"ways of cables: {Numerals.Whole(nodes)} points of trays and racks, {Numerals.Whole(racks)} racks");
        var before = (Cables: 0, Time: 0.0);
        foreach (var cables in sizes)
        {
            var stretches = 0L;
            var time = Clock.Best(Runs, () =>
            {
                stretches = 0;
                var ways = new ShortestWays(WayNet.Of(building, StandardsLibrary.Shipped));
                var questions = Questions(cables, racks).ToList();
                ways.Expect(questions.Distinct());
                foreach (var question in questions) stretches += ways.Between(question)?.Stretches.Length ?? 0;
            });
            var growth = before.Cables > 0
                ? $", {Numerals.Fixed(time / before.Time, 2)} times for {cables / before.Cables} times the cables"
                : "";
            Console.WriteLine($"  {Numerals.Whole(cables)} cables: {Numerals.Fixed(time, 0)} ms, {Numerals.Whole(stretches)} stretches"
                + growth);
            before = (cables, time);
        }
        var net = WayNet.Of(building, StandardsLibrary.Shipped);
        WaysReference.Run(net);
        Pairs(net);
    }

    /// <summary>Two ways without a stretch in common, for racks at random places.</summary>
    private static void Pairs(WayNet net)
    {
        const int pairs = 200;
        var time = Clock.Best(2, () =>
        {
            var search = new DisjointSearch(net);
            var (state, racks) = (3UL, net.Building.Racks.Length);
            for (var i = 0; i < pairs; i++)
            {
                var (from, to) = (Next(ref state, racks), Next(ref state, racks));
                if (from != to) _ = search.Find((from, null), (to, null), (to, null), 0);
            }
        });
        Console.WriteLine($"  {Numerals.Whole(pairs)} pairs of ways apart: {Numerals.Fixed(time, 0)} ms");
    }

    private static IEnumerable<WayQuestion> Questions(int cables, int racks)
    {
        var state = 1UL;
        for (var cable = 0; cable < cables; cable++)
        {
            var (from, to) = (Next(ref state, racks), Next(ref state, racks));
            if (from != to) yield return WayQuestion.Between(from, to, 0);
        }
    }

    private static int Next(ref ulong state, int racks)
    {
        state = unchecked((state * 6364136223846793005UL) + 1442695040888963407UL);
        return (int)((state >> 33) % (ulong)racks);
    }

    private static (Building Building, int Nodes) Grid(int lines, int count)
    {
        const double step = 1.2;
        var hall = new Hall(0, "site", "hall", Length.FromMetres(2.6), default, default, default);
        Pathway Tray(string name, double fromX, double fromY, double toX, double toY) => new(
            hall, name, Length.FromMetres(fromX), Length.FromMetres(fromY), Length.FromMetres(toX), Length.FromMetres(toY),
            Length.FromMillimetres(300), Length.FromMillimetres(100), false, default);
        var far = (lines - 1) * step;
        var trays = Enumerable.Range(0, lines).SelectMany(i => new[]
        {
            Tray($"h{i}", 0, i * step, far, i * step), Tray($"v{i}", i * step, 0, i * step, far),
        });
        var type = new RackType(
            "rack", 48, Length.FromMillimetres(600), Length.FromMillimetres(1200), Length.FromMillimetres(150), default);
        var state = 7UL;
        var racks = Enumerable.Range(0, count)
            .Select(i => new Rack(i, hall, "R", i + 1, Somewhere(), Somewhere(), type))
            .ToImmutableArray();
        var building = new Building([hall], racks, []) { Pathways = [.. trays] };
        return (building, WayNet.Of(building, StandardsLibrary.Shipped).Points.Length);

        Length Somewhere() => Length.FromMetres(far * Next(ref state, count) / count);
    }
}
