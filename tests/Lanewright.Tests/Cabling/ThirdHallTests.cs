using Lanewright.Engineering.Load;
using Lanewright.Rules;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Cabling;

/// <summary>Links, trunks and failures of plans whose cables pass a hall on their way to another.</summary>
public sealed class ThirdHallTests
{
    private const string Three = """
        lanewright: 1
        policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
        sites: { main: { halls: {
          aa: { rows: { A: { racks: 2 } } },
          mid: { exits: { east: { x: 20 m, y: 3 m } }, MIDDLE rows: { B: { racks: 1, y: 9 m } } },
          zz: { rows: { C: { racks: 2 } } } } } }
        routes:
          - { from: mid, to: aa, length: 40 m, connections: 2, splices: 1 }
          - { from: mid, from-exit: FROM, to: zz, length: 60 m, JOINS }
        devices:
          low: { model: fixed-32x400, racks: aa/A/1, per-rack: 2, unit: 46 }
          high: { model: fixed-32x400, racks: zz/C/1, unit: 46 }
          near: { model: panel-1u-12, racks: aa/A/2, unit: 46 }
          far: { model: panel-1u-12, racks: zz/C/2, unit: 46 }
        """;

    private const string Up = "links: { up: { from: low, to: high, pattern: each-to-each, count: 2, rate: 400G, type: 400GBASE-DR4 } }";

    private const string Trays = "pathways: { t: { from: { x: 0 m, y: 0 m }, to: { x: 20 m, y: 0 m }, width: 300 mm } },";

    private static readonly double Height = 0.1 + (45.5 * 0.04445);

    // By hand: 0.3 m from the rack to the exit at the origin in both end halls, both routes, up and down at the racks, and in the hall
    // between: straight from exit to exit; along the tray that begins at the one and passes 3 m beside the other; nothing at one exit.
    [Theory]
    [InlineData("", "east", 20 + 3)]
    [InlineData(Trays, "east", 20 + 3)]
    public void Length_IsThatOfBothRoutesAndOfTheHallBetween(string middle, string from, double between)
    {
        var designed = Expect.Designed(Compile(middle, from, "", Up));
        var parts = designed.Pathways.Value.PartsOf(0)!.Value;
        Assert.Equal(40 + 60, parts.Surveyed.Metres, 9);
        Assert.Equal(0.3 + between + 0.3, parts.Across.Metres, 9);
        Assert.Equal(40 + 60 + 0.6 + between + (2 * (2.6 - Height)), parts.Total.Metres, 9);
        Assert.Equal(["mid to aa", "mid to zz"], designed.Pathways.Value.RoutesOf(0).Select(r => r.Name));
        string[] tray = middle.Length > 0 ? ["mid/t"] : [];
        Assert.Equal(["mid to aa", .. tray, "mid to zz"], designed.Pathways.Value.Through(0));
        var back = Expect.Designed(PlanBlock.Compile(Plan(middle, from, "width: 200 mm", Up)
            .Replace("from: low, to: high", "from: high, to: low", StringComparison.Ordinal)));
        Assert.Equal(["mid to zz", .. tray, "mid to aa"], back.Pathways.Value.Through(0));
    }

    [Theory]
    [InlineData("")]
    [InlineData(Trays)]
    public void RoutesOfOneExit_MeetThere(string middle)
    {
        var text = Plan(middle, "east", "", Up).Replace("from-exit: east, ", "", StringComparison.Ordinal);
        var parts = Expect.Designed(PlanBlock.Compile(text)).Pathways.Value.PartsOf(0)!.Value;
        Assert.Equal(0.3 + 0.3, parts.Across.Metres, 9);
    }

    // A route is fibre plant from panel to panel: pairs and splices of both add up, and one that states no pairs has the policy's two.
    [Theory]
    [InlineData("connections: 3, splices: 4", 2 + 3, 1 + 4)]
    [InlineData("", 2 + 2, 1)]
    public void Joins_AreThoseOfAllRoutes(string joins, int connections, int splices)
    {
        var channel = Expect.Designed(Compile("", "east", joins, Up)).Design.SolutionOf(0)!.Channel!;
        Assert.Equal((connections, splices), (channel.Connections, channel.Splices));
    }

    // Two pairs of each route are those at its ends, so that of four the trunk's own panels have two.
    [Fact]
    public void Trunks_HaveTheSplicesAndPairsOfAllRoutes()
    {
        var judged = Compile("", "east", "connections: 2, splices: 4", """
            trunks: { t: { from: near, to: far, cable: trunk-os2-12 } }
            links: { up: { from: low, to: high, rate: 400G, type: 400GBASE-DR4, through: t } }
            """);
        var trunk = Expect.Designed(judged).Plan.Trunks[0];
        Assert.Equal((5, 2), (trunk.Splices, trunk.PairsBetween));
        Assert.Equal(60 + 40, Expect.Designed(judged).Pathways.Value.Net is null ? 0 : Surveyed(judged), 9);

        static double Surveyed(JudgedPlan judged) =>
            Expect.Designed(judged).Design.Lengths.Parts(judged.Plan!.Trunks[0].From, judged.Plan.Trunks[0].To)!.Value.Surveyed.Metres;
    }

