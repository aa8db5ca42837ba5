using CsCheck;
using Lanewright.Engineering.Placement;

namespace Lanewright.Tests.Placement;

/// <summary>Orders in which pairs cost by both places, against a published optimum and every order.</summary>
public sealed class QuadraticAssignmentTests
{
    // Source: C. E. Nugent, T. E. Vollmann and J. Ruml 1968, the instance of five facilities: 50 with each pair counted from both sides
    // (memory; reproduced by every order).
    [Fact]
    public void FiveFacilities_CostWhatIsPublished()
    {
        int[,] flow = { { 0, 5, 2, 4, 1 }, { 5, 0, 3, 0, 2 }, { 2, 3, 0, 0, 0 }, { 4, 0, 0, 0, 5 }, { 1, 2, 0, 5, 0 } };
        int[,] distance = { { 0, 1, 1, 2, 3 }, { 1, 0, 2, 1, 2 }, { 1, 2, 0, 1, 2 }, { 2, 1, 1, 0, 1 }, { 3, 2, 2, 1, 0 } };
        var between = new double[5, 5, 5, 5];
        foreach (var (i, p, j, q) in Indices(5)) between[i, p, j, q] = flow[i, j] * distance[p, q];
        var (places, cost, noLessThan) = QuadraticAssignment.Solve(new double[5, 5], between, [0, 1, 2, 3, 4]);
        Assert.Equal(50, cost, 9);
        Assert.Equal(50, noLessThan, 9);
        Assert.Equal(50, QuadraticAssignment.Cost(new double[5, 5], between, places), 9);
        Assert.Equal(50, Orders(5).Min(o => QuadraticAssignment.Cost(new double[5, 5], between, o)), 9);
    }

    // Source: brute force over every order of up to six things, with costs of their own and costs that differ by direction.
    [Fact]
    public void Order_IsTheCheapestOfAll()
    {
        Gen.Select(Gen.Int[1, 6], Gen.Int[0, 9].Array[36], Gen.Int[0, 9].Array[1296]).Sample(
            (count, own, pairs) =>
            {
                var (alone, between) = (new double[count, count], new double[count, count, count, count]);
                foreach (var (i, p, j, q) in Indices(count))
                {
                    alone[i, p] = own[(i * 6) + p];
                    between[i, p, j, q] = i == j ? 0 : pairs[(((((i * 6) + p) * 6) + j) * 6) + q];
                }
                var (places, cost, noLessThan) = QuadraticAssignment.Solve(alone, between, [.. Enumerable.Range(0, count)]);
                var least = Orders(count).Min(o => QuadraticAssignment.Cost(alone, between, o));
                Assert.Equal(least, cost, 6);
                Assert.Equal(cost, noLessThan, 6);
                Assert.Equal(cost, QuadraticAssignment.Cost(alone, between, places), 6);
                Assert.Equal(count, places.Distinct().Count());
            },
            iter: 100);
    }

    // What is broken off is no proof: of 14 things at distances along a line no order found may go below the bound, and the bound lies
    // below every one of a thousand random orders.
    [Fact]
    public void BrokenOffSearch_TellsABoundThatHolds()
    {
        const int count = 14;
        var random = new Random(20261126);
        var flow = new int[count, count];
        for (var i = 0; i < count; i++)
            for (var j = 0; j < i; j++) flow[i, j] = random.Next(10);
        var between = new double[count, count, count, count];
        foreach (var (i, p, j, q) in Indices(count)) between[i, p, j, q] = flow[i, j] * Math.Abs(p - q);
        int[] order = [.. Enumerable.Range(0, count)];
        var alone = new double[count, count];
        var (_, cost, noLessThan) = QuadraticAssignment.Solve(alone, between, order);
        Assert.InRange(noLessThan, 1, cost - 1);
        for (var k = 0; k < 1000; k++)
        {
            random.Shuffle(order);
            Assert.True(QuadraticAssignment.Cost(alone, between, order) > noLessThan);
        }
    }

    private static IEnumerable<(int I, int P, int J, int Q)> Indices(int count)
    {
        var all = Enumerable.Range(0, count).ToList();
        return from i in all from p in all from j in all from q in all select (i, p, j, q);
    }

    private static IEnumerable<int[]> Orders(int count) => count == 0
        ? [[]]
        : Orders(count - 1).SelectMany(o => Enumerable.Range(0, count).Select(at => (int[])[.. o[..at], count - 1, .. o[at..]]));
}
