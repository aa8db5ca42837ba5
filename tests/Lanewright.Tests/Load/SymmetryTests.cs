using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Classes of links and nodes: as few as is known for well-known fabrics, and never merged where graphs only look
/// alike.</summary>
public sealed class SymmetryTests
{
    public static TheoryData<int> Radices => [4, 8, 16];

    [Theory]
    [MemberData(nameof(Radices))]
    public void FatTree_HasThreeClassesOfLinks(int k)
    {
        var fabric = KnownFabric.FatTree(k);
        var classes = SymmetryClasses.Of(fabric.Graph, fabric.AllToAll);
        Assert.Equal([k * k * k / 4, k * k * k / 4, k * k / 2], Sizes(classes.LinkClasses));
        Assert.Equal(4, Sizes(classes.NodeClasses).Count());
    }

    [Fact]
    public void FatTree_UnderAShiftByHalf_KeepsItsClasses()
    {
        var fabric = KnownFabric.FatTree(8);
        var classes = SymmetryClasses.Of(fabric.Graph, TrafficMatrix.Shift(fabric.Terminals, (int)fabric.Hosts / 2));
        Assert.Equal(3, Sizes(classes.LinkClasses).Count());
    }

    [Fact]
    public void LeafSpine_HasOneClassOfUplinks() =>
        Assert.Equal([32, 8], Sizes(SymmetryClasses.Of(KnownFabric.LeafSpine(8, 4, 4, 2).Graph).LinkClasses));

    /// <summary>The Hoffman-Singleton graph is arc-transitive; published (Hoffman, Singleton 1960), `memory`.</summary>
    [Fact]
    public void HoffmanSingleton_HasOneClassOfLinks() =>
        Assert.Equal([175, 50], Sizes(SymmetryClasses.Of(KnownFabric.SlimFly(5, 4).Graph).LinkClasses));

    /// <summary>2q^2 switches with (3q - d)/2 links each, no two more than two apart; Besta, Hoefler, SC 2014, `memory`.</summary>
    [Theory]
    [InlineData(7, 98, 11)]
    [InlineData(13, 338, 19)]
    public void SlimFly_IsRegularAndTwoStepsWide(int q, int switches, int radix)
    {
        var fabric = KnownFabric.SlimFly(q, 1);
        Assert.Equal((switches, switches * radix / 2), (fabric.Switches, fabric.FabricLinks));
        Assert.Equal(2 + 2, HopCounts.Of(fabric.Graph)?.Longest);
        Assert.True(Sizes(SymmetryClasses.Of(fabric.Graph).LinkClasses).Count() <= 7);
    }

    [Fact]
    public void RingsOfSixAndThree_StayApart()
    {
        (int, int, int)[] links =
        [
            (0, 1, 1), (1, 2, 1), (2, 3, 1), (3, 4, 1), (4, 5, 1), (5, 0, 1),
            (6, 7, 1), (7, 8, 1), (8, 6, 1), (9, 10, 1), (10, 11, 1), (11, 9, 1),
        ];
        var classes = SymmetryClasses.Of(Bare(12, links)).NodeClasses;
        Assert.Equal([.. Enumerable.Repeat(0, 6), .. Enumerable.Repeat(6, 6)], classes);
    }

    /// <summary>Two strongly regular graphs with parameters (16, 6, 2, 2) that are not isomorphic: the rook's graph of a 4 by 4 board,
    /// and Shrikhande's (1959), `memory`. Counting neighbours, and neighbours of neighbours, cannot tell them apart.</summary>
    [Fact]
    public void StronglyRegularTwins_StayApart()
    {
        bool Rook(int a, int b) => a / 4 == b / 4 || a % 4 == b % 4;
        bool Shrikhande(int a, int b) =>
            (((b / 4) - (a / 4) + 4) % 4, ((b % 4) - (a % 4) + 4) % 4) is (0, 1) or (0, 3) or (1, 0) or (3, 0) or (1, 1) or (3, 3);
        IEnumerable<(int, int, int)> Links(Func<int, int, bool> joined, int start) =>
            from a in Enumerable.Range(0, 16)
            from b in Enumerable.Range(a + 1, 15 - a)
            where joined(a, b)
            select (start + a, start + b, 1);
        (int, int, int)[] links = [.. Links(Rook, 0), .. Links(Shrikhande, 16)];
        Assert.Equal(96, links.Length);
        var classes = SymmetryClasses.Of(Bare(32, links));
        Assert.Equal([.. Enumerable.Repeat(0, 16), .. Enumerable.Repeat(16, 16)], classes.NodeClasses);
        Assert.Equal([48, 48], Sizes(classes.LinkClasses));
    }

    [Fact]
    public void UnlikeTraffic_TellsLikeLeavesApart()
    {
        var fabric = KnownFabric.LeafSpine(4, 2, 4);
        var classes = SymmetryClasses.Of(fabric.Graph, TrafficMatrix.Incast([.. fabric.Terminals.Skip(1)], fabric.Terminals[0].Node));
        Assert.Equal([0, 1, 1, 1], classes.NodeClasses.Take(4));
    }

    [Fact]
    public void LinksThatFailTogether_AreLikeOnlyWhereTheirPlacesAre()
    {
        // Every leaf has its uplinks in pairs by cable, every spine its downlinks in pairs by module.
        var fabric = KnownFabric.LeafSpine(4, 4, 4);
        FailureUnit Unit(FailureKind kind, int one, int two) =>
            new($"{kind}{one}-{two}", kind, Outage.OfLink(one).With(Outage.OfLink(two)));
        var cables = Enumerable.Range(0, 8).Select(i => Unit(FailureKind.Cable, i * 2, (i * 2) + 1));
        var modules = Enumerable.Range(0, 8).Select(i => Unit(FailureKind.Module, (i % 4) + (i / 4 * 8), (i % 4) + (i / 4 * 8) + 4));
        Assert.Equal([8, 8], ClassSizes(fabric, [.. cables, .. modules]));
        // The same leaf twice, or two leaves: different things, though both are two links and are called the same.
        Assert.Equal([8, 8], ClassSizes(fabric, [.. cables, .. modules.Select(m => m with { Kind = FailureKind.Cable })]));
    }

    private static IEnumerable<int> ClassSizes(KnownFabric fabric, FailureUnit[] units)
    {
        var sweep = FailureSweep.Of(fabric.Graph, fabric.AllToAll, SplitRule.PerHop, [.. units]);
        Assert.NotNull(sweep);
        foreach (var alike in sweep.Classes)
            foreach (var unit in alike.Units)
                Assert.Equal(alike.MaxUtilisation.Value, Fullest(fabric, units[unit]), 1e-12);
        return sweep.Classes.Select(c => c.Size).OrderDescending();
    }

    private static double Fullest(KnownFabric fabric, FailureUnit unit) =>
        LoadSolver.OnShortestPaths(fabric.Graph.Without(unit.Outage), fabric.AllToAll, SplitRule.PerHop).MaxUtilisation.Value;

    private static IEnumerable<int> Sizes(IEnumerable<int> classes) =>
        classes.GroupBy(c => c).Select(c => c.Count()).OrderDescending();

    private static FabricGraph Bare(int switches, IEnumerable<(int, int, int)> links) =>
        KnownFabric.Of(Enumerable.Repeat(1, switches), links, []).Graph;
}
