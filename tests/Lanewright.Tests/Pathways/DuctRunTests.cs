using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Tests.Pathways;

/// <summary>Ducts that are pulled through at once: those in line are one run, whose length and bends are held against TIA-569.</summary>
public sealed class DuctRunTests
{
    // Worked by hand. Source of what a run is: TIA-569, 30 m and two bends of 90 degrees between places to pull from (memory).
    [Fact]
    public void DuctsInLine_AreOneRun()
    {
        var run = Assert.Single(Runs(Duct("a", 0, 0, 29, 0), Duct("b", 29, 0, 58, 0), Duct("c", 58, 0, 87, 0)));
        Assert.Equal(["a", "b", "c"], run.Ducts.Select(d => d.Name));
        Assert.Equal(87, run.Metres, 6);
        Assert.Equal(0, run.Degrees, 6);
    }

    [Fact]
    public void PlacesToPullFrom_DivideADuctEvenly()
    {
        // 29 m and the first of three parts of 30 m; what follows begins anew.
        var run = Assert.Single(Runs(Duct("a", 0, 0, 29, 0), Duct("b", 29, 0, 59, 0) with { PullPoints = 2 }, Duct("c", 59, 0, 64, 0)));
        Assert.Equal(29 + 10, run.Metres, 6);
    }

    [Fact]
    public void Bends_AreTheAnglesBetweenDucts()
    {
        var run = Assert.Single(Runs(
            Duct("a", 0, 0, 3, 0), Duct("b", 3, 0, 3, 3), Duct("c", 3, 3, 6, 6), Duct("d", 6, 6, 6, 9)));
        Assert.Equal(90 + 45 + 45, run.Degrees, 4);
        // A place to pull from parts them: 90 before it and 90 after it.
        var parted = Runs(
            Duct("a", 0, 0, 3, 0), Duct("b", 3, 0, 3, 3) with { PullPoints = 1 }, Duct("c", 3, 3, 6, 6), Duct("d", 6, 6, 6, 9));
        Assert.Equal(90, Assert.Single(parted).Degrees, 4);
    }

    [Fact]
    public void ATrayAtTheJoint_IsAPlaceToPullFrom() =>
        Assert.Equal(
            [29, 29], Runs(Duct("a", 0, 0, 29, 0), Duct("b", 29, 0, 58, 0), TrayGrid.Tray("t", 29, 0, 29, 5)).Select(r => r.Metres));

    [Fact]
    public void AJointOfThree_IsABox() =>
        Assert.Equal(3, Runs(Duct("a", 0, 0, 29, 0), Duct("b", 29, 0, 58, 0), Duct("c", 29, 0, 29, 9)).Count);

    [Fact]
    public void ARouteThatIsADuct_GoesOnWhereTheDuctOfTheHallEnds()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            sites: { main: { halls: {
              n: { exit: { x: 5 m, y: 0 m }, rows: { A: { racks: 2 } }, pathways: {
                d: { from: { x: 0 m, y: 0 m }, to: { x: 5 m, y: 0 m }, kind: duct, width: 50 mm } } },
              s: { rows: { A: { racks: 2 } } } } } }
            routes: { from: n, to: s, length: 28 m, kind: duct, width: 50 mm }
            devices: { a: { model: fixed-32x400, racks: n/A/1 }, b: { model: fixed-32x400, racks: s/A/1 } }
            links: { l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4 } }
            """);
        Assert.Equal(33, Assert.Single(Expect.Designed(judged).Pathways.Value.DuctRuns).Metres, 6);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW4112");
    }

    private static Pathway Duct(string name, double fromX, double fromY, double toX, double toY) =>
        TrayGrid.Tray(name, fromX, fromY, toX, toY) with { IsDuct = true, Width = Length.FromMillimetres(100) };

    private static List<DuctRun> Runs(params Pathway[] pathways) =>
        [.. DuctRun.Of(TrayGrid.Net(pathways, [TrayGrid.Rack(0, 0, 0)]))];
}
