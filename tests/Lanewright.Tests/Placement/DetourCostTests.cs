using Lanewright.Deliverables;
using Lanewright.Model.Devices;
using Lanewright.Rules;

namespace Lanewright.Tests.Placement;

/// <summary>What placements say of cables that do not go the shortest way, and of groups that find no place.</summary>
public sealed class DetourCostTests
{
    private const string Ring = """
        lanewright: 1
        policy: { contingency: 0 % }
        sites: { main: { halls: { hall: { rows: { A: { racks: 40 }, B: { racks: 6, y: 4 m } }, pathways: {
          front: { from: { x: 0 m, y: 0 m }, to: { x: 24 m, y: 0 m }, width: 300 mm },
          back: { from: { x: 0 m, y: 4 m }, to: { x: 24 m, y: 4 m }, width: 300 mm },
          east: { from: { x: 24 m, y: 0 m }, to: { x: 24 m, y: 4 m }, width: 300 mm },
          west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: 300 mm } } } } } }
        devices:
          a: { model: fixed-32x400, racks: hall/A/1, unit: 2 }
          b: { model: fixed-32x400, racks: hall/B/1, unit: 40 }
        links:
          l: { from: a, to: b, count: 2, rate: 400G, type: 400GBASE-DR4 APART }
        """;

    // One of the two is led round the east end: what the links cost now is the price of both cords and the modules at their ends, as the
    // list of parts has them, and with a way that is longer than the shortest nothing is called proven.
    [Fact]
    public void CostNow_IsThatOfTheWaysCablesGo()
    {
        var (near, apart) = (Compile(""), Compile(", apart-from: l"));
        var (ofNear, ofApart) = (Placement(near), Placement(apart));
        Assert.Equal(0, ofNear.Detours);
        Assert.Equal(Priced(apart) - Priced(near), ofApart.Now - ofNear.Now, 2);
        Assert.Equal(ofApart.Now - ofNear.Now, ofApart.Detours, 2);
        Assert.True(ofApart.Detours > 0);
        Assert.False(ofApart.IsExact);
        Assert.Contains("kept apart", PlacementWords.Of(ofApart, "CU"), StringComparison.Ordinal);
    }

    // Six devices that stand one a rack, and one rack that may be used.
    [Fact]
    public void AGroupWithoutPlace_IsTold()
    {
        var designed = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 6 }, B: { racks: 1, y: 8 m } } } } } }
            devices:
              a: { model: fixed-32x400, racks: hall/A/1..6, unit: 2 }
              b: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
            links: { l1: { from: a, to: b, pattern: each-to-each, rate: 400G, type: 400GBASE-DR4 } }
            """));
        var answer = PlacementAnswer.Of(designed, [designed.Plan.Devices.Groups[0]], r => r.Row == "B");
        Assert.Empty(answer.Groups);
        var told = Assert.Single(answer.Placeless);
        Assert.Equal((6, 1), (told.Devices, told.Places));
        Assert.StartsWith("6 devices, and 1 free place", PlacementWords.Of(told), StringComparison.Ordinal);
    }

    private static Lanewright.Engineering.Placement.GroupPlacement Placement(DesignedPlan designed)
    {
        DeviceGroup group = designed.Plan.Devices.Groups.Single(g => g.Name == "a");
        return Assert.Single(PlacementAnswer.Of(designed, [group], r => r.Row == "A").Groups);
    }

    private static double Priced(DesignedPlan designed) => (double)Enumerable.Range(0, designed.Plan.Links.Count)
        .Sum(l => Lanewright.Engineering.Choice.Solution.NewPrice(designed.Design.SolutionOf(l)!)) / 100;

    private static DesignedPlan Compile(string apart) =>
        Expect.Designed(PlanBlock.Compile(Ring.Replace(" APART", apart, StringComparison.Ordinal)));
}