    [Theory]
    [InlineData("")]
    [InlineData(Trays)]
    public void EveryRouteAndTheTrayBetween_CutsWhatPassesIt(string middle)
    {
        var study = LoadPlans.Study(Plan(middle, "east", "", """
              host: { model: server-2u, cards: nic-2x200, racks: aa/A/1, per-rack: 4, unit: 2 }
            links:
              edge: { from: host, to: { of: low, breakout: 2x200G }, pattern: in-runs, from-run: 2, rate: 200G, length: 2 m }
              up: { from: low, to: high, pattern: each-to-each, count: 2, rate: 400G, type: 400GBASE-DR4 }
            demands: { shift: { kind: permutation, among: host } }
            """));
        var units = study.Fabric.Failures.Where(f => f.Kind is FailureKind.Route or FailureKind.Tray)
            .ToDictionary(f => f.Name, f => f.Outage.Links.Sum(l => l.Count));
        var expected = new Dictionary<string, int> { ["mid to aa"] = 4, ["mid to zz"] = 4 };
        if (middle.Length > 0) expected["mid/t"] = 4;
        Assert.Equal(expected.OrderBy(e => e.Key, StringComparer.Ordinal), units.OrderBy(u => u.Key, StringComparer.Ordinal));
    }

    // By hand: round by the middle hall it is 100 m and 23 m, and straight 150 m; with 120 m straight it is the other way about.
    [Theory]
    [InlineData(150, 100)]
    [InlineData(120, 120)]
    public void TheShorterOfADirectRouteAndAChain_IsTaken(int direct, double surveyed)
    {
        foreach (var route in new[] { $"{{ from: aa, to: zz, length: {direct} m }}", $"{{ from: zz, to: aa, length: {direct} m }}" })
        {
            var text = Plan("", "east", "", Up).Replace("routes:", $"routes:\n  - {route}", StringComparison.Ordinal);
            Assert.Equal(surveyed, Expect.Designed(PlanBlock.Compile(text)).Pathways.Value.PartsOf(0)!.Value.Surveyed.Metres, 9);
        }
    }

    // Two chains by two middle halls: cables apart go one each, whatever the shorter is.
    [Theory]
    [InlineData("")]
    [InlineData("side: A")]
    public void LinksApart_GoByChainsThatShareNoRoute(string side)
    {
        var text = $$"""
            lanewright: 1
            sites: { main: { halls: {
              aa: { rows: { A: { racks: 1 } } }, b: { rows: { A: { racks: 1 } } }, c: { rows: { A: { racks: 1 } } },
              zz: { rows: { C: { racks: 1 } } } } } }
            routes:
              - { from: aa, to: b, length: 40 m, {{side}} }
              - { from: b, to: zz, length: 60 m, {{side}} }
              - { from: c, to: aa, length: 50 m }
              - { from: zz, to: c, length: 70 m }
              - { from: b, to: c, length: 1 m }
            devices: { low: { model: fixed-32x400, racks: aa/A/1 }, high: { model: fixed-32x400, racks: zz/C/1 } }
            links:
              one: { from: low, to: high, rate: 400G, type: 400GBASE-DR4, apart-from: two, {{side}} }
              two: { from: low, to: high, rate: 400G, type: 400GBASE-DR4 }
            """;
        var designed = Expect.Designed(PlanBlock.Compile(text));
        var pair = Assert.Single(designed.Pathways.Value.Pairs);
        Assert.False(pair.IsTogether);
        var totals = new[] { 0, 1 }.Select(link => designed.Pathways.Value.PartsOf(link)!.Value.Surveyed.Metres);
        Assert.Equal([100.0, 120.0], totals.Order());
    }

    // Where the trays of the hall between do not join its exits nothing is laid, lengths are reckoned straight, and the plan is told.
    [Fact]
    public void TraysBetweenThatDoNotMeet_AreTold()
    {
        const string apart = "pathways: { t: { from: { x: 0 m, y: 0 m }, to: { x: 8 m, y: 0 m }, width: 300 mm }, "
            + "u: { from: { x: 12 m, y: 0 m }, to: { x: 20 m, y: 0 m }, width: 300 mm } },";
        var judged = Compile(apart, "east", "", Up);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW4103");
        Assert.DoesNotContain(judged.Findings, f => f.Kind.Code == "LW1402");
        Assert.Equal(20 + 3 + 0.6, Expect.Designed(judged).Pathways.Value.PartsOf(0)!.Value.Across.Metres, 9);
    }

    [Fact]
    public void PlansWithoutAThirdHallOnAnyWay_NeedNoSearch() => Assert.Null(Expect.Designed(Compile("", "east", "",
        "links: { up: { from: low-1, to: low-2, rate: 400G, type: 400GBASE-DR4 } }")).Pathways.Value.Net);

    private static string Plan(string middle, string from, string joins, string rest) => Three
        .Replace("MIDDLE", middle, StringComparison.Ordinal).Replace("FROM", from, StringComparison.Ordinal)
        .Replace(", JOINS", joins.Length > 0 ? ", " + joins : "", StringComparison.Ordinal) + "\n" + rest;

    private static JudgedPlan Compile(string middle, string from, string joins, string rest) =>
        PlanBlock.Compile(Plan(middle, from, joins, rest));
}
