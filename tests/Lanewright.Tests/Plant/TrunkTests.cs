using System.Text.Json;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Standards;
using Lanewright.Tests.Deliverables;

namespace Lanewright.Tests.Plant;

/// <summary>Links patched through trunks. Sums are those of the component limits and of the plan, added by hand.</summary>
public sealed class TrunkTests
{
    private const double Exact = 1e-9;
    private static readonly DesignedPlan Planned = Expect.Designed(PlanBlock.Compile(
        File.ReadAllText(Repository.Path("tests", "plans", "plant", "plan.yaml"))));

    /// <summary>Rows LB-13 to LB-15 of the cabling cases: derived from TIA-568.3 component limits and the reference-grade end values of
    /// editions D and E as a note on test equipment gives them; older editions had 3.5 dB/km for multimode cable (seen), and
    /// single-mode cable for indoors and outdoors has 0.5 dB/km (seen).</summary>
    [Theory]
    [InlineData("E", "OM4", 100, 0, 0, 1.3)]
    [InlineData("D", "OM4", 100, 0, 0, 0.9)]
    [InlineData("C", "OM4", 100, 0, 0, (0.1 * 3.5) + (2 * 0.75))]
    [InlineData("C", "OM3", 300, 0, 0, (0.3 * 3.5) + (2 * 0.75))]
    [InlineData("E", "OS2-indoor-outdoor", 500, 0, 0, (0.5 * 0.5) + (2 * 0.5))]
    [InlineData("E", "OS2", 500, 2, 2, (0.5 * 0.4) + (2 * 0.5) + (2 * 0.75) + (2 * 0.3))]
    public void TestLimit_IsThatOfItsEdition(string edition, string fibre, double metres, int inner, int splices, double expected)
    {
        var found = Limit(edition, fibre, metres, inner, splices);
        Assert.NotNull(found);
        Assert.Equal(expected, found.Value.Value, Exact);
    }

    /// <summary>The note on edition D gives no value for single-mode ends, so that nothing is proved by it.</summary>
    [Fact]
    public void TestLimit_ThatNobodyRead_IsNotMadeUp()
    {
        Assert.Null(Limit("D", "OS2", 100, 0, 0));
        // Edition C is older than OM5.
        Assert.Null(Limit("C", "OM5", 100, 0, 0));
    }

    [Fact]
    public void Path_AddsUpToTheLossItWasJudgedBy()
    {
        var cables = Planned.Design.Cables.Length;
        Assert.Equal(24, cables);
        for (var cable = 0; cable < cables; cable++)
        {
            var path = Path(cable);
            Assert.NotNull(path.Loss);
            Assert.Equal(path.Loss.Value.Value, path.Elements.Sum(e => e.Loss?.Value ?? 0), Exact);
            Assert.True(path.Polarity?.Verdict == Verdict.Pass);
        }
    }

