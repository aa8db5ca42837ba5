using System.Globalization;
using CsCheck;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Rules;
using Lanewright.Standards;

namespace Lanewright.Tests.Plant;

/// <summary>Links through trunks in series and fan-outs through trunks. Maps of types A, B and C: TIA-568.3; their composition: own
/// arithmetic, written here once more without the program's classes.</summary>
public sealed class SeriesTests
{
    private const double Exact = 1e-9;

    private static readonly DesignedPlan Halls = Expect.Designed(PlanBlock.Compile(
        File.ReadAllText(Repository.Path("tests", "plans", "halls", "plan.yaml"))));

    /// <summary>Two trunks or more are the product of their permutations and those of the cords, and the way back undoes it.</summary>
    [Fact]
    public void Series_IsTheCompositionOfItsParts() => Gen.Select(
        Gen.OneOf(Gen.Const("A"), Gen.Const("B"), Gen.Const("C")).List[1, 4], Gen.OneOf(Gen.Const(12), Gen.Const(16)),
        Gen.Bool.List[4]).Sample((types, positions, turned) =>
        {
            var (fibres, way) = Followed(types, positions, turned, isBack: false);
            foreach (var fibre in fibres)
            {
                var at = fibre.Start.Position;
                for (var i = 0; i < types.Count; i++)
                {
                    at = Map(way.CordTypes[i], at, positions);
                    Assert.Equal(at, fibre.Hops[i].Near.Position);
                    at = Map(types[i], at, positions);
                    Assert.Equal(at, fibre.Hops[i].Far.Position);
                }
                Assert.Equal(Map(way.CordTypes[^1], at, positions), fibre.End.Position);
            }
            var (back, _) = Followed(types, positions, turned, isBack: true);
            var there = fibres.Select(f => (f.Start.Position, f.End.Position)).Order();
            // The last cord with a choice lies at the other end, so that pairings agree where types A and B alone are met.
            if (!types.Contains("C")) Assert.Equal(there, back.Select(f => (f.End.Position, f.Start.Position)).Order());
            Assert.Equal(types.Contains("C") ? way.Verdict : Verdict.Pass, way.Verdict);
        }, iter: 30, threads: 1);

    /// <summary>Source: make-up of the methods, TIA-568.3 and a note on its edition E: the cords that are picked are those it
    /// names.</summary>
    [Theory]
    [InlineData("A", "trunk-os2-12", "cassette-lc-sm", "FR4")]
    [InlineData("C", "trunk-os2-12", "cassette-lc-sm", "FR4")]
    [InlineData("U1", "trunk-os2-12", "cassette-lc-sm", "FR4")]
    public void CordsPicked_AreThoseOfTheMethod(string method, string cable, string cassette, string type)
    {
        var planned = Expect.Designed(PlanBlock.Compile(Plan(
            $"  t0: {{ from: p0, to: q0, cable: {cable}, cassette: {cassette}, method: {method} }}\n", "t0", $"400GBASE-{type}", 1)));
        var (chain, _) = StandardsLibrary.Shipped.Polarity.MethodOf(method);
        var way = Assert.Single(planned.Plant.Value.Ways);
        Assert.Equal([chain[0], chain[^1]], way.Polarity.CordTypes);
        Assert.Equal(Verdict.Pass, way.Polarity.Verdict);
        Assert.Equal(1, planned.Plant.Value.PatchesOf(0)[0].FarPort);
    }

    /// <summary>Whatever the order inside transitions alike, a reversing way leads port m to port m: own proof by trying orders.</summary>
    [Fact]
    public void AlikeTransitionsOverAReversal_LeadEachPortToItsOwnNumber() => Gen.Shuffle(Enumerable.Range(1, 6).ToArray()).Sample(order =>
    {
        for (var port = 1; port <= 6; port++)
        {
            var arrival = 13 - order[port - 1];
            // The pair of a port is a position and its mirror; the mirror of the mirror is the position again.
            Assert.Equal(port, Array.IndexOf(order, Math.Min(arrival, 13 - arrival)) + 1);
        }
    });

    [Fact]
    public void EveryPath_AddsUpToTheLossItWasJudgedBy()
    {
        for (var link = 0; link < Halls.Plan.Links.Count; link++)
        {
            var path = PathOf(link);
            Assert.NotNull(path.Loss);
            Assert.Equal(path.Loss.Value.Value, path.Elements.Sum(e => e.Loss?.Value ?? 0), Exact);
            Assert.Equal(Verdict.Pass, path.Polarity?.Verdict);
            Assert.NotEmpty(path.Fibres);
            Assert.All(path.Fibres, f => Assert.True(f.IsCrossed && f.Lane == f.EndLane));
        }
    }

