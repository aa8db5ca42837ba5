using CsCheck;
using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>The worst case of all traffic: never beaten by traffic that is tried, met by its own matrix, and right where all can be
/// tried.</summary>
public sealed class HoseTests
{
    private static readonly SplitRule[] Rules = [SplitRule.PerHop, SplitRule.PathWeighted];

    [Fact]
    public void WorstCase_IsMetByItsMatrixAndBeatenByNone() => Gen.Select(RandomFabrics.Any, Gen.Int[0, 1]).Sample(d =>
    {
        var (fabric, rule) = (d.Item1, Rules[d.Item2]);
        var worst = HoseWorstCase.Of(fabric.Graph, fabric.Terminals, rule);
        Assert.True(worst.IsExact);
        foreach (var entry in worst.Links)
        {
            var loads = LoadSolver.OnShortestPaths(fabric.Graph, TrafficMatrix.Of(entry.Matrix), rule);
            var load = entry.FromA ? loads.GigabitsFromA(entry.Link) : loads.GigabitsFromB(entry.Link);
            Assert.Equal(entry.Utilisation.Value, load / fabric.Graph.Links[entry.Link].Gigabits, 1e-9);
            foreach (var end in entry.Matrix.GroupBy(f => f.From).Concat(entry.Matrix.GroupBy(f => f.To)))
            {
                var most = fabric.Terminals.Single(t => t.Node == end.Key);
                Assert.True(end.Sum(f => f.Rate.BitsPerSecond) <= (most.Rate * most.Members).BitsPerSecond);
            }
        }
        // A shift keeps to the hosts' rates, so it cannot fill a link more.
        var tried = LoadSolver.OnShortestPaths(fabric.Graph, TrafficMatrix.Shift(fabric.Terminals, 1), rule);
        Assert.True(tried.MaxUtilisation.Value <= (worst.Worst?.Utilisation.Value ?? 0) + 1e-9);
    });

    [Fact]
    public void Transportation_OfOneEach_IsTheBestOfAllAssignments() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[1, 6], Gen.Double[0, 1].Array[30]).Sample(d =>
        {
            var (rows, columns, values) = d;
            var worth = new double[rows, columns];
            for (var r = 0; r < rows; r++)
                for (var c = 0; c < columns; c++) worth[r, c] = values[(r * 6) + c];
            var solved = Transportation.Of([.. Enumerable.Repeat(1L, rows)], [.. Enumerable.Repeat(1L, columns)], worth);
            Assert.Equal(Best(worth, 0, 0), Worth(solved, worth), 1e-9);
            Assert.Equal(Worth(solved, worth), solved.AtMost, 1e-9);
        });

    [Fact]
    public void Transportation_OfUnlikeAmounts_IsTheAssignmentOfTheirUnits() =>
        Gen.Select(Gen.Long[1, 3].Array[2], Gen.Long[1, 3].Array[3], Gen.Double[0, 1].Array[6]).Sample(d =>
        {
            var (supply, demand, values) = d;
            var worth = new double[2, 3];
            for (var i = 0; i < 6; i++) worth[i / 3, i % 3] = values[i];
            int[] rowOf = [.. Enumerable.Range(0, 2).SelectMany(r => Enumerable.Repeat(r, (int)supply[r]))];
            int[] columnOf = [.. Enumerable.Range(0, 3).SelectMany(c => Enumerable.Repeat(c, (int)demand[c]))];
            var units = new double[rowOf.Length, columnOf.Length];
            for (var r = 0; r < rowOf.Length; r++)
                for (var c = 0; c < columnOf.Length; c++) units[r, c] = worth[rowOf[r], columnOf[c]];
            var solved = Transportation.Of(supply, demand, worth);
            Assert.Equal(Best(units, 0, 0), Worth(solved, worth), 1e-9);
            Assert.Equal(Worth(solved, worth), solved.AtMost, 1e-9);
        }, iter: 50);

    [Fact]
    public void IdealSplit_HasNoFixedShares()
    {
        var fabric = KnownFabric.LeafSpine(2, 2, 1);
        Assert.Throws<ArgumentException>(() => HoseWorstCase.Of(fabric.Graph, fabric.Terminals, SplitRule.Ideal));
    }

    private static double Best(double[,] worth, int row, int taken)
    {
        if (row == worth.GetLength(0)) return 0;
        var best = Best(worth, row + 1, taken);
        for (var c = 0; c < worth.GetLength(1); c++)
            if (((taken >> c) & 1) == 0) best = Math.Max(best, worth[row, c] + Best(worth, row + 1, taken | (1 << c)));
        return best;
    }

    private static double Worth(Transportation solved, double[,] worth)
    {
        var sum = 0.0;
        for (var r = 0; r < worth.GetLength(0); r++)
            for (var c = 0; c < worth.GetLength(1); c++) sum += worth[r, c] * solved.Sent[r, c];
        return sum;
    }

    /// <summary>The pruned search finds the same fullest link as all classes solved.</summary>
    [Theory]
    [InlineData(16, 3, 1)]
    [InlineData(20, 4, 2)]
    [InlineData(30, 5, 3)]
    public void FullestAlone_IsTheFullestOfAll(int switches, int degree, ulong seed)
    {
        var fabric = KnownFabric.RandomRegular(switches, degree, seed);
        var all = HoseWorstCase.Of(fabric.Graph, fabric.Terminals, SplitRule.PerHop);
        var alone = HoseWorstCase.OfFullest(fabric.Graph, fabric.Terminals, SplitRule.PerHop);
        Assert.Equal(all.Worst?.Utilisation.Value ?? -1, alone.Worst?.Utilisation.Value ?? -2, 1e-12);
        Assert.Equal(all.Worst?.Link, alone.Worst?.Link);
        Assert.True(alone.Links.Length < all.Links.Length);
    }
}
