using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Links;

/// <summary>Channel loss against printed totals and worked examples.</summary>
public sealed class PublishedChannelTests
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    // Source: public table of IEEE multimode channel and connection allowances for OM4, and the TIA fibre-optics consortium's
    // application page for 400GBASE-SR4.2 (totals seen, printed to a tenth, which the tolerance of 0.055 dB stands for).
    [Theory]
    [InlineData("10GBASE-SR", "OM4", 400, 1.5, 2.9)]
    [InlineData("25GBASE-SR", "OM4", 100, 1.5, 1.9)]
    [InlineData("40GBASE-SR4", "OM4", 150, 1.0, 1.5)]
    [InlineData("400GBASE-SR8", "OM4", 100, 1.5, 1.9)]
    [InlineData("400GBASE-SR4.2", "OM4", 100, 1.5, 1.8)]
    [InlineData("400GBASE-SR4.2", "OM5", 150, 1.5, 2.0)]
    [InlineData("40GBASE-SR4", "OM3", 100, 1.5, 1.9)] // IEEE 802.3 clause 86, memory
    public void Multimode_ReproducesThePrintedTotal(string type, string fibre, double metres, double connectionDb, double printedDb)
    {
        var checks = Judge(type, fibre, metres, 1, connectionDb);
        var loss = checks.Single(c => c.Name == CheckNames.ChannelLoss);
        Assert.Equal(printedDb, loss.Value!.Value, 0.055);
        Assert.Equal(printedDb, loss.Limit!.Value, 1e-9);
        Assert.Equal(Verdict.Pass, loss.Verdict);
    }

    // Source: TIA fibre-optics consortium application pages for 40GBASE-LR4 (6.7 dB) and 400GBASE-LR8 (6.3 dB): 10 km of OS2,
    // 8 km of indoor/outdoor cable, 4 km of OS1a, each with 2.0 dB of connections (seen).
    [Theory]
    [InlineData("40GBASE-LR4", "OS2", 10)]
    [InlineData("40GBASE-LR4", "OS2-indoor-outdoor", 8)]
    [InlineData("40GBASE-LR4", "OS1a", 4)]
    [InlineData("400GBASE-LR8", "OS2", 10)]
    [InlineData("400GBASE-LR8", "OS2-indoor-outdoor", 8)]
    [InlineData("400GBASE-LR8", "OS1a", 4)]
    public void PoorerFibre_ShortensTheReachAsPublished(string type, string fibre, double kilometres)
    {
        Assert.Equal(Verdict.Pass, LossVerdict(Judge(type, fibre, kilometres * 1000, 4, 0.5)));
        Assert.Equal(Verdict.Fail, LossVerdict(Judge(type, fibre, kilometres * 1000 * 1.2, 4, 0.5)));
    }

    // Source: IEEE 802.3 task-force reflector message on 40 km channel loss: 18 dB less 2 dB of connections over 40 km is 0.4 dB/km
    // (seen).
    [Fact]
    public void FortyKilometres_UseTheWholeLossAtFourTenths()
    {
        var loss = Judge("100GBASE-ER4", "OS2", 40_000, 4, 0.5).Single(c => c.Name == CheckNames.ChannelLoss);
        Assert.Equal(18.0, loss.Value!.Value, 0.005);
        Assert.Equal(18.0, loss.Limit!.Value, 0.005);
    }

    // Source: network equipment hardware guide, multimode link-loss sample: 2 km at 1.0 dB/km, five connections and two splices of
    // 0.5 dB lose 2 + 2.5 + 1 dB (seen; its 0.5 dB for higher-order modes is no part of a channel here).
    [Fact]
    public void LossSum_AddsFibreConnectionsAndSplices()
    {
        var channel = Channel("OM4", 2000, 5, 0.5) with
        {
            Splices = 2,
            SpliceLoss = Stated(0.5),
            Attenuation = new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(1.0), Citation.OfPlan),
        };
        Assert.Equal(5.5, ChannelLoss.Of(channel, Limits.Interface("10GBASE-SR")!)!.Maximum.Value, 0.001);
    }

    // Source: IEEE 802.3 clauses 124 and 151, channel totals: 0.5 km at 0.5 dB/km and 2.75 dB are 3.0 dB; 2 km and 3.0 dB are 4.0 dB
    // (memory).
    [Theory]
    [InlineData("400GBASE-DR4", 500, 2.75, 3.0)]
    [InlineData("400GBASE-FR4", 2000, 3.0, 4.0)]
    public void SingleModeTotals_LeaveNoMargin(string type, double metres, double connectionDb, double totalDb)
    {
        var attenuation = new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(0.5), Citation.OfPlan);
        var channel = Channel("OS2", metres, 1, connectionDb) with { Attenuation = attenuation };
        var checks = FibreLinkChecks.Of(Limits, channel, Limits.Interface(type)!, Limits.Interface(type)!);
        var loss = checks.Single(c => c.Name == CheckNames.ChannelLoss);
        Assert.Equal(totalDb, loss.Value!.Value, 0.005);
        Assert.Equal(0, loss.Margin!.Value, 0.005);
    }

    // Source: Rayleigh estimate a(l) = a(1310) (1310/l)^4 worked for 0.35 dB/km at 1310 nm: 0.395 at 1271, 0.371 at 1291 (derived);
    // the shortest edge of the 1271 nm window is 1264.5 nm.
    [Fact]
    public void MeasuredAttenuation_IsScaledToTheWorstLane()
    {
        var channel = Channel("OS2", 10_000, 0, 0) with
        {
            Attenuation = new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(0.35), Citation.OfPlan),
            AttenuationAt = Wavelength.FromNanometres(1310),
        };
        var loss = ChannelLoss.Of(channel, Limits.Interface("40GBASE-LR4")!)!;
        Assert.Equal(1264.5, loss.WorstWavelength.Nanometres);
        Assert.Equal(10 * 0.35 * Math.Pow(1310 / 1264.5, 4), loss.Maximum.Value, 1e-9);
        Assert.InRange(loss.Maximum.Value, 3.95, 4.05);
    }

    [Theory]
    [InlineData("40GBASE-ER4", 9.0)] // IEEE 802.3 clause 87: +4.5 dBm into a receiver rated -4.5 dBm (memory)
    [InlineData("10GBASE-ER", 5.0)] // switch installation manual, 10GBASE-ER limits: +4.0 into -1.0 dBm (seen)
    [InlineData("100G-4WDM-40", 10.0)] // 4WDM MSA: +6.5 into -3.5 dBm (weak)
    public void ShortLongReachLink_NeedsTheKnownAttenuation(string type, double attenuationDb)
    {
        var overload = Judge(type, "OS2", 2, 0, 0).Single(c => c.Name == CheckNames.Overload);
        Assert.Equal(Verdict.Fail, overload.Verdict);
        Assert.Equal(-attenuationDb, overload.Margin!.Value, 0.01);
        var channel = Channel("OS2", 2, 0, 0) with { Attenuator = Decibels.From(attenuationDb) };
        var cured = FibreLinkChecks.Of(Limits, channel, Limits.Interface(type)!, Limits.Interface(type)!);
        Assert.Equal(Verdict.Pass, cured.Single(c => c.Name == CheckNames.Overload).Verdict);
    }

    [Fact]
    public void OtherTypes_NeedNoAttenuator()
    {
        string[] loud = ["10GBASE-ER", "40GBASE-ER4", "100G-4WDM-40"];
        var known = Limits.InterfaceTypes.Where(t => t.TxAverageMax is not null && t.RxAverageMax is not null);
        foreach (var type in known.Where(t => !loud.Contains(t.Name)))
            Assert.True(type.TxAverageMax!.Value.Value <= type.RxAverageMax!.Value.Value, type.Name);
    }

    private static Verdict LossVerdict(IEnumerable<Check> checks) => checks.Single(c => c.Name == CheckNames.ChannelLoss).Verdict;

    private static System.Collections.Immutable.ImmutableArray<Check> Judge(
        string type, string fibre, double metres, int connections, double connectionDb) =>
        FibreLinkChecks.Of(Limits, Channel(fibre, metres, connections, connectionDb), Limits.Interface(type)!, Limits.Interface(type)!);

    private static Channel Channel(string fibre, double metres, int connections, double connectionDb) => new()
    {
        Fibre = Limits.Fibre(fibre)!,
        Length = Length.FromMetres(metres),
        Connections = connections,
        ConnectionLoss = Stated(connectionDb),
        SpliceLoss = Stated(0.1),
    };

    private static Known<Decibels> Stated(double db) => new(Decibels.From(db), Citation.OfPlan);
}
