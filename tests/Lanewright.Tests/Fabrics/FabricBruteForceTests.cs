using CsCheck;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Tests.Fabrics.Support;

namespace Lanewright.Tests.Fabrics;

/// <summary>Small questions over invented switches, answered by counting every fabric one after another.</summary>
public sealed class FabricBruteForceTests
{
    private static readonly SyntheticSwitch[] Three = [new("A32", 32, 10, 300), new("B64", 64, 22, 550), new("C128", 128, 60, 1200)];

    private static readonly Gen<SyntheticSwitch[]> Switches =
        from count in Gen.Int[1, 3]
        from radix in Gen.Int[4, 24].Array[count]
        from price in Gen.Int[1, 60].Array[count]
        select Enumerable.Range(0, count).Select(i => new SyntheticSwitch("s" + i, radix[i], price[i])).ToArray();

    private static readonly Gen<Ratio> Ratios =
        from above in Gen.Int[1, 5]
        from below in Gen.Int[1, 3]
        select new Ratio(Math.Max(above, below), below);

    /// <summary>Cases D01, D02 and D10: invented costs, found by brute force elsewhere. A link costs 1, those of hosts included
    /// here.</summary>
    [Theory]
    [InlineData(512, 1, "A32", 32, 16, 512, 992)]
    [InlineData(512, 3, "A32", 22, 8, 176, 476)]
    [InlineData(96, 1, "A32", 6, 4, 96, 196)]
    public void LeafSpine_IsTheOneFoundElsewhere(int hosts, int ratio, string model, int leaves, int spines, int links, int cost)
    {
        var option = Best(hosts, new Ratio(ratio, 1));
        Assert.Equal((leaves, spines, links), (option.Leaves, option.Spines, option.FabricLinks));
        Assert.All(option.Switches, s => Assert.Equal(model, s.Model.Name));
        Assert.Equal(Money.FromUnits(cost + hosts), option.Price);
        Assert.Equal(option.PriceOverYears, option.LowerBound);
    }

    /// <summary>Case D04: the same with power for cost. A kilowatt-hour at 1 and nothing else to pay.</summary>
    [Fact]
    public void LeafSpine_OfLeastPower_IsTheOneFoundElsewhere()
    {
        var free = Three.Select(s => s with { Price = 0 });
        var wanted = SyntheticFabrics.Wanted(2048, Ratio.One, shapes: FabricShape.LeafSpine) with
        {
            Years = 1,
            EnergyPrice = EnergyPrice.FromPerKilowattHour(1),
        };
        var option = Assert.Single(SyntheticFabrics.Sizing(free, linkPrice: 0).Of(wanted).Options);
        Assert.Equal((64, 32, 2048), (option.Leaves, option.Spines, option.FabricLinks));
        Assert.All(option.Switches, s => Assert.Equal("B64", s.Model.Name));
        Assert.Equal(52800, option.Watts.Value);
        Assert.Equal(Money.FromUnits(52.8 * 8760), option.PriceOverYears);
    }

    /// <summary>Case D11: one large box against the two tiers of D10.</summary>
    [Fact]
    public void FixedBox_IsTheOneFoundElsewhere()
    {
        var option = SyntheticFabrics.Sizing(Three).Of(SyntheticFabrics.Wanted(96, Ratio.One)).Options[0];
        Assert.Equal((FabricShape.FixedBox, "C128"), (option.Shape, option.Switches[0].Model.Name));
        Assert.Equal(Money.FromUnits(60 + 96), option.Price);
    }

    /// <summary>Case S21: six spines would have ports enough, and sixteen uplinks do not spread over six.</summary>
    [Fact]
    public void LeafSpine_SpreadsUplinksEqually()
    {
        var sizing = SyntheticFabrics.Sizing([new("S64", 64, 1000)]);
        var option = Assert.Single(sizing.Of(SyntheticFabrics.Wanted(1000, new Ratio(3, 1), shapes: FabricShape.LeafSpine)).Options);
        Assert.Equal((21, 8, 336), (option.Leaves, option.Spines, option.FabricLinks));
        Assert.Equal(2, option.Uplinks[0].Parallel);
    }

    [Fact]
    public void LeafSpine_CostsWhatBruteForceFinds() => (
        from switches in Switches
        from ratio in Ratios
        from hosts in Gen.Int[1, 120]
        from ports in Gen.Int[1, 2]
        from survive in Gen.Int[0, 1]
        from linkPrice in Gen.Int[0, 8]
        select (switches, ratio, hosts, ports, survive, linkPrice)).Sample(
        q =>
        {
            var wanted = SyntheticFabrics.Wanted(q.hosts, q.ratio, q.ports, q.survive, FabricShape.LeafSpine);
            var answer = SyntheticFabrics.Sizing(q.switches, q.linkPrice).Of(wanted);
            Holds(answer, FabricBruteForce.LeafSpine([(q.hosts, q.ports)], q.switches, q.ratio, q.survive, q.linkPrice, s => s.Price));
        },
        iter: 150);

