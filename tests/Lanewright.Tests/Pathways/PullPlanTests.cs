using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Tests.Deliverables;

namespace Lanewright.Tests.Pathways;

/// <summary>Bundles, their order, and how they lie in a tray.</summary>
public sealed class PullPlanTests
{
    private const string Tray =
        ", pathways: { tray: { from: { x: 0 m, y: 0 m }, to: { x: 12 m, y: 0 m }, width: 300 mm } }";

    private const string Plan = $$$"""
        lanewright: 1
        sites: { main: { halls: { hall: { rows: { A: { racks: 20 } }{{{Tray}}} } } } }
        devices:
          far: { model: fixed-64x400, racks: hall/A/1, unit: 40 }
          near: { model: fixed-32x400, racks: hall/A/18, unit: 40 }
          spine: { model: fixed-64x400, racks: hall/A/20, unit: 30, count: 2, per-rack: 2, step: 4 }
        links:
          long: { from: far, to: spine-1, count: 30, rate: 400G, type: 400GBASE-DR4 }
          short: { from: near, to: spine-2, count: 3, rate: 400G, type: 400GBASE-DR4 }
        """;

    private static readonly Lazy<Lanewright.Rules.DesignedPlan> Planned = new(() => Expect.Designed(PlanBlock.Compile(Plan)));

    [Fact]
    public void Bundles_HoldEveryCableOnce_FarthestFirst()
    {
        var bundles = Planned.Value.Pulls.Value.Bundles;
        Assert.Equal([24, 6, 3], bundles.Select(b => b.Cables.Length));
        Assert.Equal(33, bundles.SelectMany(b => b.Cables).Distinct().Count());
        Assert.Equal([PullReason.Longest, PullReason.SameRoute, PullReason.Shorter], bundles.Select(b => b.Reason));
        Assert.Equal(["B0001", "B0002", "B0003"], bundles.Select(b => b.Name));
        Assert.Equal(bundles.OrderByDescending(b => b.Way!.Total).Select(b => b.Order), bundles.Select(b => b.Order));
    }

    // Racks of 0.6 m: 19 of them from the first to the last, two from the eighteenth; nothing is there to lie in.
    [Fact]
    public void CablesThatNoPathwayLeads_AreBundledByTheirRacks()
    {
        var judged = PlanBlock.Compile(Plan.Replace(Tray, "", StringComparison.Ordinal));
        var bundles = Expect.Designed(judged).Pulls.Value.Bundles;
        Assert.Equal([24, 6, 3], bundles.Select(b => b.Cables.Length));
        Assert.Equal([PullReason.Open, PullReason.SameRoute, PullReason.Open], bundles.Select(b => b.Reason));
        Assert.All(bundles, b => Assert.True(b.Way is null && b.Pathways.IsEmpty && b.Length > b.Distance));
        Assert.Equal([11.4, 11.4, 1.2], bundles.Select(b => Math.Round(b.Distance!.Value.Metres, 6)));
        Assert.Equal(4, Delivered.Table(judged, "pull-plan.csv").Length);
    }

