using System.Collections.Immutable;
using CsCheck;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Tests.Fabrics;

/// <summary>Conflicts of wishes and how far each has to give way, over made-up designs, against plain enumeration.</summary>
public sealed class WishTests
{
    private static readonly Gen<FabricNeeds> Designs = Gen.Select(
        Gen.Int[1, 40], Gen.Int[1, 6], Gen.Int[1, 3], Gen.Int[1, 30], Gen.Int[1, 20], Gen.Int[1, 500], Gen.Int[0, 2],
        (hosts, ratio, tiers, units, power, price, survives) => new FabricNeeds
        {
            Shape = tiers == 1 ? FabricShape.FixedBox : tiers == 2 ? FabricShape.LeafSpine : FabricShape.ThreeTier,
            Tiers = tiers,
            Planes = 1,
            Hosts = hosts,
            Oversubscription = [.. Enumerable.Repeat(new Ratio(ratio, 2), tiers - 1)],
            OversubscriptionLeft = [.. Enumerable.Repeat(new Ratio(ratio, 2), tiers - 1)],
            Survives = survives,
            FormFactors = [power % 2 == 0 ? "QSFP-DD" : "OSFP"],
            UplinkRates = [],
            RackUnits = units,
            RackPower = Watts.From(power * 100),
            RackWeight = Mass.FromKilograms(units * 3),
            Price = Money.FromUnits(price),
            PriceOverYears = Money.FromUnits(price),
            Fits = true,
            Name = $"design of {hosts} hosts for {price}",
        });

    private static readonly WantedFabric Wanted = new()
    {
        Hosts = [new HostDemand { Name = "host", Count = 25, Rate = BitRate.FromGigabits(100) }],
        Oversubscription = [new Ratio(3, 2)],
        Survive = 1,
        MostTiers = 2,
        FormFactors = ["QSFP-DD"],
        RackUnits = 15,
        RackPower = Watts.From(1000),
        Budget = Money.FromUnits(200),
    };

    [Fact]
    public void Conflicts_AreTheMinimalSetsNoDesignKeeps() => Designs.Array[1, 14].Sample(drawn =>
    {
        var wishes = WishList.Of(Wanted);
        bool CanHave(IEnumerable<Wish> some) => drawn.Any(n => some.All(w => w.IsKept(n)));
        var subsets = Enumerable.Range(0, 1 << wishes.Length)
            .Select(bits => wishes.Where((_, i) => (bits & (1 << i)) != 0).ToList())
            .Where(s => !CanHave(s) && s.All(w => CanHave(s.Where(o => o != w))));
        Assert.Equal(
            subsets.Select(s => string.Join(' ', s.Select(w => w.Key))).Order(),
            Conflicts.Of(Wanted, question => Answer(drawn, question)).Select(s => string.Join(' ', s.Select(w => w.Key))).Order());
    });

    [Fact]
    public void NoDesignAtAll_IsAConflictOfNothing() => Assert.Equal([[]], Conflicts.Of(Wanted, _ => []).Select(s => s.ToArray()));

    [Fact]
    public void Relaxations_AreTheLeastAnyDesignNeeds() => Designs.Array[1, 14].Where(d => !d.Any(n => Keeps(Wanted, n))).Sample(drawn =>
    {
        var conflicts = Conflicts.Of(Wanted, question => Answer(drawn, question));
        var found = new Relaxations(Wanted, conflicts, question => Answer(drawn, question)).All().ToDictionary(r => r.Wish.Key);
        string? Least(string key, Func<IEnumerable<FabricNeeds>, string> least)
        {
            var others = WishList.Of(Wanted).Where(w => w.Key != key);
            var possible = drawn.Where(n => others.All(w => w.IsKept(n))).ToList();
            return possible.Count == 0 ? null : least(possible);
        }

        Assert.Equal(Least("rack-units", d => $"{d.Min(n => n.RackUnits)}"), found["rack-units"].Possible);
        Assert.Equal(Least("rack-power", d => d.Min(n => n.RackPower).ToString()), found["rack-power"].Possible);
        Assert.Equal(Least("budget", d => Numerals.Grouped(d.Min(n => n.PriceOverYears.Units), 2)), found["budget"].Possible);
        Assert.Equal(Least("tiers", d => $"{d.Min(n => n.Tiers)}"), found["tiers"].Possible);
        Assert.Equal(Least("survive", d => $"{d.Max(n => n.Survives)}"), found["survive"].Possible);
        Assert.Equal(Least("hosts", d => $"{d.Max(n => n.Hosts)}"), found["hosts"].Possible);
        Assert.Equal(
            Least("oversubscription", d => string.Join(", ", d.MinBy(n => n.Oversubscription[0].Value)!.Oversubscription)),
            found["oversubscription"].Possible);
        Assert.Equal(Least("form-factors", _ => "also OSFP"), found["form-factors"].Possible);
    });

    [Theory]
    [InlineData(7, 3, 4, 5, 3)]
    [InlineData(1, 0, 1, 1, 1)]
    public void FewerHosts_KeepTheMix(int together, int least, int most, int a, int b)
    {
        var host = Wanted.Hosts[0];
        var mix = Wanted with { Hosts = [host with { Count = a }, host with { Name = "b", Count = b }] };
        var shares = BreakEvens.WithHosts(mix, together).Hosts;
        Assert.Equal(together, shares.Sum(h => h.Count));
        Assert.InRange(shares[0].Count, least, most + 1);
    }

    /// <summary>Designs that keep the wishes, the cheapest of each shape, as the engine answers.</summary>
    private static ImmutableArray<FabricNeeds> Answer(FabricNeeds[] designs, WantedFabric question) =>
    [
        .. designs.Where(n => Keeps(question, n)).GroupBy(n => n.Shape).Select(g => g.MinBy(n => n.PriceOverYears)!)
            .OrderBy(n => n.PriceOverYears),
    ];

    private static bool Keeps(WantedFabric question, FabricNeeds needs) => WishList.Of(question).All(w => w.IsKept(needs));
}
