using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Tests.Deliverables;

namespace Lanewright.Tests.Pathways;

/// <summary>Where ways end in the open, where they bend too much, and what is counted once.</summary>
public sealed class WayFaultTests
{
    private const string TwoHalls = """
        lanewright: 1
        sites: { main: { halls: {
          h1: { exit: { x: 20 m, y: 0 m }, rows: { A: { racks: 3 } }, pathways: {
            t: { from: { x: 0 m, y: 0 m }, to: { x: TO, y: 0 m }, width: 100 mm },
            atexit: { from: { x: FROM, y: 0 m }, to: { x: 20 m, y: 0 m }, width: 100 mm } } },
          h2: { rows: { A: { racks: 3 } } } } } }
        routes: { from: h1, to: h2, length: 20 m }
        devices: { a: { model: fixed-32x400, racks: h1/A/1, unit: 40 }, b: { model: fixed-32x400, racks: h2/A/1, unit: 40 } }
        links: { up: { from: a, to: b, count: 3, rate: 400G, type: 400GBASE-DR4 } }
        """;

    // The tray over the racks does not meet the tray at the exit: all that goes to the other hall hangs between.
    [Fact]
    public void AGapOnTheWayToTheExit_IsTold()
    {
        var judged = PlanBlock.Compile(Halls("4 m", "15 m"));
        var finding = Assert.Single(judged.Findings, f => f.Kind.Code == "LW4103");
        Assert.Equal(3, finding.Count);
        Assert.Contains("in h1 the", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain(PlanBlock.Compile(Halls("15 m", "15 m")).Findings, f => f.Kind.Code == "LW4103");
    }

    [Theory]
    [InlineData("18.3 m", false)]
    [InlineData("18.1 m", true)]
    public void AnExitFartherThanCablesReach_IsTold(string to, bool isTold)
    {
        // Worked by hand: 1.7 m and 1.9 m to the exit against 1.8 m (common practice: a rack's depth and width).
        var judged = PlanBlock.Compile(Halls(to, "0 m")
            .Replace("to: { x: 20 m, y: 0 m }", "to: { x: 5 m, y: 0 m }", StringComparison.Ordinal));
        Assert.Equal(isTold, judged.Findings.Any(f => f.Kind.Code == "LW4121"));
    }

    // A tray laid beside a full one takes what is too much: the racks reach both.
    [Theory]
    [InlineData("0.2", true)]
    [InlineData("1.7", true)]
    [InlineData("1.9", false)]
    public void ATrayBeside_IsReached_AsFarAsCablesGoUnsupported(string off, bool isReached)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 6 } }, pathways: {
              t1: { from: { x: 0 m, y: 0 m }, to: { x: 4 m, y: 0 m }, width: 10 mm, depth: 10 mm },
              t2: { from: { x: 0 m, y: {{off}} m }, to: { x: 4 m, y: {{off}} m }, width: 300 mm } } } } } }
            devices: { a: { model: fixed-32x400, racks: hall/A/1, unit: 40 }, b: { model: fixed-32x400, racks: hall/A/6, unit: 40 } }
            links: { up: { from: a, to: b, count: 20, rate: 400G, type: 400GBASE-DR4 } }
            """);
        Assert.Equal(!isReached, judged.Findings.Any(f => f.Kind.Code == "LW4101"));
        Assert.Equal(isReached, Expect.Designed(judged).Pathways.Value.Fills.Where(f => f.Pathway.Name == "t2").Sum(f => f.Cables) > 0);
    }

    // Of trays in line a rack is under one: it does not hang its cables over to the next.
    [Fact]
    public void TraysInLine_AreNotReachedAcross()
    {
        var net = TrayGrid.Net(
            [TrayGrid.Tray("west", 0, 0, 2, 0), TrayGrid.Tray("east", 2, 0, 4, 0)], [TrayGrid.Rack(0, 1.5, 0), TrayGrid.Rack(1, 3.5, 0)]);
        Assert.Equal(["west", "east"], TrayGrid.Names(net, TrayGrid.Way(net, 0, 1)));
        Assert.Equal(1, net.EdgesAt(net.PointOf(0)).Length);
        net = TrayGrid.Net(
            [TrayGrid.Tray("west", 0, 0, 2, 0), TrayGrid.Tray("east", 2.5, 0, 4, 0)], [TrayGrid.Rack(0, 1.5, 0), TrayGrid.Rack(1, 3.5, 0)]);
        Assert.Null(TrayGrid.Way(net, 0, 1));
    }

    // Worked by hand: by the three trays that are nearest 10, 6.6 and 10 m; by the one across, to which nothing leads from these, 0.3 m
    // out, 6.6 m and 0.3 m back.
    [Fact]
    public void ATrayAcross_IsReached_AsFarAsCablesGoUnsupported()
    {
        var around = new[]
        {
            TrayGrid.Tray("f1", 0.3, 0, 0.3, -10), TrayGrid.Tray("f2", 0.3, -10, 6.9, -10), TrayGrid.Tray("f3", 6.9, -10, 6.9, 0),
        };
        var racks = new[] { TrayGrid.Rack(0, 0.3, 0), TrayGrid.Rack(1, 6.9, 0) };
        Assert.Equal(10 + 6.6 + 10, TrayGrid.Way(TrayGrid.Net(around, racks), 0, 1)!.Metres, 9);
        foreach (var (off, metres) in new[] { (0.3, 0.3 + 6.6 + 0.3), (1.7, 1.7 + 6.6 + 1.7), (1.9, 10 + 6.6 + 10) })
        {
            var net = TrayGrid.Net([.. around, TrayGrid.Tray("back", 0, off, 7.2, off)], racks);
            Assert.Equal(metres, TrayGrid.Way(net, 0, 1)!.Metres, 9);
        }
    }

    // A rack comes down from two trays that meet over it once, and from each of two at different heights.
    [Fact]
    public void TraysThatCross_AreOneDrop_WhereARackIsUnderBoth()
    {
        var (along, across) = (TrayGrid.Tray("along", 0, 0, 4, 0), TrayGrid.Tray("across", 1, -2, 1, 2));
        var rack = TrayGrid.Rack(0, 1, 0);
        Assert.Equal(1, Drops(along, across));
        Assert.Equal(2, Drops(along, across with { FromHeight = Length.FromMetres(3), ToHeight = Length.FromMetres(3) }));
        // From the side of the one the other is reached along it.
        rack = TrayGrid.Rack(0, 1.5, 0);
        Assert.Equal(1, Drops(along, across));

        int Drops(params Lanewright.Model.Places.Pathway[] trays)
        {
            var net = TrayGrid.Net(trays, [rack]);
            return net.EdgesAt(net.PointOf(0)).Length;
        }
    }

    // Source: ITU-T G.657.A as a maker reproduces it (seen): one turn of A1 round 10 mm loses 0.75 dB up to 1550 nm. A patched way has the
    // bends of its cords and of its trunk: two quarters for each that lies in a tray from rack to rack, and one at each corner.
    [Fact]
    public void Bends_OfAPatchedWay_CountTogether()
    {
        var designed = Expect.Designed(PlanBlock.Compile(BendPlan("a: { model: fixed-32x400, racks: hall/A/3, unit: 2 }")));
        var loss = Assert.Single(BendLoss.Of(designed.Plan, designed.Design, designed.Pathways.Value));
        // The cord from the third rack to the panel in the first, 2 quarters; the trunk along three trays, 2 and 2 corners.
        Assert.Equal(2 + 4, loss.Quarters);
        Assert.Equal(6 * 0.75 / 4, loss.Total!.Value.Value.Value, 6);
        Assert.Equal("10 mm", Numerals.Shown(loss.Radius.Millimetres, "mm"));
    }

    // A fan-out is one cable where its legs lie side by side, whatever each is plugged into.
    [Fact]
    public void LegsOfOneCable_TakeRoomOnce()
    {
        const string text = """
            lanewright: 1
            policy: { contingency: 0 % }
            sites: { main: { halls: { hall: { rows: { A: { racks: 20 } }, pathways: {
              t: { from: { x: 0 m, y: 0 m }, to: { x: 12 m, y: 0 m }, width: 300 mm } } } } } }
            devices:
              a: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
              b: { model: fixed-32x400, racks: hall/A/18..19, unit: 30, count: 2, per-rack: 1 }
            links:
              up: { from: { of: a, breakout: 4x100G }, to: { of: b, breakout: 4x100G }, pattern: striped, count: 8, rate: 100G,
                medium: [OM4] }
            """;
        var judged = PlanBlock.Compile(text);
        var designed = Expect.Designed(judged);
        var book = designed.Pathways.Value;
        Assert.Equal(2, designed.Design.Cables.Length);
        Assert.All(book.Fills.Where(f => f.Cables > 0), f => Assert.Equal(2, f.Cables));
        Assert.All(book.Fills, f => Assert.Equal(f.Cables, book.Contents(f.Segment).Sum(c => c.Count)));
        // Fibres: eight a cable in use, each told once; the weight is that of two cables.
        var bundles = designed.Pulls.Value.Bundles;
        Assert.Equal(2 * 8, bundles.Sum(b => b.Fibres - b.SpareFibres));
        var each = CableWeight.AMetreOf(bundles[0].Item, StandardsLibrary.Shipped)!.Value.Value;
        Assert.Equal(2 * each * designed.Design.SolutionOf(0)!.Length.Metres, bundles.Sum(b => b.Kilograms), 6);
    }

    // Six trunks of twelve fibres, each with one array of eight lit: the pull plan says of each bundle what the patches say.
    [Fact]
    public void SpareFibres_AreThoseOfTheTrunksThatArePatched()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
            sites: { main: { halls: { hall: { rows: { A: { racks: 30 }, B: { racks: 6, y: 4 m } }, pathways: {
              front: { from: { x: 0 m, y: 0 m }, to: { x: 18 m, y: 0 m }, width: 300 mm },
              back: { from: { x: 0 m, y: 4 m }, to: { x: 18 m, y: 4 m }, width: 300 mm },
              east: { from: { x: 18 m, y: 0 m }, to: { x: 18 m, y: 4 m }, width: 300 mm },
              west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: 10 mm, depth: 10 mm } } } } } }
            devices:
              leaf: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
              spine: { model: fixed-32x400, racks: hall/B/1, unit: 40 }
              near: { model: panel-1u-12, racks: hall/A/1, unit: 46 }
              far: { model: panel-1u-12, racks: hall/B/1, unit: 46 }
            trunks: { backbone: { from: near, to: far, cable: trunk-os2-12, count: 6 } }
            links: { up: { from: leaf, to: spine, rate: 400G, count: 6, type: 400GBASE-DR4, through: backbone } }
            """);
        var designed = Expect.Designed(judged);
        Assert.All(designed.Pulls.Value.Bundles, b => Assert.Equal(4 * b.Cables.Length, b.SpareFibres));
        // What was moved is longer, and only that: each trunk is ordered for its own way.
        var lengths = Enumerable.Range(0, 6).Select(n => designed.Design.Trunks.Of(designed.Plan.Trunks[0], n)!.Value.Metres).ToList();
        Assert.Equal(2, lengths.Distinct().Count());
        Assert.Equal(lengths.Max(), designed.Design.Trunks.Of(designed.Plan.Trunks[0])!.Value.Metres);
        Assert.Equal(2, Delivered.Table(judged, "parts.csv").Count(r => r.Contains("trunk-os2-12", StringComparison.Ordinal)));
    }

    // Halls of one name on two sites are told apart wherever a tray or a rack is named.
    [Fact]
    public void HallsOfOneName_AreNamedWithTheirSites()
    {
        var designed = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            sites: { s1: { halls: { hall: { rows: { A: { racks: 2 } }, pathways: {
              t: { from: { x: 0 m, y: 0 m }, to: { x: 2 m, y: 0 m }, width: 100 mm } } } } },
                     s2: { halls: { hall: { rows: { A: { racks: 2 } } }, other: { rows: { A: { racks: 2 } } } } } }
            devices: { a: { model: fixed-32x400, racks: s1/hall/A/1 }, b: { model: fixed-32x400, racks: s1/hall/A/2 } }
            links: { l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4 } }
            """));
        Assert.Equal(["s1/hall/t"], designed.Pathways.Value.Through(0));
        Assert.Equal(["s1/hall/A/01", "s2/hall/A/01", "other/A/01"],
            designed.Plan.Building.Racks.Where(r => r.Number == 1).Select(r => r.Name));
    }

    [Theory]
    [InlineData("routes: { from: hall, to: hall, length: 5 m }")]
    [InlineData("x-none: 1", ", pull-points: 2")]
    public void WhatCountsForNothing_IsTold(string more, string keys = "")
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 2 } }, pathways: {
              t: { from: { x: 0 m, y: 0 m }, to: { x: 2 m, y: 0 m }, width: 100 mm{{keys}} } } } } } }
            {{(more.StartsWith('x') ? "" : more)}}
            """);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW1711");
    }

    [Theory]
    [InlineData("2.6 m", "", "3.5 m", false)]
    [InlineData("3.4 m", "", "3.5 m", true)]
    [InlineData("4.6 m", "", "3.5 m", true)]
    [InlineData("9 m", "kind: duct, ", "3.5 m", true)]
    [InlineData("3.4 m", "kind: duct, ", "3.5 m", false)]
    public void PathwaysAtOrAboveTheCeiling_AreTold(string height, string kind, string ceiling, bool isTold)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { ceiling: {{ceiling}}, pathway-height: {{height}}, rows: { A: { racks: 2 } }, pathways: {
              t: { from: { x: 0 m, y: 0 m }, to: { x: 2 m, y: 0 m }, {{kind}}width: 50 mm } } } } } }
            devices: { a: { model: fixed-32x400, racks: hall/A/1 }, b: { model: fixed-32x400, racks: hall/A/2 } }
            links: { l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4 } }
            """);
        Assert.Equal(isTold, judged.Findings.Any(f => f.Kind.Code == "LW4113"));
    }

    // What ducts may hold is the electricians' table, which communications cable is taken out of: practice and no code.
    [Theory]
    [InlineData("kind: duct, width: 12 mm", true)]
    [InlineData("width: 12 mm, depth: 12 mm", false)]
    public void OverfullDuct_IsHeldAgainstPractice(string keys, bool isPractice)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 6 } }, pathways: {
              t: { from: { x: 0 m, y: 0 m }, to: { x: 4 m, y: 0 m }, {{keys}} } } } } } }
            devices: { a: { model: fixed-32x400, racks: hall/A/1, unit: 40 }, b: { model: fixed-32x400, racks: hall/A/6, unit: 40 } }
            links: { up: { from: a, to: b, count: 20, rate: 400G, type: 400GBASE-DR4 } }
            """);
        var finding = Assert.Single(judged.Findings, f => f.Kind.Code == "LW4101");
        Assert.Equal(isPractice, finding.Message.Contains("not code", StringComparison.Ordinal));
    }

    // Ten times 4.5 mm is 45 mm, whatever the last places of a double say: what is met is not missed.
    [Theory]
    [InlineData("4.5 mm", "45 mm", false)]
    [InlineData("4.5 mm", "44.9 mm", true)]
    [InlineData("3.1 mm", "31 mm", false)]
    [InlineData("7.9 mm", "79 mm", false)]
    [InlineData("7.9 mm", "78.9 mm", true)]
    public void ABendOfExactlyWhatCablesWant_IsWideEnough(string diameter, string radius, bool isTold)
    {
        var judged = PlanBlock.Compile(BendPlan("a: { model: fixed-32x400, racks: hall/A/3, unit: 2 }")
            .Replace("lanewright: 1", "lanewright: 1\ncatalogue: [own.yaml]", StringComparison.Ordinal)
            .Replace("bend-radius: 10 mm", "bend-radius: " + radius, StringComparison.Ordinal)
            .Replace("trunk-os2-12", "own-trunk", StringComparison.Ordinal) + $$"""

            # file: own.yaml
            cords:
              own-trunk:
                title: A trunk of its own thickness
                fibre: OS2
                near: MPO-12
                far: MPO-12
                polish-near: APC
                polish-far: APC
                pins-near: pinned
                pins-far: pinned
                lengths: 10 20 30 m
                diameter: {{diameter}}
            """);
        Assert.DoesNotContain(judged.Findings, f => f.Kind.Code is "LW1301" or "LW0101");
        var told = judged.Findings.Where(f => f.Kind.Code == "LW4114");
        Assert.Equal(isTold, told.Any(f => f.Message.Contains("own-trunk", StringComparison.Ordinal)));
    }

    private static string BendPlan(string device) => $$"""
        lanewright: 1
        policy: { bend-category: G.657.A1, contingency: 0 %, connections-in-hall: 0 }
        sites: { main: { halls: { hall: { rows: { A: { racks: 6 }, B: { racks: 6, y: 4 m } }, pathways: {
          front: { from: { x: 0 m, y: 0 m }, to: { x: 4 m, y: 0 m }, width: 300 mm, bend-radius: 10 mm },
          back: { from: { x: 0 m, y: 4 m }, to: { x: 4 m, y: 4 m }, width: 300 mm, bend-radius: 10 mm },
          west: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: 300 mm, bend-radius: 10 mm } } } } } }
        devices:
          {{device}}
          b: { model: fixed-32x400, racks: hall/B/1, unit: 2 }
          near: { model: panel-1u-12, racks: hall/A/1, unit: 46 }
          far: { model: panel-1u-12, racks: hall/B/1, unit: 46 }
        trunks: { backbone: { from: near, to: far, cable: trunk-os2-12, count: 1 } }
        links: { l: { from: a, to: b, count: 1, rate: 400G, type: 400GBASE-DR4, through: backbone } }
        """;

    private static string Halls(string to, string from) => TwoHalls
        .Replace("TO,", to + ",", StringComparison.Ordinal).Replace("FROM,", from + ",", StringComparison.Ordinal);
}
