using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Tests.Pathways;

/// <summary>Racks that cables come down to from pathways at several heights: which is nearest depends on the device.</summary>
public sealed class WayHeightTests
{
    // Worked by hand: the second unit is 0.15 m and one and a half units of 44.45 mm above the floor, 0.216675 m. Overhead 2.6 m it goes
    // up 2.383325 m at both ends, under floor -0.4 m down 0.616675 m at both; the racks stand 3 m apart, and the tray under the floor
    // leads 1.7 m farther.
    [Theory]
    [InlineData(2, "floor", 3 + 1.7 + (2 * 0.616675))]
    [InlineData(40, "over", 3 + (2 * (2.6 - 0.15 - (39.5 * 0.04445))))]
    public void ADevice_TakesTheTrayThatIsNearerToIt(int unit, string tray, double metres)
    {
        var designed = Expect.Designed(PlanBlock.Compile($$"""
            lanewright: 1
            policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
            racks: { standard: { plinth: 150 mm } }
            sites: { main: { halls: { hall: { rows: { A: { racks: 6 } }, pathways: {
              over: { from: { x: 0 m, y: 0 m }, to: { x: 4 m, y: 0 m }, width: 300 mm },
              floor: { from: { x: 0 m, y: -0.85 m, height: -0.4 m }, to: { x: 4 m, y: -0.85 m, height: -0.4 m }, width: 300 mm } } } } } }
            devices:
              a: { model: fixed-32x400, racks: hall/A/1, unit: {{unit}} }
              b: { model: fixed-32x400, racks: hall/A/6, unit: {{unit}} }
            links: { up: { from: a, to: b, rate: 400G, type: 400GBASE-DR4 } }
            """));
        Assert.Equal([$"hall/{tray}"], designed.Pathways.Value.Through(0));
        Assert.Equal(metres, designed.Pathways.Value.LengthOf(0)!.Value.Metres, 6);
    }

