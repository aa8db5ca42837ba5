using CsCheck;
using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Pathways;

/// <summary>Bundles, their order, and how they lie in a tray.</summary>
public sealed class PullPlanTests
{
    private static readonly Lazy<Lanewright.Rules.DesignedPlan> Planned = new(() => Expect.Designed(PlanBlock.Compile("""
        lanewright: 1
        sites: { main: { halls: { hall: { rows: { A: { racks: 20 } }, pathways: {
          tray: { from: { x: 0 m, y: 0 m }, to: { x: 12 m, y: 0 m }, width: 300 mm } } } } } }
        devices:
          far: { model: fixed-64x400, racks: hall/A/1, unit: 40 }
          near: { model: fixed-32x400, racks: hall/A/18, unit: 40 }
          spine: { model: fixed-64x400, racks: hall/A/20, unit: 30, count: 2, per-rack: 2, step: 4 }
        links:
          long: { from: far, to: spine-1, count: 30, rate: 400G, type: 400GBASE-DR4 }
          short: { from: near, to: spine-2, count: 3, rate: 400G, type: 400GBASE-DR4 }
        """)));

    [Fact]
    public void Bundles_HoldEveryCableOnce_FarthestFirst()
    {
        var bundles = Planned.Value.Pulls.Value.Bundles;
        Assert.Equal([24, 6, 3], bundles.Select(b => b.Cables.Length));
        Assert.Equal(33, bundles.SelectMany(b => b.Cables).Distinct().Count());
        Assert.Equal([PullReason.Longest, PullReason.SameRoute, PullReason.Shorter], bundles.Select(b => b.Reason));
        Assert.Equal(["B0001", "B0002", "B0003"], bundles.Select(b => b.Name));
        Assert.Equal(bundles.OrderByDescending(b => b.Way.Total).Select(b => b.Order), bundles.Select(b => b.Order));
    }

    // Source: 400GBASE-DR4 on a 12-position array lights eight fibres, the centre four stay dark (array-connector notes, seen).
    [Fact]
    public void SpareFibres_AreTheDarkOnesOfTheArray()
    {
        var first = Planned.Value.Pulls.Value.Bundles[0];
        Assert.Equal((24 * 12, 24 * 4), (first.Fibres, first.SpareFibres));
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