    // Sums by hand from the policy's 0.5 dB a pair and 0.1 dB a splice: what a route states is what a channel along it has, of which
    // the pairs at a trunk's ends are a part; of two routes the worse counts, and what the trunk says itself counts before both.
    [Theory]
    [InlineData("connections: 5, splices: 3", "", "", 5, 3)]
    [InlineData("connections: 1, splices: 3", "", "", 2, 3)]
    [InlineData("splices: 1", "", "", 2, 1)]
    [InlineData("connections: 2", ", connections: 4, splices: 6", "", 4, 6)]
    [InlineData("connections: 5, splices: 3", "", ", connections: 1, splices: 0", 3, 0)]
    [InlineData("connections: 5", "", ", cassette: cassette-lc-sm", 5, 0)]
    public void TrunkAlongARoute_HasItsPairsAndSplices(string route, string other, string trunk, int pairs, int splices)
    {
        var second = other.Length > 0 ? ", { from: one, to: two, length: 90 m" + other + " }" : "";
        var type = trunk.Contains("cassette", StringComparison.Ordinal) ? "400GBASE-FR4" : "400GBASE-DR4";
        var designed = Expect.Designed(PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { one: { rows: { A: { racks: 1 } } }, two: { rows: { B: { racks: 1 } } } } } }
            routes: [ { from: one, to: two, length: 80 m, {{route}} }{{second}} ]
            devices:
              leaf: { model: fixed-32x400, racks: one/A/1, unit: 40 }
              spine: { model: fixed-32x400, racks: two/B/1, unit: 40 }
              here: { model: panel-1u-12, racks: one/A/1, unit: 46 }
              there: { model: panel-1u-12, racks: two/B/1, unit: 46 }
            trunks: { t: { from: here, to: there, cable: trunk-os2-12, count: 1{{trunk}} } }
            links: { up: { from: leaf, to: spine, rate: 400G, type: {{type}}, through: t } }
            """));
        var path = CablePath.Of(designed.Plan, designed.Design, designed.Plant.Value, 0, "C")!;
        Assert.Equal(pairs, path.Elements.Count(e => e.Kind == "connection"));
        Assert.Equal(path.Loss!.Value.Value, path.Elements.Sum(e => e.Loss?.Value ?? 0), Exact);
        Assert.Equal((pairs * 0.5) + (splices * 0.1) + (path.Length.Kilometres * 0.4), path.Loss!.Value.Value, 1e-6);
        // The cabling test allows them too: 0.75 dB a pair and 0.3 dB a splice by edition C.
        var test = path.Tests.Single(t => t.Edition == "C").Limit!.Value.Value;
        Assert.Equal((pairs * 0.75) + (splices * 0.3), test - (designed.Design.Trunks.Of(designed.Plan.Trunks[0])!.Value.Kilometres * 0.4),
            1e-6);
    }

    /// <summary>Four pairs of 0.5 dB, as the policy has it, and 0.4 dB/km of OS2: behind cassettes there are two pairs more than at open
    /// arrays.</summary>
    [Fact]
    public void Connections_AreThoseOfTheWay()
    {
        var duplex = Enumerable.Range(0, 24).Select(Path).First(p => p.Elements.Any(e => e.Kind == "cassette"));
        Assert.Equal(4, duplex.Elements.Count(e => e.Kind == "connection"));
        Assert.Equal((4 * 0.5) + (duplex.Length.Kilometres * 0.4), duplex.Loss!.Value.Value, 1e-6);
        var open = Enumerable.Range(0, 24).Select(Path).First(p => p.Elements.All(e => e.Kind != "cassette"));
        Assert.Equal(2, open.Elements.Count(e => e.Kind == "connection"));
        Assert.Equal(0.7, open.Elements.Single(e => e.Kind == "trunk").Loss!.Value.Value, Exact);
    }

    [Fact]
    public void Ports_AreTakenOnce()
    {
        var patches = Enumerable.Range(0, Planned.Plan.Links.Count).SelectMany(l => Planned.Plant.Value.PatchesOf(l)).ToList();
        Assert.Equal(24, patches.Count);
        Assert.All(patches, p => Assert.True(p.IsThere));
        Assert.Equal(24, patches.Select(p => (p.NearPanel, p.NearSlot, p.NearPort)).Distinct().Count());
        Assert.Equal(24, patches.Select(p => (p.FarPanel, p.FarSlot, p.FarPort)).Distinct().Count());
        // The trunks that are described from the spines' side are patched from the leaves' side all the same.
        Assert.Single(patches.Select(p => p.NearPanel).Distinct());
        // Eight arrays of twelve carry eight fibres each; sixteen duplex ports two each.
        Assert.Equal([64, 32], Planned.Plant.Value.Trunks.Select(t => t.FibresLit));
    }

    [Fact]
    public void Parts_CountEveryCordTrunkAndCassette()
    {
        long Needed(string model) => Planned.Parts.Where(p => p.Item.Name == model).Sum(p => p.Needed);
        Assert.Equal(2 * 16, Needed("cord-os2-lc"));
        Assert.Equal(2 * 8, Needed("cord-os2-mpo12"));
        Assert.Equal(3 + 8, Needed("trunk-os2-12"));
        Assert.Equal(2 * 3, Needed("cassette-lc-sm"));
    }

    /// <summary>Everything lies in the tray that joins the rows but cords; over the leaves there are trunks and cords.</summary>
    [Fact]
    public void Trays_HoldTrunksOnce()
    {
        var fills = Planned.Pathways.Value.Fills.Where(f => f.Pathway.Name == "along").ToList();
        Assert.NotEmpty(fills);
        Assert.Equal(3 + 8, fills.Max(f => f.Cables));
    }

    [Fact]
    public void Trace_HasTheKeysThatToolsRead()
    {
        var run = Program.Run("trace tests/plans/plant leaf-2:4 --json");
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(["port", "module", "cord"], json.RootElement.GetProperty("elements").EnumerateArray().Take(3)
            .Select(e => e.GetProperty("kind").GetString()));
        Assert.Equal("crossed", json.RootElement.GetProperty("polarity").GetString());
        Assert.Equal(json.RootElement.GetProperty("lossDb").GetDouble(),
            json.RootElement.GetProperty("elements").EnumerateArray().Select(e => e.GetProperty("lossDb"))
                .Where(l => l.ValueKind == JsonValueKind.Number).Sum(l => l.GetDouble()), 1e-3);
        Assert.Equal(2, Program.Run("trace tests/plans/plant nobody:1").Code);
    }

    // A port of a panel, a trunk, a label: each finds the same light path.
    [Theory]
    [InlineData("odf-a:04")]
    [InlineData("arrays-4")]
    [InlineData("HALL.A02-46:04")]
    public void Trace_BeginsAtPanelsTrunksAndLabelsToo(string name)
    {
        var run = Program.Run($"trace tests/plans/plant {name} --json");
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Contains(json.RootElement.GetProperty("elements").EnumerateArray(), e => e.GetProperty("id").GetString() == "arrays-4");
    }

    // Source: TIA-568.3 as quoted (seen): a type-B array cord alone, and an A-to-B duplex cord alone, lead transmitters to receivers.
    [Theory]
    [InlineData("400GBASE-DR4", "B", new[] { 1, 2, 3, 4 })]
    [InlineData("400GBASE-FR4", "A-to-B", new int[0])]
    public void CordAlone_IsFollowedToo(string type, string cord, int[] lanes)
    {
        var designed = Expect.Designed(PlanBlock.Compile($$"""
            lanewright: 1
            devices: { a: { model: fixed-32x400 }, b: { model: fixed-32x400 } }
            links: { up: { from: a, to: b, rate: 400G, type: {{type}}, length: 20 m } }
            """));
        var polarity = CablePath.Of(designed.Plan, designed.Design, designed.Plant.Value, 0, "C")!.Polarity!;
        Assert.Equal(Verdict.Pass, polarity.Verdict);
        Assert.True(polarity.IsCrossed);
        Assert.Equal([cord], polarity.CordTypes);
        Assert.Equal(lanes, polarity.LaneOrder);
    }

    /// <summary>A trunk is made of array cables: neither twisted pair, whose plug has eight positions too, nor a duplex cord.</summary>
    [Fact]
    public void TrunksWithoutLinks_AreListed()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 2 } } } } } }
            devices: { odf: { model: panel-1u-12, racks: hall/A } }
            trunks: { spare: { from: odf-1, to: odf-2, cable: trunk-os2-12 } }
            """);
        Assert.Single(Delivered.Table(judged, "trunks.csv"), row => row.StartsWith("spare,", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("cord-cat6a")]
    [InlineData("cord-os2-lc")]
    [InlineData("fan-os2-mpo12-4lc")]
    public void Trunk_OfAnotherCable_IsRefused(string cable)
    {
        var text = File.ReadAllText(Repository.Path("tests", "plans", "plant", "plan.yaml"))
            .Replace("cable: trunk-os2-12, count: 8", $"cable: {cable}, count: 8", StringComparison.Ordinal);
        Assert.Contains(PlanBlock.Compile(text).Findings, f => f.Kind.Name == "TrunkContradicts");
    }

    private static Known<double>? Limit(string edition, string fibre, double metres, int inner, int splices) => TestLimit.Of(
        StandardsLibrary.Shipped, edition, StandardsLibrary.Shipped.Fibre(fibre)!, Length.FromMetres(metres), inner, splices).Limit;

    private static CablePath Path(int cable) => CablePath.Of(
        Planned.Plan, Planned.Design, Planned.Plant.Value, Planned.Design.Cables[cable].FirstLink, "C")!;
}
