using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Links;

/// <summary>Dispersion bounds against the figures the clauses print.</summary>
public sealed class DispersionTests
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    // Source: IEEE 802.3 clauses 88, 87 and 122, dispersion limits as printed: 9.5/-28.5, 33.5/-59.5 and 9.5/-50.8 ps/nm at 10 km
    // (memory;
    // printed rounded outwards, hence the tolerance of 0.15).
    [Theory]
    [InlineData("100GBASE-LR4", 10, 9.5, -28.5)]
    [InlineData("40GBASE-LR4", 10, 33.5, -59.5)]
    [InlineData("400GBASE-LR8", 10, 9.5, -50.8)]
    public void Bounds_ReproduceThePrintedLimits(string type, double kilometres, double largest, double smallest)
    {
        var lanes = Limits.Interface(type)!.Lanes;
        var fibre = Limits.Fibre("OS2")!;
        var length = Length.FromKilometres(kilometres);
        Assert.Equal(largest, FibreDispersion.Largest(fibre, lanes[^1].Longest, length)!.Value.Value.PicosecondsPerNanometre, 0.15);
        Assert.Equal(smallest, FibreDispersion.Smallest(fibre, lanes[0].Shortest, length)!.Value.Value.PicosecondsPerNanometre, 0.15);
    }

    // Source: the coefficient 0.2325 printed in the standards' footnotes for 10 km (memory).
    [Fact]
    public void Bound_FollowsThePrintedFormula()
    {
        const double Lambda = 1310.19;
        var expected = 0.2325 * Lambda * (1 - Math.Pow(1300 / Lambda, 4));
        var computed = FibreDispersion.Largest(Limits.Fibre("OS2")!, Wavelength.FromNanometres(Lambda), Length.FromKilometres(10));
        Assert.Equal(expected, computed!.Value.Value.PicosecondsPerNanometre, 1e-9);
    }

    // Source: the dispersion bound of G.652 fibre between 1530 and 1565 nm, 18 ps/(nm km), over the 40 km of 10GBASE-ER (memory).
    [Theory]
    [InlineData(30, 540)]
    [InlineData(40, 720)]
    public void AtLongWavelengths_TheFibresOwnBoundHolds(double kilometres, double expected)
    {
        var type = Limits.Interface("10GBASE-ER")!;
        var largest = FibreDispersion.Largest(Limits.Fibre("OS2")!, type.Lanes[0].Longest, Length.FromKilometres(kilometres));
        Assert.Equal(expected, largest!.Value.Value.PicosecondsPerNanometre, 1e-9);
        Assert.Equal(Verdict.Pass, Worst(type, Length.FromKilometres(kilometres)));
    }

    [Theory]
    [MemberData(nameof(SingleModeTypes))]
    public void EveryType_MeetsItsOwnLimitsAtItsReachAndNotFarBeyond(string name)
    {
        var type = Limits.Interface(name)!;
        var fibre = Limits.Fibre("OS2")!;
        var reach = type.ReachEngineered ?? type.Reach(fibre);
        if (reach is not { } full) return;
        Assert.Equal(Verdict.Pass, Worst(type, full.Value));
        Assert.Equal(Verdict.Fail, Worst(type, full.Value * 1.2));
    }

    public static TheoryData<string> SingleModeTypes => new(Limits.InterfaceTypes
        .Where(t => t.FibreKind == FibreKind.SingleMode && t.DispersionMax is not null && !t.Lanes.IsEmpty)
        .Select(t => t.Name));

    private static Verdict Worst(InterfaceType type, Length length)
    {
        var none = new Known<Decibels>(default, Lanewright.Text.Citation.OfPlan);
        var channel = new Channel { Fibre = Limits.Fibre("OS2")!, Length = length, ConnectionLoss = none, SpliceLoss = none };
        return FibreLinkChecks.Of(Limits, channel, type, type)
            .Where(c => c.Name is CheckNames.DispersionPositive or CheckNames.DispersionNegative)
            .Max(c => c.Verdict);
    }
}
