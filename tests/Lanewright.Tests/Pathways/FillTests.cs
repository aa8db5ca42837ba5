using Lanewright.Engineering.Pathways;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Pathways;

/// <summary>How full trays and ducts are, against published charts and worked examples; each names its source.</summary>
public sealed class FillTests
{
    private const double Inch = 25.4;

    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    // Source: a cable-tray maker's chart at 50 per cent (seen): the number printed fits, and one more does not.
    [Theory]
    [InlineData(2, 2, 0.1852, 74)]
    [InlineData(2, 2, 0.21, 57)]
    [InlineData(4, 4, 0.21, 230)]
    [InlineData(12, 2, 0.1852, 445)]
    [InlineData(16, 2, 0.21, 461)]
    public void Tray_TakesWhatTheChartSays(double width, double depth, double cable, int expected)
    {
        var tray = Tray(width * Inch, depth * Inch);
        Assert.True(Fill(tray, cable * Inch, expected) <= 0.5);
        Assert.True(Fill(tray, cable * Inch, expected + 1) > 0.5);
    }

    // Source: structured-cabling reference manual, tray sizing example (seen): 100 cables of 8 mm want 20,096 mm2 at a quarter, with
    // 0.785 for a quarter of pi.
    [Fact]
    public void Manual_SizesATray() => Assert.Equal(0.25, Fill(Tray(20096, 1), 8, 100), 3);

    // Source: public construction formula page (seen): 20 cables of 0.75 in a tray of 12 by 4 inches fill 18.4 per cent.
    [Fact]
    public void ConstructionPage_IsMet() => Assert.Equal(18.4, 100 * Fill(Tray(12 * Inch, 4 * Inch), 0.75 * Inch, 20), 1);

    // Source: NEC chapter 9 Table 1 (seen), 53, 31 and 40 per cent for one, two and more cables; fills worked by hand.
    [Theory]
    [InlineData(1, 12, 20, 36.0, true)]
    [InlineData(2, 8, 20, 32.0, false)]
    [InlineData(7, 5, 21, 39.68, true)]
    public void Duct_IsHeldAgainstTheNumberOfItsCables(int cables, double cable, double inside, double percent, bool passes)
    {
        var duct = Tray(inside, inside) with { IsDuct = true };
        var fill = Of(duct, cable, cables);
        Assert.Equal(percent, fill.Fill.Percent, 2);
        Assert.Equal(passes, fill.Fill.Value <= fill.Most(Limits).Value);
    }

    [Fact]
    public void Plan_LaysEveryCableAndTakesItsLengthFromTheWay()
    {
        const string straight = """
            lanewright: 1
            policy: { contingency: 0 %, service: 0 m, in-rack: 0 m }
            sites: { main: { halls: { hall: { rows: { A: { racks: 2 }, B: { racks: 2, y: 4 m } }PATHWAYS } } } }
            devices:
              a: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
              b: { model: fixed-32x400, racks: hall/B/1, unit: 40 }
            links:
              up: { from: a, to: b, pattern: paired, count: 3, rate: 400G }
            """;
        const string round = ", pathways: { front: { from: { x: 0 m, y: 0 m }, to: { x: 9 m, y: 0 m }, width: 300 mm }, "
            + "end: { from: { x: 9 m, y: 0 m }, to: { x: 9 m, y: 4 m }, width: 300 mm }, "
            + "back: { from: { x: 0 m, y: 4 m }, to: { x: 9 m, y: 4 m }, width: 300 mm } }";
        var before = Expect.Designed(PlanBlock.Compile(straight.Replace("PATHWAYS", "", StringComparison.Ordinal)));
        var after = Expect.Designed(PlanBlock.Compile(straight.Replace("PATHWAYS", round, StringComparison.Ordinal)));
        Assert.Empty(before.Pathways.Value.Fills);
        // Rack A1 and B1 stand at x 0.3 m: 8.7 m to the end, 4 m across, 8.7 m back, against 4 m straight.
        var way = new Lanewright.Engineering.Cabling.RouteLength(after.Plan).Between(0, 1)!.Value
            - new Lanewright.Engineering.Cabling.RouteLength(before.Plan).Between(0, 1)!.Value;
        Assert.Equal(8.7 + 4 + 8.7 - 4, way.Metres, 6);
        Assert.Equal(3, after.Pathways.Value.Fills.Single(f => f.Pathway.Name == "end").Cables);
        Assert.Equal(["hall/front", "hall/end", "hall/back"], after.Pathways.Value.Through(0));
        var turned = Expect.Designed(PlanBlock.Compile(straight.Replace("PATHWAYS", round, StringComparison.Ordinal)
            .Replace("from: a, to: b", "from: b, to: a", StringComparison.Ordinal)));
        Assert.Equal(["hall/back", "hall/end", "hall/front"], turned.Pathways.Value.Through(0));
    }

    // A missing diameter is never nothing: the stretch says how many it is of, its weight is unproven, and a finding names the cable.
    [Theory]
    [InlineData("", 4, 4, "unproven", "are unproven")]
    [InlineData("weight: 12 kg/km", 4, 0, null, "fill is unproven")]
    [InlineData("diameter: 2.0 mm", 0, 0, null, null)]
    public void Cables_OfUnknownDiameter_ProveNothing(string stated, int unknown, int unweighed, string? known, string? said)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            catalogue: [own.yaml]
            sites: { main: { halls: { hall: { rows: { A: { racks: 4 } }, pathways: {
              tray: { from: { x: 0 m, y: 0 m }, to: { x: 3 m, y: 0 m }, width: 100 mm, load-rating: 20 kg/m } } } } } }
            devices:
              a: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
              b: { model: fixed-32x400, racks: hall/A/4, unit: 40 }
            links: { up: { from: a, to: b, count: 4, rate: 400G, type: 400GBASE-FR4, cord: thin } }

            # file: own.yaml
            cords:
              thin: { title: A cord, fibre: OS2, near: LC-duplex, far: LC-duplex, polish-near: UPC, polish-far: UPC, lengths: 5 10 m{{
            (stated.Length > 0 ? ", " + stated : "")}} }
            """);
        var designed = Expect.Designed(judged);
        var fill = designed.Pathways.Value.Fills.MaxBy(f => f.Cables)!;
        Assert.Equal((4, unknown, unweighed), (fill.Cables, fill.Unknown, fill.Unweighed));
        if (known is not null) Assert.Equal(known, fill.WeightKnown);
        else Assert.NotEqual("unproven", fill.WeightKnown);
        var bundle = designed.Pulls.Value.Bundles.Single();
        Assert.Equal(known is null, bundle.Persons(designed.Plan.Standards) is not null);
        var findings = judged.Findings.Where(f => f.Kind.Code == "LW4119").ToList();
        if (said is null) Assert.Empty(findings);
        else Assert.Contains(said, Assert.Single(findings).Message, StringComparison.Ordinal);
    }

    private static double Fill(Pathway tray, double diameter, int cables) => Of(tray, diameter, cables).Fill.Value;

    private static SegmentFill Of(Pathway pathway, double diameter, int cables)
    {
        var building = new Building([pathway.Hall], [], []) { Pathways = [pathway] };
        return new SegmentFill(
            WayNet.Of(building, Limits), 0, cables, cables * SegmentFill.Round(Length.FromMillimetres(diameter)), 0);
    }

    private static Pathway Tray(double width, double depth) => new(
        new Hall(0, "site", "hall", Length.FromMetres(2.6), default, default, default), "tray", default, default, Length.FromMetres(1),
        default, Length.FromMillimetres(width), Length.FromMillimetres(depth), false, default);
}