    // Worked by hand: seven cords of 3.0 mm have room in half of 10 mm by 10 mm; the eighth goes overhead, 2 x (2.383325 - 0.616675) m more
    // up and down and 1.7 m less across.
    [Fact]
    public void ACableThatIsMoved_IsMeasuredFromItsDevice()
    {
        var designed = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
            racks: { standard: { plinth: 150 mm } }
            sites: { main: { halls: { hall: { rows: { A: { racks: 6 } }, pathways: {
              over: { from: { x: 0 m, y: 0 m }, to: { x: 4 m, y: 0 m }, width: 300 mm },
              floor: { from: { x: 0 m, y: -0.85 m, height: -0.4 m }, to: { x: 4 m, y: -0.85 m, height: -0.4 m },
                width: 10 mm, depth: 10 mm } } } } } }
            devices: { a: { model: fixed-32x400, racks: hall/A/1, unit: 2 }, b: { model: fixed-32x400, racks: hall/A/6, unit: 2 } }
            links: { up: { from: a, to: b, count: 8, rate: 400G, type: 400GBASE-DR4, cord: cord-os2-mpo12 } }
            """));
        Assert.Equal(["hall/over"], designed.Pathways.Value.Through(7));
        Assert.Equal((2 * (2.383325 - 0.616675)) - 1.7, Assert.Single(designed.Pathways.Value.Detours.Moves).MoreMetres, 6);
    }

    // Where all pathways lie above the racks every device has the same nearest one, and what leaves a rack is one question.
    [Fact]
    public void PathwaysAboveARack_AreOneQuestion()
    {
        var (low, high) = (TrayGrid.Tray("low", 0, 0, 4, 0), At(TrayGrid.Tray("high", 0, 1, 4, 1), 3));
        var racks = new[] { TrayGrid.Rack(0, 1, 0), TrayGrid.Rack(1, 3, 0) };
        Assert.Equal(WayQuestion.Between(0, 1, 0), Question(TrayGrid.Net([low, high], racks), racks, 0.3, 1.2));
        Assert.NotEqual(WayQuestion.Between(0, 1, 0), Question(TrayGrid.Net([low, At(high, -0.4)], racks), racks, 0.3, 1.2));
    }

    // Two independent ways: a search from the middle of a rack needs no heights, so racks with their middle where a device is have the
    // same shortest ways.
    [Fact]
    public void WaysBetweenHeights_AreThoseOfRacksWithTheirMiddleThere()
    {
        var (compared, mixed) = (0, 0);
        Gen.Select(Gen.Int[2, 4], Gen.Int[2, 4], Gen.Int[0, 5].Array[40], Gen.Double[0.5, 2].Array[12], Gen.Int[1, 94].Array[2]).Sample(
            (rows, columns, kinds, steps, units) =>
            {
                var heights = new[] { 2.6, 2.6, -0.4, 1.2, 0.9 };
                var trays = TrayGrid.Grid(rows, columns, [.. kinds.Select(k => k < 5)], steps)
                    .Select((t, i) => At(t, heights[kinds[i] % 5])).ToList();
                if (trays.Count < 2) return;
                var racks = new[] { 0, trays.Count - 1 }
                    .Select((t, i) => Upright(TrayGrid.Rack(i, trays[t].FromX.Metres + 0.2, trays[t].FromY.Metres - 0.1), 94)).ToArray();
                var (one, other) = (Middle(units[0]), Middle(units[1]));
                var net = TrayGrid.Net(trays, racks);
                var question = Question(net, racks, one, other);
                var moved = TrayGrid.Net(trays, racks.Select((r, i) => Upright(r, units[i])));
                var (found, expected) = (new ShortestWays(net).Between(question), TrayGrid.Way(moved, 0, 1));
                Assert.Equal(expected is null, found is null);
                if (found is null || expected is null) return;
                Assert.Equal(From(expected, one, other), From(found, one, other), 9);
                var expecting = new ShortestWays(net);
                expecting.Expect([question]);
                Assert.Equal(found, expecting.Between(question));
                compared++;
                if (question != WayQuestion.Between(0, 1, 0)) mixed++;
            },
            iter: 500, threads: 1);
        Assert.True(compared > 100 && mixed > 100, $"{compared} compared, {mixed} of them at several heights");
    }

    // By hand: from 0.2 m two ways go down to the floor on either side, 4.6 m long with the drops; overhead is farther.
    [Fact]
    public void TwoWaysApart_AreThoseNearestToTheDevices()
    {
        var trays = new[]
        {
            At(TrayGrid.Tray("floor-left", 0, 0, 4, 0), -0.4), At(TrayGrid.Tray("floor-right", 0, 0.5, 4, 0.5), -0.4),
            TrayGrid.Tray("over-left", 0, 0, 4, 0), TrayGrid.Tray("over-right", 0, 0.5, 4, 0.5),
        };
        var net = TrayGrid.Net(trays, [TrayGrid.Rack(0, 0, 0.25), TrayGrid.Rack(1, 4, 0.25)]);
        Assert.Equal(["floor-left", "floor-right"], Pair(0.2));
        Assert.Equal(["over-left", "over-right"], Pair(2.2));

        IEnumerable<string> Pair(double height)
        {
            var end = Length.FromMetres(height);
            var (one, other) = new DisjointSearch(net).Find((0, end), (1, end), (1, end), 0)!.Value;
            return TrayGrid.Names(net, one).Concat(TrayGrid.Names(net, other)).Order();
        }
    }

    private static Pathway At(Pathway tray, double height) =>
        tray with { FromHeight = Length.FromMetres(height), ToHeight = Length.FromMetres(height) };

    /// <summary>A rack of so many units that stands on the floor.</summary>
    private static Rack Upright(Rack rack, int units) => rack with { Type = rack.Type with { Units = units, Plinth = default } };

    private static double Middle(int units) => units * 0.04445 / 2;

    private static double From(CableWay way, double one, double other) =>
        way.Metres + Math.Abs(way.LowHeight - one) + Math.Abs(way.HighHeight - other);

    private static WayQuestion Question(WayNet net, Rack[] racks, double one, double other) =>
        net.QuestionOf(racks[0], Length.FromMetres(one), racks[1], Length.FromMetres(other), 0);
}
