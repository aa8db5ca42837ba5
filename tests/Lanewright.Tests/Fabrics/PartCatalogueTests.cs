using CsCheck;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Fabrics;

/// <summary>A proven bound holds for every part of the catalogue: whatever is found with fewer switches could have been found with all.
/// A small catalogue is searched along other ways than a large one, so a false bound of the large one shows.</summary>
public sealed class PartCatalogueTests
{
    private static readonly FinderContext Shipped = new(
        StandardsLibrary.Shipped, CatalogueBinder.Shipped, PolicyBinder.Default(StandardsLibrary.Shipped));

    private static readonly string[] Switches =
        [.. CatalogueBinder.Shipped.Devices.Where(d => d.Kind == DeviceKind.Switch).Select(d => d.Name)];

    private static readonly Gen<double> Rates = Gen.OneOf(Gen.Const(25.0), Gen.Const(100.0), Gen.Const(200.0));

    /// <summary>The search once stopped at the first depth at which it found something, although that cost more than the depth.</summary>
    [Fact]
    public void DesignDearerThanItsDepth_IsNoProof() =>
        Hold(Question(337, 2, 100, 8, 2, 0.2, 4), ["fixed-64x400", "fixed-64x100", "fixed-48x100-8x400"], FabricShape.LeafSpine);

    [Fact]
    public void NoPartOfTheCatalogue_GoesBelowTheBound() => Gen.Select(
        Gen.Select(Gen.Int[2, 500], Gen.Int[1, 2], Rates, Gen.OneOf(Gen.Const(8), Gen.Const(16))),
        Gen.Select(Gen.Int[1, 4], Gen.OneOf(Gen.Const(0.0), Gen.Const(0.2)), Gen.Int[1, 4]),
        Gen.Shuffle(Switches)).Sample(
        (hosts, more, switches) => Hold(
            Question(hosts.Item1, hosts.Item2, hosts.Item3, hosts.Item4, more.Item1, more.Item2, more.Item3), switches[..3]),
        iter: 6);

    /// <summary>A dearer core that fits where a cheaper one does not is not beaten by it.</summary>
    [Fact]
    public void CheapCore_ThatFitsNoRack_HidesNoOther()
    {
        var wanted = Question(64, 1, 400, 16, 1, 0, 1) with
        {
            Shapes = [FabricShape.ThreeTier], FormFactors = ["QSFP-DD"], UplinkRates = [BitRate.FromGigabits(400)], RackUnits = 40,
        };
        var chassis = Shipped.Catalogue.Find<DeviceModel>("chassis-4")!;
        var tall = chassis with { Name = "chassis-tall", Units = 40, Price = chassis.Price - Money.FromUnits(10) };
        var hot = chassis with { Name = "chassis-hot", Maximum = Watts.From(90_000), Price = chassis.Price - Money.FromUnits(10) };
        var part = Shipped.Catalogue.Items.Where(i => i is not DeviceModel { Kind: DeviceKind.Switch or DeviceKind.Chassis }
            || i.Name is "chassis-4" or "fixed-32x400").ToList();
        Money? Least(WantedFabric question, params DeviceModel[] more) =>
            new Sizing(Shipped with { Catalogue = new Catalogue([.. part, .. more]) }).Of(question).Options
                .Select(o => (Money?)o.PriceOverYears).FirstOrDefault();
        Assert.NotNull(Least(wanted));
        Assert.True(Least(wanted, tall) <= Least(wanted));
        var cool = wanted with { RackUnits = null, RackPower = Watts.From(30_000) };
        Assert.NotNull(Least(cool));
        Assert.True(Least(cool, hot) <= Least(cool));
    }

