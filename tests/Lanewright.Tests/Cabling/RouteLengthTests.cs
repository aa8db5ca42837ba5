using Lanewright.Engineering.Cabling;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Tests.Cabling;

/// <summary>Lengths from geometry.</summary>
public sealed class RouteLengthTests
{
    // Source: worked example of the grid rule: 7.2 m along the row, 4.5 m across, 1.2 m up, 1.4 m down, 5 % contingency and 2.0 m of
    // service length make 17.015 m, and the next stocked length of 10, 15, 20, 25 m is 20 m (derived by hand).
    [Fact]
    public void Slack_FollowsTheWorkedExample()
    {
        var plan = Plan("policy: { contingency: 5 %, service: 1 m }", "unit: 1", "unit: 1");
        var length = new RouteLength(plan).WithSlack(Length.FromMetres(7.2 + 4.5 + 1.2 + 1.4));
        Assert.Equal(17.015, length.Metres, 0.0005);
        var cord = CatalogueBinder.Shipped.Find<CordModel>("cord-os2-lc")!;
        Assert.Equal(20, cord.OrderedFor(length)!.Value.Metres);
    }

    // Source: EIA-310 rack unit of 44.45 mm (seen); a plinth of 100 mm, a pathway at 2.6 m and 0.3 m to the rack's side are the plan's.
    [Fact]
    public void SameRack_IsTheDifferenceOfHeights()
    {
        var plan = Plan("policy: {}", "racks: h/A/1, unit: 46", "racks: h/A/1, unit: 6");
        Assert.Equal((40 * 0.04445) + 0.6, new RouteLength(plan).Between(0, 1)!.Value.Metres, 1e-9);
    }

    [Fact]
    public void OtherRack_GoesUpAlongAndDown()
    {
        var plan = Plan("policy: { contingency: 0 %, service: 0 m }", "racks: h/A/1, unit: 46", "racks: h/B/3, unit: 46");
        var height = 0.1 + (45.5 * 0.04445);
        Assert.Equal((2 * 0.6) + 4.5 + (2 * (2.6 - height)) + 0.6, new RouteLength(plan).Between(0, 1)!.Value.Metres, 1e-9);
    }

    // Source: the same worked example, part by part (derived by hand); what the parts come to is what is ordered by.
    [Theory]
    [InlineData("racks: h/A/1, unit: 46", "racks: h/A/1, unit: 6")]
    [InlineData("racks: h/A/1, unit: 46", "racks: h/B/3, unit: 4")]
    [InlineData("racks: h/A/1, unit: 46", "racks: g/C/1, unit: 10")]
    public void Parts_AddUpToTheLength(string from, string to)
    {
        var route = new RouteLength(Plan("policy: { contingency: 5 %, service: 1 m }", from, to));
        var parts = route.Parts(0, 1)!.Value;
        var sum = parts.Across + parts.Rise + parts.Drop + parts.Detours + parts.Loops + parts.InsideRacks + parts.Surveyed;
        Assert.Equal(route.Between(0, 1)!.Value.Metres, sum.Metres, 1e-9);
        var isInside = from[..13] == to[..13];
        Assert.Equal(isInside ? 0 : 0.05 * (parts.Across + parts.Rise + parts.Drop).Metres, parts.Detours.Metres, 1e-9);
        Assert.Equal(isInside ? 0 : 2, parts.Loops.Metres, 1e-9);
    }

    [Fact]
    public void OtherHall_GoesByTheExitsAndTheRoute()
    {
        var plan = Plan("policy: { contingency: 0 %, service: 0 m }", "racks: h/A/1, unit: 46", "racks: g/C/1, unit: 46");
        var height = 0.1 + (45.5 * 0.04445);
        Assert.Equal((0.3 + 1) + 80 + 0.3 + (2 * (2.6 - height)) + 0.6, new RouteLength(plan).Between(0, 1)!.Value.Metres, 1e-9);
    }

    // A route between halls is surveyed; detours are reckoned for the ways inside the halls only (common practice).
    [Fact]
    public void Route_IsAsLongAsStatedWhateverTheContingency()
    {
        var bare = Between("policy: { contingency: 0 %, service: 0 m }");
        var inside = bare - 80 - 0.6;
        Assert.Equal(bare + (inside * 0.5), Between("policy: { contingency: 50 %, service: 0 m }"), 1e-9);

        static double Between(string policy) =>
            new RouteLength(Plan(policy, "racks: h/A/1, unit: 46", "racks: g/C/1, unit: 46")).Between(0, 1)!.Value.Metres;
    }

    [Theory]
    [InlineData(0.2, 0.5)]
    [InlineData(2, 2)]
    [InlineData(2.01, 3)]
    [InlineData(30, 30)]
    [InlineData(30.01, 35)]
    [InlineData(101, 105)]
    public void Grid_NeverRoundsDownAndGivesTheOrderedLength(double needed, double ordered)
    {
        var grid = new LengthGrid(CatalogueBinder.Shipped, []);
        var place = grid.LengthOf(grid.PlaceOf(Length.FromMetres(needed)));
        Assert.True(place.Metres >= needed);
        var cord = CatalogueBinder.Shipped.Find<CordModel>("cord-os2-lc")!;
        Assert.Equal(ordered, cord.OrderedFor(Length.FromMetres(needed))!.Value.Metres, 1e-9);
        Assert.Equal(cord.OrderedFor(Length.FromMetres(needed)), cord.OrderedFor(place));
    }

    [Fact]
    public void Grid_IsExactForEveryCableAndEveryNeed()
    {
        var grid = new LengthGrid(CatalogueBinder.Shipped, []);
        var cables = CatalogueBinder.Shipped.Assemblies.Cast<CableItem>().Concat(CatalogueBinder.Shipped.Cords).ToList();
        var random = new Random(11);
        for (var i = 0; i < 3000; i++)
        {
            var needed = Length.FromMetres(Math.Round(Math.Exp(random.NextDouble() * 7), 3));
            var place = grid.LengthOf(grid.PlaceOf(needed));
            foreach (var cable in cables) Assert.Equal(cable.OrderedFor(needed), cable.OrderedFor(place));
        }
    }

    private static Lanewright.Model.Plan Plan(string policy, string a, string b) => PlanBlock.Compile($$"""
        lanewright: 1
        {{policy}}
        sites:
          s:
            halls:
              h: { exit: { x: 0 m, y: 1 m }, rows: { A: { racks: 4 }, B: { racks: 4, y: 4.5 m } } }
              g: { rows: { C: { racks: 2 } } }
        routes: [ { from: h, to: g, length: 80 m } ]
        devices: { a: { model: fixed-32x400, {{a}} }, b: { model: fixed-32x400, {{b}} } }
        """).Plan!;
}
