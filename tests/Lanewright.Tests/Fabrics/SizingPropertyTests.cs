using CsCheck;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Tests.Fabrics.Support;

namespace Lanewright.Tests.Fabrics;

/// <summary>What must hold of every answer, whatever is asked.</summary>
public sealed class SizingPropertyTests
{
    private static readonly SyntheticSwitch[] Switches =
        [new("a", 12, 11), new("b", 20, 17), new("c", 32, 40), new("d", 48, 55)];

    private static readonly FinderContext Shipped = new(
        StandardsLibrary.Shipped, CatalogueBinder.Shipped, PolicyBinder.Default(StandardsLibrary.Shipped));

    [Fact]
    public void MoreHosts_AreNeverCheaper() => Gen.Select(Gen.Int[1, 300], Gen.Int[1, 40], Gen.Int[1, 4]).Sample(
        (hosts, more, ratio) =>
        {
            var few = Least(Switches, SyntheticFabrics.Wanted(hosts, new Ratio(ratio, 1)));
            var many = Least(Switches, SyntheticFabrics.Wanted(hosts + more, new Ratio(ratio, 1)));
            Assert.True(few <= many, $"{hosts} hosts cost {few} and {hosts + more} cost {many}");
        },
        iter: 40);

    [Fact]
    public void HigherRatio_IsNeverDearer() => Gen.Select(Gen.Int[1, 300], Gen.Int[1, 12], Gen.Int[1, 12]).Sample(
        (hosts, ratio, more) =>
        {
            var strict = Least(Switches, SyntheticFabrics.Wanted(hosts, new Ratio(ratio + 2, 3)));
            var loose = Least(Switches, SyntheticFabrics.Wanted(hosts, new Ratio(ratio + 2 + more, 3)));
            Assert.True(loose <= strict, $"{loose} against {strict}");
        },
        iter: 40);

    [Fact]
    public void LargerCatalogue_IsNeverDearer() => Gen.Select(Gen.Int[1, 300], Gen.Int[1, 4], Gen.Int[0, 3]).Sample(
        (hosts, ratio, without) =>
        {
            var wanted = SyntheticFabrics.Wanted(hosts, new Ratio(ratio, 1));
            var whole = Least(Switches, wanted);
            var part = Least([.. Switches.Where((_, i) => i != without)], wanted);
            Assert.True(whole <= part, $"{whole} against {part}");
        },
        iter: 40);

    [Fact]
    public void NoNarrowerQuestion_GoesBelowTheBound()
    {
        var wanted = Question(600, 100);
        var whole = new Sizing(Shipped).Of(wanted);
        Assert.NotNull(whole.LowerBound);
        var narrower = CatalogueBinder.Shipped.Devices.SelectMany(d => d.Banks).Select(b => b.Cage.FormFactor.Name).Distinct()
            .Select(f => wanted with { FormFactors = [f] })
            .Concat(new[] { 40.0, 100, 200, 400, 800 }.Select(r => wanted with { UplinkRates = [BitRate.FromGigabits(r)] }))
            .Concat(Enum.GetValues<FabricShape>().Select(s => wanted with { Shapes = [s] }));
        var sizing = new Sizing(Shipped);
        var found = 0;
        foreach (var question in narrower)
        {
            foreach (var option in sizing.Of(question).Options)
            {
                found++;
                Assert.True(option.PriceOverYears >= whole.LowerBound, $"{option.Needs.Name}: {option.PriceOverYears}");
                Assert.True(option.LowerBound <= option.PriceOverYears);
            }
        }
        Assert.True(found > 10, $"only {found} options were found");
    }

    [Fact]
    public void SameQuestion_HasTheSameAnswer_WhateverTheOrderOfTheCatalogue()
    {
        var wanted = Question(400, 200) with { Growth = Share.From(0.25), Years = 3 };
        var shuffled = new Catalogue(CatalogueBinder.Shipped.Items.Reverse());
        var first = Text(new Sizing(Shipped).Of(wanted));
        Assert.Equal(first, Text(new Sizing(Shipped).Of(wanted)));
        Assert.Equal(first, Text(new Sizing(Shipped with { Catalogue = shuffled }).Of(wanted)));
        var warm = new Sizing(Shipped);
        warm.Of(Question(700, 100));
        Assert.Equal(first, Text(warm.Of(wanted)));
    }

    /// <summary>What is ruled out before it is placed has to be out of reach: what an option draws in one rack is enough for it.</summary>
    [Theory]
    [InlineData(30, 100, 1)]
    [InlineData(150, 200, 2)]
    [InlineData(700, 100, 1)]
    [InlineData(1500, 400, 3)]
    public void WhatAnOptionDraws_IsEnoughForIt(int hosts, double rate, int ratio)
    {
        var wanted = Question(hosts, rate) with { Oversubscription = [new Ratio(ratio, 1)] };
        var sizing = new Sizing(Shipped);
        var options = sizing.Of(wanted).Options;
        Assert.NotEmpty(options);
        foreach (var option in options)
        {
            var asked = sizing.Of(wanted with { Shapes = [option.Shape], RackPower = option.Needs.RackPower });
            Assert.True(asked.Options is [var kept] && kept.PriceOverYears <= option.PriceOverYears, $"{option.Needs.Name} is not found");
        }
    }

