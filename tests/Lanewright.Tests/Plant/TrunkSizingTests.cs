using System.Collections.Immutable;
using System.Text.Json;
using CsCheck;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Tests.Plant;

/// <summary>Sizes of trunks held against trying every mix.</summary>
public sealed class TrunkSizingTests
{
    private const int MostOfAKind = 14;

    /// <summary>For each number of trunks the cheapest mix of so many is found by trying all.</summary>
    [Fact]
    public void Frontier_IsThatOfTryingEveryMix() => Gen.Select(
        Gen.Select(Gen.Int[2, 12], Gen.Int[1, 90]).List[1, 3], Gen.Int[0, 24]).Sample((kinds, ports) =>
        {
            ImmutableArray<TrunkKind> all = [.. kinds.Select((k, i) => Kind(i, k.Item1, k.Item2))];
            var found = TrunkFrontier.Of(all, ports);
            Assert.True(found.IsExact);
            var needed = Math.Max(1, ports);
            var expected = new List<(int Trunks, decimal Price)>();
            foreach (var mix in Mixes(all).Where(m => m.Ports >= needed).OrderBy(m => m.Trunks).ThenBy(m => m.Price))
                if (expected.Count == 0 || mix.Price < expected[^1].Price) expected.Add((mix.Trunks, mix.Price));
            Assert.Equal(expected, found.Mixes.Select(m => (m.Trunks, m.Price.Hundredths)));
            Assert.All(found.Mixes, m => Assert.True(m.Ports >= needed));
            Assert.Equal(expected[^1].Price, found.Bound);
        });

    // Source: packing by brute force (derived): 200 fibres of trunks of 12, 24 and 144 at 3, 5 and 22 cost 35 at the least, and six groups
    // of eight need two trunks of 24.
    [Theory]
    [InlineData(200, "12:3 24:5 144:22", 35, 4)]
    [InlineData(48, "24:5", 10, 2)]
    public void CheapestMix_IsThatOfThePackingCase(int fibres, string kinds, int price, int trunks)
    {
        var each = kinds.Split(' ').Select(k => k.Split(':').Select(int.Parse).ToArray()).ToArray();
        var found = TrunkFrontier.Of([.. each.Select((k, i) => Kind(i, k[0], k[1]))], fibres);
        Assert.True(found.IsExact);
        Assert.Equal(price, found.Mixes[^1].Price.Hundredths);
        Assert.Equal(trunks, found.Mixes[^1].Trunks);
    }

    /// <summary>A need too large for the table: the fewest are still exact, and what is found stands between the bound and it.</summary>
    [Fact]
    public void LargeNeed_HasItsBound()
    {
        ImmutableArray<TrunkKind> kinds = [Kind(0, 4, 30), Kind(1, 12, 70)];
        var found = TrunkFrontier.Of(kinds, 20_000);
        Assert.False(found.IsExact);
        Assert.Equal(1667, found.Mixes[0].Trunks);
        Assert.True(found.Bound <= found.Mixes[^1].Price.Hundredths);
        Assert.True(found.Mixes[^1].Price.Hundredths - found.Bound <= kinds.Max(k => k.Price.Hundredths));
    }

    /// <summary>Two groups share a panel of few places: the cheapest choice together is found by trying all pairs of mixes.</summary>
    [Theory]
    [InlineData(40)]
    [InlineData(9)]
    [InlineData(7)]
    [InlineData(6)]
    [InlineData(3)]
    public void PanelsWithFewPlaces_GetTheCheapestThatFits(int places)
    {
        var planned = Expect.Designed(PlanBlock.Compile(Plan(places)));
        var sizing = TrunkSizing.Of(planned.Plan, planned.Plant.Value, null);
        Assert.True(sizing.IsExact);
        decimal? best = null;
        var each = sizing.Groups.Select(g => Mixes(g.Kinds).Where(m => m.Ports >= g.Wanted).ToList()).ToList();
        foreach (var a in each[0])
            foreach (var b in each[1])
                if (a.Trunks + b.Trunks <= places && (best is null || a.Price + b.Price < best)) best = a.Price + b.Price;
        Assert.Equal(best, sizing.Price?.Hundredths);
    }

