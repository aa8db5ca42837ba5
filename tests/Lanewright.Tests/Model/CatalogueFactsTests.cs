using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;

namespace Lanewright.Tests.Model;

/// <summary>The shipped catalogue agrees with what everybody in the trade knows (common practice, no source).</summary>
public sealed class CatalogueFactsTests
{
    private static readonly Catalogue Shipped = CatalogueBinder.Shipped;

    [Theory]
    [InlineData("fixed-32x100", 3.2, 1)]
    [InlineData("fixed-64x100", 6.4, 2)]
    [InlineData("fixed-32x400", 12.8, 1)]
    [InlineData("fixed-64x400", 25.6, 2)]
    [InlineData("fixed-64x800", 51.2, 2)]
    [InlineData("fixed-64x1600", 102.4, 3)]
    public void Switch_CarriesItsSiliconInItsHeight(string name, double terabits, int units)
    {
        var model = Shipped.Find<DeviceModel>(name)!;
        Assert.Equal(terabits * 1000, model.Capacity.Gigabits, 1e-6);
        Assert.Equal(units, model.Units);
        var faceplate = model.Banks
            .Where(b => b.Cage.FormFactor.Name != "RJ45")
            .Sum(b => b.Count * b.Cage.Modes.Max(m => m.Total.Gigabits));
        Assert.Equal(terabits * 1000, faceplate, 1e-6);
    }

    // 64x800G in two rack units = 128x400G = 512x100G.
    [Theory]
    [InlineData(400, 128)]
    [InlineData(100, 512)]
    public void SixtyFour800G_SplitAsEverybodyCounts(double gigabits, int ports)
    {
        var bank = Shipped.Find<DeviceModel>("fixed-64x800")!.Banks[0];
        Assert.Equal(ports, bank.Count * bank.Cage.Modes.Where(m => m.Rate.Gigabits == gigabits).Max(m => m.Ways));
    }

    [Theory]
    [InlineData(100, 3.0)]
    [InlineData(400, 2.5)]
    public void PassiveCopper_IsNotStockedBeyondWhatIsUsed(double gigabits, double metres) => Assert.All(
        Shipped.Assemblies.Where(a => a.Medium == CableMedium.Dac && a.LegRate.Gigabits == gigabits && a.Legs == 1),
        a => Assert.True(a.Lengths[^1].Metres <= metres, a.Name));

    [Fact]
    public void FourTimesTheSpeed_CostsAboutTwice()
    {
        var fast = Shipped.Find<DeviceModel>("fixed-32x400")!.Price.Units;
        var slow = Shipped.Find<DeviceModel>("fixed-32x100")!.Price.Units;
        var ratio = (double)(fast / slow);
        Assert.InRange(ratio, 1.7, 2.3);
    }

    [Fact]
    public void EightHundred_CostsAQuarterToAThirdLessPerBit()
    {
        var two = 2 * Shipped.Find<ModuleModel>("m-400g-dr4")!.Price.Units;
        var one = Shipped.Find<ModuleModel>("m-800g-dr8-o")!.Price.Units;
        Assert.InRange((double)(1 - (one / two)), 0.25, 0.30);
    }

    [Fact]
    public void Modules_RunOnlyWhatTheirContactsCarry() => Assert.All(Shipped.Modules, m => Assert.All(m.Applications, a =>
    {
        Assert.True(a.Host.Lanes * a.Instances <= m.FormFactor.Lanes, $"{m.Name} {a}");
        Assert.True(a.Host.Signal.Baud <= m.FormFactor.LaneBaudMax, $"{m.Name} {a}");
        if (a.Optical is not null) Assert.Equal(a.Host.Rate, a.Optical.Rate);
    }));

    [Fact]
    public void Modules_StayInsideTheirPowerClass() => Assert.All(Shipped.Modules.Where(m => m.PowerClass > 0), m =>
    {
        if (m.FormFactor.PowerOfClass(m.PowerClass) is { } most) Assert.True(m.Power <= most.Value, m.Name);
    });

    [Fact]
    public void EveryPriceShipped_IsMarkedAsInvented() =>
        Assert.All(Shipped.Items, i => Assert.Equal(Lanewright.Text.Mark.Invented, i.PriceMark));

    [Fact]
    public void EveryMode_HasAWayToBeMade()
    {
        var banks = Shipped.Devices.SelectMany(d => d.Banks).Concat(Shipped.Cards.SelectMany(c => c.Banks));
        Assert.All(banks, bank => Assert.All(bank.Cage.Modes, mode =>
            Assert.True(IsMade(bank.Cage, mode), $"{bank.Cage.FormFactor.Name} {mode}")));
    }

    private static bool IsMade(CageModel cage, PortMode mode) =>
        cage.FormFactor.Name == "RJ45"
        || mode.Rate.Gigabits is 1 or 50
        || Shipped.Modules.Any(m => cage.FormFactor.Accepts.Contains(m.FormFactor.Name)
            && m.Applications.Any(a => a.Rate == mode.Rate && (mode.Ways == 1 || a.Instances >= mode.Ways)))
        || Shipped.Assemblies.Any(a => a.Legs == mode.Ways && a.LegRate == mode.Rate && cage.FormFactor.Accepts.Contains(a.Near.Name));
}