    /// <summary>Racks full of hosts leave no room for leaves, which then stand in racks of their own: with cables of one price at any
    /// length that costs nothing, so the answer is the one that counting finds.</summary>
    [Fact]
    public void LeafSpine_WithRacksFullOfHosts_CostsWhatBruteForceFinds() => (
        from switches in Switches
        from ratio in Ratios
        from hosts in Gen.Int[1, 300]
        from ports in Gen.Int[1, 2]
        select (switches, ratio, hosts, ports)).Sample(
        q =>
        {
            var wanted = SyntheticFabrics.Wanted(q.hosts, q.ratio, shapes: FabricShape.LeafSpine) with
            {
                Hosts = [SyntheticFabrics.Hosts("host", q.hosts, q.ports) with { PerRack = 48 }],
            };
            var answer = SyntheticFabrics.Sizing(q.switches, 2).Of(wanted);
            Holds(answer, FabricBruteForce.LeafSpine([(q.hosts, q.ports)], q.switches, q.ratio, 0, 2, s => s.Price));
        },
        iter: 80);

    [Fact]
    public void MixedLeaves_CostWhatBruteForceFinds() => (
        from switches in Switches
        from ratio in Ratios
        from first in Gen.Int[1, 60]
        from second in Gen.Int[1, 60]
        from ports in Gen.Int[1, 3]
        from linkPrice in Gen.Int[0, 8]
        select (switches, ratio, first, second, ports, linkPrice)).Sample(
        q =>
        {
            var wanted = SyntheticFabrics.Wanted(q.first, q.ratio, shapes: FabricShape.LeafSpine) with
            {
                Hosts = [SyntheticFabrics.Hosts("a", q.first), SyntheticFabrics.Hosts("b", q.second, q.ports)],
            };
            var answer = SyntheticFabrics.Sizing(q.switches, q.linkPrice).Of(wanted);
            Holds(answer, FabricBruteForce.LeafSpine(
                [(q.first, 1), (q.second, q.ports)], q.switches, q.ratio, 0, q.linkPrice, s => s.Price));
        },
        iter: 150);

    [Fact]
    public void ThreeTier_CostsWhatBruteForceFindsWhereItSaysItIsProven()
    {
        const int cases = 100;
        var proven = 0;
        (from switches in Switches
         from leafRatio in Ratios
         from podRatio in Ratios
         from hosts in Gen.Int[1, 150]
         from linkPrice in Gen.Int[0, 8]
         select (switches, leafRatio, podRatio, hosts, linkPrice)).Sample(
            q =>
            {
                var wanted = SyntheticFabrics.Wanted(q.hosts, q.leafRatio, shapes: FabricShape.ThreeTier) with
                {
                    Oversubscription = [q.leafRatio, q.podRatio],
                };
                var answer = SyntheticFabrics.Sizing(q.switches, q.linkPrice).Of(wanted);
                var brute = FabricBruteForce.ThreeTier(q.hosts, q.switches, q.leafRatio, q.podRatio, q.linkPrice);
                if (brute is { } least && answer.Options is [var option] && option.Gap.Value > 0)
                {
                    // The search was broken off: what it claims is a design and a bound, with the best between them.
                    Assert.True(option.LowerBound <= Money.FromUnits(least), $"{option.LowerBound} is above {least}");
                    Assert.True(option.Price >= Money.FromUnits(least), $"{option.Price} is below {least}");
                    return;
                }
                Holds(answer, brute);
                Interlocked.Increment(ref proven);
            },
            iter: cases);
        Assert.True(proven > cases / 2, $"only {proven} of {cases} were proven");
    }

    private static FabricOption Best(int hosts, Ratio ratio) =>
        Assert.Single(SyntheticFabrics.Sizing(Three).Of(SyntheticFabrics.Wanted(hosts, ratio, shapes: FabricShape.LeafSpine)).Options);

    private static void Holds(SizingAnswer answer, long? brute)
    {
        if (brute is not { } least)
        {
            Assert.Empty(answer.Options);
            return;
        }
        var option = Assert.Single(answer.Options);
        Assert.Equal(Money.FromUnits(least), option.Price);
        Assert.True(option.LowerBound <= option.Price, $"{option.LowerBound} is above {option.Price}");
    }
}