    /// <summary>18 ports and half of them for growth are 27; of 24 fibres two trunks hold 24 ports and a third the rest.</summary>
    [Fact]
    public void Growth_CountsPortsAndNotTrunks()
    {
        Assert.Equal(27, TrunkNeed.Ports(18, Share.FromPercent(50)));
        Assert.Equal(3, TrunkNeed.Trunks(12, 18, Share.FromPercent(50)));
        Assert.Equal(11, TrunkNeed.Ports(10, Share.FromPercent(10)));
        Assert.Equal(0, TrunkNeed.Ports(0, Share.FromPercent(50)));
    }

    /// <summary>Eight of twelve fibres carry light through open arrays of twelve, and all through those of eight: counted by
    /// hand.</summary>
    [Fact]
    public void Utilisation_ShowsTheDarkFibresOfEightOfTwelve()
    {
        var planned = Expect.Designed(PlanBlock.Compile(File.ReadAllText(Repository.Path("tests", "plans", "halls", "plan.yaml"))));
        var group = TrunkSizing.Of(planned.Plan, planned.Plant.Value, Share.From(0)).Groups.Single(g => g.Trunk.Name == "hall-arrays");
        var lit = group.Kinds.ToDictionary(k => k.Fibres, k => group.Lit(TrunkFrontier.Alone(k, group.Wanted)));
        Assert.Equal([8, 12], lit.Keys.Order());
        Assert.Equal(1.0, lit[8], 1e-12);
        Assert.Equal(8.0 / 12, lit[12], 1e-12);
    }

    [Fact]
    public void Command_HasTheKeysThatToolsRead()
    {
        var run = Program.Run("trunks tests/plans/halls --growth 25% --json");
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        var group = json.RootElement.GetProperty("groups").EnumerateArray().Single(g => g.GetProperty("trunk").GetString() == "rows");
        Assert.Equal(25, group.GetProperty("growthPercent").GetDouble());
        Assert.Equal(5, group.GetProperty("portsWanted").GetInt32());
        Assert.Equal(1, group.GetProperty("fewest").GetProperty("trunks").GetInt32());
        Assert.True(json.RootElement.GetProperty("proven").GetBoolean());
        Assert.Equal(2, Program.Run("trunks tests/plans/halls --growth much").Code);
        Assert.Equal(2, Program.Run("trunks tests/plans/starter").Code);
    }

    private static IEnumerable<(int Trunks, int Ports, decimal Price)> Mixes(ImmutableArray<TrunkKind> kinds)
    {
        IEnumerable<(int Trunks, int Ports, decimal Price)> mixes = [(0, 0, 0m)];
        foreach (var kind in kinds)
        {
            var before = mixes.ToList();
            mixes = before.SelectMany(m => Enumerable.Range(0, MostOfAKind + 1)
                .Select(n => (m.Trunks + n, m.Ports + (n * kind.Ports), m.Price + (n * kind.Price.Hundredths))));
        }
        return mixes.Where(m => m.Trunks > 0);
    }

    private static TrunkKind Kind(int index, int ports, int price) => new(
        new CordModel { Name = $"k{index}", Title = "", Fibre = "OS2", Near = "MPO-12", Far = "MPO-12", Lengths = [] },
        null, 2 * ports, ports, Money.FromHundredths(price));

    private static string Plan(int places) => $$"""
        lanewright: 1
        catalogue: own.yaml
        sites: { main: { halls: { hall: { rows: { A: { racks: 2 }, S: { racks: 2, y: 30 m } } } } } }
        devices:
          leaf: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
          spine: { model: fixed-32x400, racks: hall/S/1, unit: 40 }
          near: { model: small, racks: hall/A/2, unit: 46 }
          far: { model: panel-4u-48, racks: hall/S/2, unit: 40 }
          other: { model: panel-4u-48, racks: hall/S/2, unit: 30 }
        trunks:
          one: { from: near, to: far, cable: trunk-os2-12, count: 3, cassette: cassette-lc-sm }
          two: { from: near, to: other, cable: trunk-os2-12, count: 3, cassette: cassette-lc-sm, growth: 100% }
        links:
          a: { from: leaf, to: spine, rate: 400G, count: 15, type: 400GBASE-FR4, through: one }
          b: { from: leaf, to: spine, rate: 400G, count: 11, type: 400GBASE-FR4, through: two }
        # file: own.yaml
        devices: { small: { kind: panel, title: a small panel, slots: {{places}}, units: 1 } }
        cords:
          trunk-os2-24:
            title: dear
            fibre: OS2
            near: MPO-24
            far: MPO-24
            polish-near: APC
            polish-far: APC
            pins-near: pinned
            pins-far: pinned
            lengths: 40 m
            price: 400
        """;
}