    /// <summary>Eight pairs of 0.25 dB for cassettes at four panels, 0.4 dB/km, one splice of 0.1 dB between the halls.</summary>
    [Fact]
    public void CassettesInSeries_CountTheirPairsAndSplices()
    {
        var path = PathOf(LinkOf("up"));
        Assert.Equal(8, path.Elements.Count(e => e.Kind == "connection"));
        Assert.Equal(2, path.Elements.Count(e => e.Kind == "trunk"));
        Assert.Equal(3, path.Elements.Count(e => e.Kind == "cord"));
        Assert.Equal((8 * 0.25) + 0.1 + (path.Length.Kilometres * 0.4), path.Loss!.Value.Value, 1e-6);
    }

    /// <summary>Of two trunks in series one was measured at 0.9 dB from panel to panel, splice and both pairs included.</summary>
    [Fact]
    public void MeasuredTrunk_TakesThePlaceOfItsOwnParts()
    {
        var path = PathOf(LinkOf("par"));
        var computed = path.Length - Halls.Plant.Value.Trunks.Single(t => t.Trunk.Name == "hall-arrays").Length!.Value;
        Assert.Equal(0.9 + (2 * 0.25) + (computed.Kilometres * 0.4), path.Loss!.Value.Value, 1e-6);
        Assert.Equal([1, 2, 3, 4], path.Polarity!.LaneOrder);
    }

    /// <summary>Each port of a split cage ends at its own device on a port of its own, wherever on the way the ports part.</summary>
    [Theory]
    [InlineData("at-cassette", 0, PatchKind.Array, PatchKind.Duplex)]
    [InlineData("at-fan-out", 0, PatchKind.Array, PatchKind.Split)]
    [InlineData("before-cassettes", 1, PatchKind.Duplex, PatchKind.Merge)]
    [InlineData("across", 0, PatchKind.Split, PatchKind.Duplex)]
    public void FanOut_PartsWhereTheWayTurnsDuplex(string set, int end, PatchKind first, PatchKind last)
    {
        var links = Enumerable.Range(0, Halls.Plan.Links.Count)
            .Where(l => Halls.Plan.Statements[Halls.Plan.Links.Statement(l)].Name == set).ToList();
        Assert.NotEmpty(links);
        foreach (var link in links)
        {
            var cords = Halls.Design.SolutionOf(link)!.Patching;
            Assert.Equal((first, last), (cords[0].Kind, cords[^1].Kind));
            var part = (end == 0 ? Halls.Plan.Links.FromPort(link) : Halls.Plan.Links.ToPort(link)).Part + 1;
            Assert.All(PathOf(link).Fibres, f => Assert.Equal(part, f.Lane));
        }
    }

    [Fact]
    public void Ports_AreTakenOnceButByLinksOfOneArray()
    {
        var book = Halls.Plant.Value;
        foreach (var trunk in Halls.Plan.Trunks)
        {
            var ends = Enumerable.Range(0, Halls.Plan.Links.Count)
                .SelectMany(l => book.PatchesOf(l).Where(p => p.Trunk == trunk).Select(p => (l, p))).ToList();
            Assert.NotEmpty(ends);
            var ports = trunk.IsDuplex
                ? ends.Select(e => (e.p.Number, e.p.NearPort, e.p.Leg.IsTurned)).ToList()
                : ends.Select(e => (Halls.Design.CableOf(e.l), e.p.Number, e.p.Leg.IsTurned)).Distinct().ToList();
            Assert.Equal(ports.Count, ports.Distinct().Count());
            Assert.All(ends, e => Assert.True(e.p.IsThere));
        }
    }

    /// <summary>Counted by hand from the plan: 4 duplex links of 3 cords; 4 parallel ones of 3; two arrays taken apart at a cassette, one
    /// link each; a fan-out behind open arrays; one merged before cassettes with 4 cords; one split before them with 8.</summary>
    [Fact]
    public void Parts_CountEveryCordOnce()
    {
        long Needed(string model) => Halls.Parts.Where(p => p.Item.Name == model).Sum(p => p.Needed);
        Assert.Equal((4 * 3) + 2 + 4 + 8, Needed("cord-os2-lc"));
        Assert.Equal((4 * 3) + 2 + 1, Needed("cord-os2-mpo12"));
        Assert.Equal(3, Needed("fan-os2-mpo12-4lc"));
        Assert.Equal(3, Needed("cassette-lc-sm-4"));
        Assert.Equal(2, Needed("cassette-lc-sm-8"));
    }