    // The demo has halls with trays and halls without.
    [Fact]
    public void Demo_PullsEveryNewCableBetweenRacksOnce_AndReasonsAgreeWithTheirRows()
    {
        var designed = Expect.Designed(
            Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml"));
        var bundles = designed.Pulls.Value.Bundles;
        var pulled = designed.Pathways.Value.Pieces.Where(p => p.IsPulled).Select(p => p.Key);
        Assert.Equal(bundles.Sum(b => b.Cables.Length), bundles.SelectMany(b => b.Cables).Distinct().Count());
        Assert.Equal(pulled.ToHashSet(), bundles.SelectMany(b => b.Cables).ToHashSet());
        Assert.Contains(bundles, b => b.Way is null);
        for (var i = 1; i < bundles.Length; i++)
        {
            var (before, now) = (bundles[i - 1], bundles[i]);
            Assert.True(now.Way is null || before.Way is not null);
            if (now.Reason == PullReason.Shorter) Assert.True(now.Distance < before.Distance);
            if (now.Reason is PullReason.Thickest or PullReason.SameRoute) Assert.Equal(before.Distance, now.Distance);
        }
    }

    // Source: 400GBASE-DR4 on a 12-position array lights eight fibres, the centre four stay dark (array-connector notes, seen).
    [Fact]
    public void SpareFibres_AreTheDarkOnesOfTheArray()
    {
        var first = Planned.Value.Pulls.Value.Bundles[0];
        Assert.Equal((24 * 12, 24 * 4), (first.Fibres, first.SpareFibres));
    }

    // Source: 100GBASE-DR lights two fibres each way a port (802.3 clause 140; memory): legs that part have their own and no dark ones.
    [Fact]
    public void LegsOfAFanOut_HaveTheirOwnFibres_AndLieEachInItsWay()
    {
        var designed = Expect.Designed(PlanBlock.Compile(FanOut("hall/A/3, hall/A/3, hall/A/5, hall/A/7")));
        var bundles = designed.Pulls.Value.Bundles;
        Assert.Equal([2, 2, 4], bundles.Select(b => b.Fibres));
        Assert.Equal([0, 0, 0], bundles.Select(b => b.SpareFibres));
        Assert.Equal([1, 1, 2], bundles.Select(b => designed.Pathways.Value.Pieces.Single(p => p.Key == b.Cables[0]).Links));
        // Where legs of one cable lie side by side they are one body.
        Assert.Equal(1, designed.Pathways.Value.Fills.Max(f => f.Cables));
    }

    // Property of the issue, for legs too: one leg more never lowers a fill.
    [Fact]
    public void AddingALeg_NeverLowersAFill() => Gen.Int[2, 9].Array[4].Sample(
        racks =>
        {
            double[] before = [];
            for (var legs = 1; legs <= racks.Length; legs++)
            {
                var hosts = string.Join(", ", racks.Take(legs).Select(r => $"hall/A/{Numerals.Whole(r)}"));
                var fills = Expect.Designed(PlanBlock.Compile(FanOut(hosts))).Pathways.Value.Fills;
                if (before.Length > 0) Assert.All(fills.Zip(before), f => Assert.True(f.First.SquareMillimetres >= f.Second - 1e-9));
                before = [.. fills.Select(f => f.SquareMillimetres)];
            }
        },
        iter: 15, threads: 1);

    private static string FanOut(string racks)
    {
        var hosts = racks.Split(", ").Select((r, i) => $"  h{i}: {{ model: fixed-32x100, racks: {r}, unit: {2 + (4 * i)} }}");
        return $$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 10 } }, pathways: {
              tray: { from: { x: 0 m, y: 0 m }, to: { x: 6 m, y: 0 m }, width: 300 mm } } } } } }
            devices:
              leaf: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
            {{string.Join('\n', hosts)}}
            links:
              edge: { from: [{{string.Join(", ", racks.Split(", ").Select((_, i) => $"h{i}"))}}], to: { of: leaf, breakout: 4x100G },
                pattern: each-to-each, rate: 100G, type: 100GBASE-DR, cord: fan-os2-mpo12-4lc }
            """;
    }

    // Cords of lines lie in the same trays: the one from the shelf to the panel in the third rack, and none inside a rack.
    [Fact]
    public void CordsOfLines_LieInTheTray()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            sites:
              bay: { halls: { hall: { rows: { A: { racks: 4 } }, pathways: {
                tray: { from: { x: 0 m, y: 0 m }, to: { x: 3 m, y: 0 m }, width: 100 mm } } } } }
              vault: { halls: { room: { rows: { V: { racks: 1 } } } } }
            devices:
              gate: { model: fixed-32x400, racks: hall/A/1, unit: 20 }
              gate-shelf: { model: line-shelf-2u, racks: hall/A/1, unit: 24 }
              gate-odf: { model: panel-1u-12, racks: hall/A/3, unit: 44 }
              far: { model: fixed-32x400, racks: room/V/1, unit: 20 }
              far-shelf: { model: line-shelf-2u, racks: room/V/1, unit: 24 }
              far-odf: { model: panel-1u-12, racks: room/V/1, unit: 44 }
              near-odf: { model: panel-1u-12, racks: hall/A/4, unit: 44 }
            trunks: { t: { from: gate-odf, to: near-odf, cable: trunk-os2-12 } }
            spans: { railway: { from: bay, to: vault, length: 78 km, measured-loss: 17.9 dB } }
            lines:
              copy: { from: bay, to: vault, type: 400ZR, channels: 4, from-ports: { of: gate, ports: "4, 8, 12, 16" },
                to-ports: { of: far, ports: "4, 8, 12, 16" }, from-shelf: gate-shelf, to-shelf: far-shelf,
                from-panel: gate-odf, to-panel: far-odf }
            """);
        var designed = Expect.Designed(judged);
        var piece = Assert.Single(designed.Pathways.Value.Pieces, p => p.Key.Kind == CableKind.LineCord);
        Assert.Equal(["hall/tray"], designed.Pathways.Value.Through(piece.Key));
        var bundle = Assert.Single(designed.Pulls.Value.Bundles, b => b.Cables[0] == piece.Key);
        Assert.Equal((2, 0), (bundle.Fibres, bundle.SpareFibres));
        var name = Lanewright.Deliverables.PullPlanView.Name(designed, piece.Key);
        Assert.Contains(Delivered.Table(judged, "cables.csv"), r => r.StartsWith(name + ",", StringComparison.Ordinal)
            && r.Contains("hall/tray", StringComparison.Ordinal));
        // The panel has a trunk and the end of a span, nobody knows in which place: none of the others is surely free.
        var panel = Enumerable.Range(0, designed.Plan.Devices.Count).Single(d => designed.Plan.Devices.Name(d) == "gate-odf");
        Assert.True(designed.Plant.Value.Fronts.Value.HasLines(panel));
    }

    // Weight worked by hand: 3.0 mm at 1.35 g/cm3 is 9.543 g/m.
    [Fact]
    public void Weight_IsThatOfTheOrderedLengths()
    {
        var first = Planned.Value.Pulls.Value.Bundles[0];
        Assert.Equal(24 * first.Length.Metres * Math.PI / 4 * 9 * 1.35 / 1000, first.Kilograms, 6);
    }

    // Source: best packings of equal circles in a circle (Graham 1968 and later tables; memory): ring over circle 2.155, 3, 4.863 and
    // 5.652. A bundle tied by hand is no thinner, and not much thicker.
    [Theory]
    [InlineData(3, 2.155)]
    [InlineData(7, 3.0)]
    [InlineData(19, 4.863)]
    [InlineData(24, 5.652)]
    public void Bundle_IsNoThinnerThanTheBestPacking(int cables, double best)
    {
        var packing = StandardsLibrary.Shipped.Facility("bundle", "packing").Value;
        var ratio = BundleSize.Of(Length.FromMillimetres(1), cables, packing).Millimetres;
        Assert.InRange(ratio, best, best * 1.15);
    }

    [Fact]
    public void Section_HoldsCirclesWithinItsWallsAndApart() => Gen.Double[1, 20].Array[1, 25].Sample(radii =>
    {
        const double width = 60;
        var places = SectionPacking.Pack(width, radii);
        for (var i = 0; i < radii.Length; i++)
        {
            var (x, y) = places[i]!.Value;
            Assert.InRange(x, radii[i] - 1e-4, width - radii[i] + 1e-4);
            Assert.True(y >= radii[i] - 1e-4);
            for (var j = 0; j < i; j++)
            {
                var (dx, dy) = (x - places[j]!.Value.X, y - places[j]!.Value.Y);
                Assert.True(Math.Sqrt((dx * dx) + (dy * dy)) >= radii[i] + radii[j] - 1e-4);
            }
        }
    }, iter: 60);
}
