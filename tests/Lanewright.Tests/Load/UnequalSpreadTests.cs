using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>The closed forms against the engine on the same fabric.</summary>
public sealed class UnequalSpreadTests
{
    [Theory]
    [InlineData(new[] { 2, 1, 1 }, new[] { 1, 2, 1 })]
    [InlineData(new[] { 2, 2, 2 }, new[] { 2, 2, 2 })]
    [InlineData(new[] { 3, 1, 0 }, new[] { 1, 2, 1 })]
    [InlineData(new[] { 1, 0, 1, 4 }, new[] { 2, 2, 1, 1 })]
    public void WorstLink_IsTheEngines(int[] sending, int[] receiving)
    {
        // Two leaves that send each other as much as the receiving leaf has links: the even share is 1.
        var links = new List<(int, int, int)>();
        for (var s = 0; s < sending.Length; s++)
        {
            if (sending[s] > 0) links.Add((0, 2 + s, sending[s]));
            if (receiving[s] > 0) links.Add((1, 2 + s, receiving[s]));
        }
        var fabric = KnownFabric.Of(Enumerable.Repeat(1, 2 + sending.Length), links, [(0, 1, receiving.Sum()), (1, 1, receiving.Sum())]);
        var all = new Flow(fabric.Terminals[0].Node, fabric.Terminals[1].Node, fabric.Terminals[0].Rate);
        var loads = LoadSolver.OnShortestPaths(fabric.Graph, TrafficMatrix.Of([all]), SplitRule.PerHop);
        var worst = Enumerable.Range(0, links.Count).Where(l => fabric.Graph.Links[l].A == 1).Max(l => loads.Utilisation(l).Value);
        Assert.Equal(worst, UnequalSpread.Worst([.. sending], [.. receiving])?.Value ?? 0, 1e-12);
    }

    [Fact]
    public void LeavesWithoutACommonSpine_HaveNoShare() => Assert.Null(UnequalSpread.Worst([1, 0], [0, 1]));

    /// <summary>All ways to place the flows, counted; `derived`.</summary>
    [Theory]
    [InlineData(4, 3)]
    [InlineData(5, 2)]
    [InlineData(3, 5)]
    [InlineData(3, 1)]
    public void Collisions_AreThoseOfAllPlacements(int flows, int links)
    {
        var (apart, busy, most, sharing, all) = (0.0, 0.0, 0.0, 0.0, Math.Pow(links, flows));
        for (var placement = 0; placement < all; placement++)
        {
            var on = new int[links];
            for (var (flow, rest) = (0, placement); flow < flows; flow++, rest /= links) on[rest % links]++;
            apart += on.Max() == 1 ? 1 : 0;
            busy += on.Count(n => n > 0);
            most += on.Max();
            sharing += on.Where(n => n > 1).Sum();
        }
        var found = HashCollisions.Of(flows, links);
        Assert.Equal(apart / all, found.NoCollision.Value, 1e-12);
        Assert.Equal(busy / all, found.BusyLinks, 1e-12);
        Assert.Equal(most / all, found.BusiestFlows, 1e-12);
        Assert.Equal(sharing / all, found.SharingFlows, 1e-12);
        Assert.Equal(busy / all / flows, found.Throughput.Value, 1e-12);
    }
}