    /// <summary>Two ratios that ask for the same whole numbers of spines have the same answer: 7:5 is exactly what 10 spines
    /// give.</summary>
    [Fact]
    public void RatioOfAHair_LosesNoSpine()
    {
        var wanted = Question(448, 1, 400, 16, 1, 0, 1) with
        {
            Shapes = [FabricShape.LeafSpine], UplinkRates = [BitRate.FromGigabits(400)], Oversubscription = [new Ratio(7, 5)],
        };
        var part = new Catalogue(Shipped.Catalogue.Items.Where(i =>
            i is not DeviceModel { Kind: DeviceKind.Switch or DeviceKind.Chassis } || i.Name == "fixed-32x400"));
        Money Least(Ratio ratio) =>
            new Sizing(Shipped with { Catalogue = part }).Of(wanted with { Oversubscription = [ratio] }).Options[0].PriceOverYears;
        Assert.Equal(Least(new Ratio(1401, 1000)), Least(new Ratio(7, 5)));
    }

    /// <summary>Spares are rounded up once for all kinds of host: the design found without them, with spares added by hand, is no cheaper
    /// than the bound said with them.</summary>
    [Theory]
    [InlineData(5, 5, 0.01)]
    [InlineData(7, 18, 0.02)]
    [InlineData(13, 29, 0.05)]
    public void SparesOfSeveralKinds_KeepTheBound(int one, int other, double spares)
    {
        var wanted = Question(one, 1, 400, 8, 1, 0, 3) with { Shapes = [FabricShape.LeafSpine] };
        wanted = wanted with { Hosts = [wanted.Hosts[0], wanted.Hosts[0] with { Name = "more", Count = other }] };
        var without = new Sizing(Shipped with { Policy = Shipped.Policy with { Spares = default } }).Of(wanted).Options[0];
        var with = new Sizing(Shipped with { Policy = Shipped.Policy with { Spares = Share.From(spares) } }).Of(wanted).Options[0];
        var parts = without.ModulesByModel.Concat(without.CablesByModel).Concat(without.SmallParts);
        var more = parts.Sum(p => (decimal)Math.Ceiling((p.Count * spares) - 1e-9) * p.UnitPrice.Units);
        Assert.True(with.LowerBound.Units <= without.PriceOverYears.Units + more,
            $"{without.PriceOverYears} and {more} of spares, but no less than {with.LowerBound} is said");
    }

    private static void Hold(WantedFabric wanted, string[] switches, FabricShape? needed = null)
    {
        var part = new Catalogue(Shipped.Catalogue.Items.Where(i =>
            i is not DeviceModel { Kind: DeviceKind.Switch or DeviceKind.Chassis } device || switches.Contains(device.Name)));
        var whole = new Sizing(Shipped).Of(wanted);
        var bounds = whole.Options.ToDictionary(o => o.Shape, o => o.LowerBound);
        var found = new Sizing(Shipped with { Catalogue = part }).Of(wanted).Options;
        if (needed is { } shape) Assert.Contains(found, o => o.Shape == shape);
        foreach (var option in found)
        {
            if (!bounds.TryGetValue(option.Shape, out var bound))
            {
                // A shape that breaks off without a design claims nothing; any other would have been found.
                Assert.Contains("broken off", whole.Lost.Single(l => l.Shape == option.Shape).Reason);
                continue;
            }
            Assert.True(option.PriceOverYears >= bound,
                $"{option.Needs.Name} of {string.Join(", ", switches)} costs {option.PriceOverYears}, with all switches it is said to "
                + $"cost no less than {bound}");
        }
    }

    private static WantedFabric Question(int hosts, int ports, double rate, int perRack, int ratio, double growth, int years) => new()
    {
        Hosts =
        [
            new HostDemand { Name = "host", Count = hosts, Ports = ports, Rate = BitRate.FromGigabits(rate), PerRack = perRack },
        ],
        Oversubscription = [new Ratio(ratio, 1)],
        Growth = Share.From(growth),
        Years = years,
        EnergyPrice = EnergyPrice.FromPerKilowattHour(0.15m),
        Overhead = Share.From(0.4),
    };
}
