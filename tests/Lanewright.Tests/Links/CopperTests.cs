using Lanewright.Engineering.Copper;
using Lanewright.Engineering.Links;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Links;

/// <summary>Passive copper: loss, length and the code it needs.</summary>
public sealed class CopperTests
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    // Source: 802.3by cable classes as an operator's guide prints them (seen): up to 12.98 dB no code, 16.48 dB BASE-R, 22.48 dB RS.
    // The losses are those of the tabled wire (memory) with 2.4 dB an end.
    [Theory]
    [InlineData(30, 1, "none")] // 5.8 + 4.8 = 10.6 dB
    [InlineData(30, 2, "BASE-R")] // 11.6 + 4.8 = 16.4 dB
    [InlineData(26, 2, "none")] // 7.8 + 4.8 = 12.6 dB
    [InlineData(26, 3, "RS(528,514)")] // 11.7 + 4.8 = 16.5 dB
    [InlineData(24, 5, "RS(528,514)")] // 15.5 + 4.8 = 20.3 dB
    [InlineData(24, 2.5, "none")] // 7.75 + 4.8 = 12.55 dB
    [InlineData(24, 3.5, "RS(528,514)")] // 15.65 dB would do with BASE-R, but the class ends at 3 m
    public void TwentyFiveGig_NeedsTheCodeOfItsLoss(int gauge, double metres, string code) =>
        Assert.Equal(code, Judge("25GBASE-CR", gauge, metres).NeededFec);

    // Source: limits of IEEE 802.3 clauses 92 (seen), 136 and 162 (memory) held against the tabled wire.
    [Theory]
    [InlineData("100GBASE-CR4", 24, 5, Verdict.Pass)]
    [InlineData("100GBASE-CR4", 26, 5, Verdict.Fail)]
    [InlineData("200GBASE-CR4", 26, 3, Verdict.Pass)]
    [InlineData("200GBASE-CR4", 30, 3, Verdict.Fail)]
    [InlineData("400GBASE-CR4", 26, 2, Verdict.Pass)]
    [InlineData("400GBASE-CR4", 30, 2, Verdict.Fail)]
    [InlineData("800GBASE-CR8", 26, 2, Verdict.Pass)]
    [InlineData("800GBASE-CR8", 26, 2.5, Verdict.Fail)]
    [InlineData("800GBASE-CR4", 26, 1, Verdict.Unproven)] // 106.25 GBd: neither wire nor limit is known
    public void Loss_IsHeldAgainstTheClause(string type, int gauge, double metres, Verdict expected) =>
        Assert.Equal(expected, Judge(type, gauge, metres).All.Single(c => c.Name == CheckNames.CopperLoss).Verdict);

    // Source: largest loss per metre that still meets a clause, worked from the limits with the same ends (derived).
    [Theory]
    [InlineData("100GBASE-CR4", 5, 3.54)]
    [InlineData("200GBASE-CR4", 3, 4.12)]
    [InlineData("400GBASE-CR4", 2, 6.38)]
    [InlineData("25GBASE-CR-S", 3, 3.89)] // cable class CA-25G-S, 16.48 dB
    public void Limit_LeavesTheWorkedLossPerMetre(string type, double metres, double lossPerMetre)
    {
        var frequency = Limits.Copper(type)!.Signal.Baud.NyquistGigahertz;
        var end = Limits.EndLosses.First(e => Math.Abs(e.Gigahertz - frequency) < 0.1).Loss.Value.Value;
        Assert.Equal(lossPerMetre, (Limits.Copper(type)!.LossMax!.Value.Value.Value - (2 * end)) / metres, 0.006);
    }

    // Source: the same working for the class that needs no code, 12.98 dB (limit seen): 2.73 dB/m at 3 m, 4.09 dB/m at 2 m (derived).
    [Theory]
    [InlineData(3, 2.73)]
    [InlineData(2, 4.09)]
    public void ClassWithoutCode_LeavesTheWorkedLossPerMetre(double metres, double lossPerMetre)
    {
        var type = Limits.Copper("25GBASE-CR")!;
        var end = Limits.EndLosses.First(e => Math.Abs(e.Gigahertz - type.Signal.Baud.NyquistGigahertz) < 0.1).Loss.Value.Value;
        Assert.Equal(lossPerMetre, (type.LossMaxWithoutFec!.Value.Value.Value - (2 * end)) / metres, 0.006);
    }

    // A proof takes the worst wire a buyer may get; the published longest lengths (clauses 92, 110, 136 and 162) still pass.
    [Theory]
    [InlineData("25GBASE-CR", 1, 30, "thinnest")]
    [InlineData("25GBASE-CR", 3, 26, "thinnest")]
    [InlineData("25GBASE-CR", 5, 24, "thinnest")]
    [InlineData("100GBASE-CR4", 3, 26, "thinnest")]
    [InlineData("100GBASE-CR4", 5, 24, "thickest")]
    [InlineData("200GBASE-CR4", 3, 26, "thinnest")]
    [InlineData("400GBASE-CR4", 2, 26, "thinnest")]
    [InlineData("800GBASE-CR8", 2, 26, "thinnest")]
    public void UnstatedWire_IsTheWorstSoldAtTheLength(string type, double metres, int gauge, string assumption)
    {
        var length = Length.FromMetres(metres);
        var copper = Limits.Copper(type)!;
        var wire = WireGauge.WorstSold(Limits, CatalogueBinder.Shipped, copper, length);
        Assert.Equal(gauge, wire.Awg);
        var link = SingleLink.OverTwinax(Limits, copper, wire, length, []);
        Assert.NotEqual(Verdict.Fail, link.Verdict);
        Assert.Contains(assumption, link.Checks.Single(c => c.Name == CheckNames.CopperLoss).Note, StringComparison.Ordinal);
    }

    // Common practice: copper no longer than 3 m at 100G and 2 m at 400G.
    [Theory]
    [InlineData("100GBASE-CR4", 3, Verdict.Pass)]
    [InlineData("100GBASE-CR4", 3.5, Verdict.Fail)]
    [InlineData("400GBASE-CR4", 2, Verdict.Pass)]
    [InlineData("400GBASE-CR4", 2.5, Verdict.Fail)]
    [InlineData("40GBASE-CR4", 5, null)]
    public void Practice_LimitsLengthsByRate(string type, double metres, Verdict? expected)
    {
        var practice = Judge(type, 24, metres).All.Where(c => c.Name == CheckNames.CopperPractice);
        Assert.Equal(expected, practice.Select(c => (Verdict?)c.Verdict).SingleOrDefault());
    }

    [Fact]
    public void SmallFormCopper_HasNoLossLimitToMeet() =>
        Assert.DoesNotContain(Judge("10GSFP+Cu", 30, 3).All, c => c.Name == CheckNames.CopperLoss);

    private static CopperChecks Judge(string type, int gauge, double metres) => CopperChecks.Of(
        Limits, Limits.Copper(type)!, gauge, Length.FromMetres(metres), Limits.Copper(type)!.Rate,
        PolicyBinder.Default(Limits).CopperLimits);
}