    /// <summary>Rules on arrays: notes on array connectors (seen): one end of a mating has pins, angled and flat ends never mate. The
    /// second of two trunks in series is as wrong as the first.</summary>
    [Theory]
    [InlineData("polish-near: APC, polish-far: APC, pins-near: unpinned, pins-far: unpinned", "PinsClash")]
    [InlineData("polish-near: PC, polish-far: PC, pins-near: pinned, pins-far: pinned", "PolishDiffers")]
    public void EveryJointOfASeries_IsHeldAgainstItsRules(string ends, string code)
    {
        var trunks = "  t0: { from: p0, to: q0, cable: trunk-os2-12 }\n  t1: { from: p1, to: q1, cable: odd }\n";
        var catalogue = "catalogue: own.yaml\n";
        var own = "# file: own.yaml\ncords: { odd: { title: a trunk, fibre: OS2, near: MPO-12, far: MPO-12, lengths: 10 m, step: 5 m, "
            + ends + " } }\n";
        var judged = PlanBlock.Compile(catalogue + Plan(trunks, "[t0, t1]", "400GBASE-DR4", 2) + own);
        Assert.Contains(judged.Findings, f => f.Kind.Name == code);
    }

    [Theory]
    [InlineData("[t0, t1]", "trunk-om4-12", "TrunkContradicts")]
    [InlineData("[t0, t0]", "trunk-os2-12", "TrunkContradicts")]
    [InlineData("[t0, t9]", "trunk-os2-12", "NameUnknown")]
    public void SeriesThatCannotBe_IsRefused(string through, string second, string code)
    {
        var trunks = $"  t0: {{ from: p0, to: q0, cable: trunk-os2-12 }}\n  t1: {{ from: p1, to: q1, cable: {second} }}\n";
        Assert.Contains(PlanBlock.Compile(Plan(trunks, through, "400GBASE-DR4", 2)).Findings, f => f.Kind.Name == code);
    }

    private static (IReadOnlyList<FibreLine> Fibres, WayPolarity Way) Followed(
        List<string> types, int positions, List<bool> turned, bool isBack)
    {
        var trunks = string.Concat(types.Select((t, i) =>
            $"  t{i}: {{ {(turned[i] ? "to" : "from")}: p{i}, {(turned[i] ? "from" : "to")}: q{i}, "
            + $"cable: trunk-os2-{positions}, type: {t} }}\n"));
        var names = Enumerable.Range(0, types.Count).Select(i => "t" + i.ToString(CultureInfo.InvariantCulture));
        if (isBack) names = names.Reverse();
        var type = positions == 16 ? "800GBASE-DR8" : "400GBASE-DR4";
        var planned = Expect.Designed(PlanBlock.Compile(Plan(trunks, $"[{string.Join(", ", names)}]", type, types.Count, isBack)));
        return (planned.Plant.Value.FibresOf(0), planned.Plant.Value.WayOf(0)!.Polarity);
    }

    /// <summary>Trunks end to end along a row of racks, so that only one way round is short.</summary>
    private static string Plan(string trunks, string through, string type, int count, bool isBack = false)
    {
        var panels = string.Concat(Enumerable.Range(0, count).Select(i =>
            $"  p{i}: {{ model: panel-1u-12, racks: hall/A/{(4 * i) + 2}, unit: 46 }}\n"
            + $"  q{i}: {{ model: panel-1u-12, racks: hall/A/{(4 * i) + 5}, unit: 46 }}\n"));
        var model = type.StartsWith("800", StringComparison.Ordinal) ? "fixed-64x800" : "fixed-32x400";
        var (from, to) = isBack ? ("spine", "leaf") : ("leaf", "spine");
        return "lanewright: 1\nsites: { main: { halls: { hall: { rows: { A: { racks: 30 } } } } } }\ndevices:\n"
            + $"  leaf: {{ model: {model}, racks: hall/A/1, unit: 30 }}\n"
            + $"  spine: {{ model: {model}, racks: hall/A/{(4 * count) + 2}, unit: 30 }}\n" + panels + "trunks:\n" + trunks
            + $"links:\n  up: {{ from: {from}, to: {to}, rate: {type[..3]}G, type: {type}, through: {through} }}\n";
    }

    /// <summary>TIA-568.3: A leads p to p, B to N+1-p, C odd positions one up and even ones one down.</summary>
    private static int Map(string type, int p, int positions) => type switch
    {
        "B" => positions + 1 - p,
        "C" => p % 2 == 1 ? p + 1 : p - 1,
        _ => p,
    };

    private static int LinkOf(string set) => Enumerable.Range(0, Halls.Plan.Links.Count)
        .First(l => Halls.Plan.Statements[Halls.Plan.Links.Statement(l)].Name == set);

    private static CablePath PathOf(int link) => CablePath.Of(Halls.Plan, Halls.Design, Halls.Plant.Value, link, "C")!;
}