    /// <summary>Switches that fill more racks than are kept for upper tiers are not priced one by one until the search is broken
    /// off.</summary>
    [Theory]
    [InlineData(1000, 400, 900)]
    [InlineData(2000, 100, 500)]
    public void WhatRacksDoNotTake_IsProven(int hosts, double rate, double watts)
    {
        var wanted = Question(hosts, rate) with { Oversubscription = [Ratio.One], RackPower = Watts.From(watts) };
        Assert.Null(new Sizing(Shipped).Of(wanted).LowerBound);
    }

    [Fact]
    public void Years_AddUpToThePriceOverThem()
    {
        var answer = new Sizing(Shipped).Of(Question(500, 100) with { Growth = Share.From(0.3), Years = 4 });
        Assert.NotEmpty(answer.Options);
        Assert.All(answer.Options, o =>
        {
            Assert.Equal([500, 650, 845, 1099, 1429], o.Years.Select(y => y.Hosts));
            var bought = o.Years.Aggregate(Money.Zero, (sum, y) => sum + y.Bought);
            Assert.Equal(o.PriceOverYears, bought + o.EnergyOverYears.At(Question(1, 1).EnergyPrice));
            Assert.Equal(o.Price, o.Years[0].Bought);
            // The upper tier stands from the start; what is left of it takes the hosts of the last year.
            Assert.All(o.Switches.Where(s => s.Role is SwitchRole.Spine or SwitchRole.Core), s => Assert.Equal(s.Count, s.CountOverYears));
            Assert.True(o.GrowthLeft >= 929, $"{o.Shape} has room for {o.GrowthLeft} more");
        });
    }

    [Fact]
    public void Survivors_KeepTheRatio()
    {
        var answer = new Sizing(Shipped).Of(Question(400, 100) with { Survive = 1 });
        var options = answer.Options.Where(o => o.Tiers == 2).ToList();
        Assert.NotEmpty(options);
        Assert.All(options, o => Assert.All(o.Uplinks, u =>
        {
            Assert.True(u.Uppers >= 2);
            Assert.Equal(u.Uplinks, u.Uppers * u.Parallel);
            // Host-side bandwidth against that of all spines but one.
            Assert.True(u.Achieved.Value * u.Uppers / (u.Uppers - 1) <= 3 + 1e-12, $"{u.Achieved} over {u.Uppers}");
            Assert.True(o.Needs.Survives >= 1);
        }));
    }

    [Fact]
    public void WhatExists_IsUsedFirstAndCostsNothing()
    {
        var wanted = SyntheticFabrics.Wanted(96, Ratio.One, shapes: FabricShape.LeafSpine);
        var sizing = SyntheticFabrics.Sizing([new("A32", 32, 1000)]);
        var model = SyntheticFabrics.Catalogue([new("A32", 32, 1000)], 1).Find<DeviceModel>("A32")!;
        var bought = Assert.Single(sizing.Of(wanted).Options);
        var reused = Assert.Single(sizing.Of(wanted with { Reuse = [new Reused(model, 4)] }).Options);
        Assert.Equal(bought.Price - Money.FromUnits(4000), reused.Price);
        Assert.Equal(4, reused.Layout.Groups.Sum(g => g.Role == SwitchRole.Host ? 0 : g.Existing));
    }

    private static Money Least(SyntheticSwitch[] switches, WantedFabric wanted)
    {
        var answer = SyntheticFabrics.Sizing(switches).Of(wanted);
        Assert.NotEmpty(answer.Options);
        Assert.Equal(answer.LowerBound, answer.Options[0].PriceOverYears);
        return answer.Options[0].PriceOverYears;
    }

    private static WantedFabric Question(int hosts, double rate) => new()
    {
        Hosts = [new HostDemand { Name = "host", Count = hosts, Rate = BitRate.FromGigabits(rate), PerRack = 16 }],
        Oversubscription = [new Ratio(3, 1)],
        Years = 5,
        EnergyPrice = EnergyPrice.FromPerKilowattHour(0.15m),
        Overhead = Share.From(0.4),
    };

    private static string Text(SizingAnswer answer) => string.Join('\n', answer.Options.Select(o => string.Join(' ', o.Shape, o.Price,
        o.PriceOverYears, o.LowerBound, o.Watts, o.RackUnits, o.GrowthLeft,
        string.Join(',', o.Switches.Select(s => s.Count + s.Model.Name)),
        string.Join(',', o.CablesByModel.Select(c => c.Count + c.Item.Name + c.Length)),
        string.Join(',', o.Layout.Links.Select(l => l.Name)))))
        + string.Join('\n', answer.Lost.Select(l => l.Shape + l.Reason));
}
