using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Lines;

/// <summary>Pads before amplifiers, and the two corners of transmitters that no booster levels.</summary>
public sealed class LinePadTests
{
    private static readonly StandardsLibrary Standards = StandardsLibrary.Shipped;
    private static readonly WavelengthType Type = Standards.Wavelength("400ZR")!;

    // Source: Open ROADM MSA optical specification 9.0 (seen): masks of in-line amplifiers are valid from -31 to -9 dBm a channel. 0 dBm
    // behind 20 km of 0.22 dB/km are -4.4 dBm, 4.6 dB too much; the mask gives 28.99 + 9 x 1.071 - 81 x 0.0625 + 729 x 0.0005952 at -9 dBm.
    [Fact]
    public void MoreThanAMaskTakesIn_IsTakenByAPadBefore()
    {
        var amplifier = Standards.Amplifier("in-line-standard")!;
        var asked = SpanCase.Question(120) with
        {
            Spans = [SpanCase.Span(20, 0.22), SpanCase.Span(60, 0.22)],
            Launch = PowerLevel.FromDbm(0),
        };
        asked = asked with { Equipment = asked.Equipment with { InLine = amplifier } };
        var design = CoherentLine.Of(asked, Type, LineScheme.InLine);
        var between = design.Amplifiers.Single(a => a.IsBetween);
        Assert.Equal(4.6, between.PadBefore.Value, 9);
        Assert.Equal(-9, between.Input.Dbm, 9);
        Assert.Equal(Verdict.Pass, design.Checks.Single(c => c.Name == LineCheckNames.InputHigh).Verdict);
        var (behind, before) = (Stage(design, "in-line 1"), Stage(design, LineStage.Pad));
        Assert.Equal(-9, before.Level.Dbm, 0.05);
        var added = (1 / behind.OverNoise!.Value.Ratio) - (1 / before.OverNoise!.Value.Ratio);
        const double mask = 28.99 + (9 * 1.071) - (81 * 0.0625) + (729 * 0.0005952);
        Assert.Equal(mask, -10 * Math.Log10(added), 0.05);
    }

    // Source: 10 log10 of 48 is 16.81 dB (an independent reference calculation, DCI-147); amplifiers of fixed design begin at 15 dB and
    // end at 23 dBm (common practice): 6.19 dBm a channel, so that no more than -8.81 dBm may come in.
    [Fact]
    public void MoreThanTheLowestGainBringsOut_IsTakenByAPadBefore()
    {
        var asked = SpanCase.Question(20, 48) with { Launch = PowerLevel.FromDbm(1), Catalogue = CatalogueBinder.Shipped };
        var design = LineLadder.Try(asked, LineScheme.BoosterAndPreamplifier)!;
        var last = design.Amplifiers.Single(a => a.Place == "preamplifier");
        Assert.Equal(1 - 4.4 + 8.81, last.PadBefore.Value, 0.005);
        Assert.Equal(Verdict.Pass, design.Verdict);
        Assert.Equal(23, Output(design, "preamplifier"), 0.001);
        // It stands in the list and in the price, for both directions, beside the one behind, and on the way of light.
        Assert.True(last.Pad.Value > 0);
        Assert.Contains(LineParts.Of(CatalogueBinder.Shipped, design, 48), p => p is { Part.Name: "line-voa", Count: 4 });
        Assert.Equal(design.Worst!.Received!.Value.Dbm, design.Stages[^1].Level.Dbm, 1e-6);
        Assert.Equal(-last.PadBefore.Value, (Stage(design, LineStage.Pad).Level - Stage(design, "span").Level).Value, 1e-9);
        // Where nothing is too strong there is none.
        var without = LineLadder.Try(SpanCase.Question(80), LineScheme.BoosterAndPreamplifier)!;
        Assert.All(without.Amplifiers, a => Assert.Equal(0, a.PadBefore.Value));
    }

    // Source: OIF 400ZR by the manual page of a module (seen): transmitters send -10 to -6 dBm, receivers bear 0 dBm.
    [Theory]
    [InlineData(10, 8)]
    [InlineData(20, 1)]
    [InlineData(25, 48)]
    public void WithoutABooster_BothCornersOfTransmittersAreHeldAgainstTheirLimits(double kilometres, int channels)
    {
        var design = LineLadder.Try(SpanCase.Question(kilometres, channels), LineScheme.Preamplifier)!;
        double Value(string name) => design.Checks.Single(c => c.Name == name).Value!.Value;
        var weakest = design.Channels.Min(c => c.Received!.Value.Dbm);
        Assert.Equal(weakest, Value(LineCheckNames.ReceiveLow), 1e-9);
        Assert.Equal(design.Channels.Max(c => c.Received!.Value.Dbm) + 4, Value(LineCheckNames.ReceiveHigh), 1e-9);
        var amplifier = Assert.Single(design.Amplifiers);
        var most = amplifier.Output.Dbm + amplifier.Pad.Value + 4 + (10 * Math.Log10(channels));
        Assert.Equal(most, Output(design, "preamplifier"), 1e-9);
        Assert.Equal(Verdict.Pass, design.Checks.Single(c => c.Name == LineCheckNames.ReceiveHigh).Verdict);
        Assert.Equal(Verdict.Pass, design.Checks.Single(c => c.Name == LineCheckNames.Output).Verdict);
    }

    // Source: manual page of a 400ZR module (seen): up to 0.5 dB for 10 ps of mean delay and 0.8 dB for 2.5 dB of loss that differs between
    // polarisations. What they take on a line with less of either is printed nowhere.
    [Theory]
    [InlineData(null, 1.3)]
    [InlineData(0.0, 0.5)]
    public void MarginsThinnerThanPenaltiesMayTake_AreUnproven(double? pdl, double reserve)
    {
        var seen = new HashSet<Verdict>();
        for (var kilometres = 80; kilometres <= 124; kilometres += 2)
        {
            var asked = SpanCase.Question(kilometres, 16) with
            {
                Launch = PowerLevel.FromDbm(2), Pdl = pdl is { } stated ? Decibels.From(stated) : null,
            };
            var design = LineLadder.Try(asked, LineScheme.BoosterAndPreamplifier)!;
            var margin = design.Worst!.Margin!.Value.Value;
            Assert.Equal(margin < 0 ? Verdict.Fail : margin < reserve ? Verdict.Unproven : Verdict.Pass, design.Verdict);
            Assert.Equal(reserve, design.Checks.Single(c => c.Name == LineCheckNames.Reserve).Limit!.Value, 1e-9);
            seen.Add(design.Verdict);
        }
        Assert.Contains(Verdict.Unproven, seen);
        Assert.Contains(Verdict.Pass, seen);
    }

    private static LineStage Stage(LineDesign design, string what) => design.Stages.First(s => s.What == what);

    private static double Output(LineDesign design, string place) => design.Checks
        .Single(c => c.Name == LineCheckNames.Output && c.Note.StartsWith(place, StringComparison.Ordinal)).Value!.Value;
}
