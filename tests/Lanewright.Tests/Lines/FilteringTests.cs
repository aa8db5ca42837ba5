using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Lines;

/// <summary>Spectra against the channels that multiplexers cut.</summary>
public sealed class FilteringTests
{
    // OIF-400ZR plans 48 channels 100 GHz and 64 channels 75 GHz apart (read in a book that repeats its tables); 59.84375 GBd with a
    // roll-off of 0.2 are 71.8 GHz wide.
    [Theory]
    [InlineData(100, Verdict.Pass)]
    [InlineData(75, Verdict.Pass)]
    [InlineData(68.75, Verdict.Unproven)]
    [InlineData(62.5, Verdict.Unproven)]
    [InlineData(50, Verdict.Fail)]
    public void Channels_PassAsTheirTypePlansThemAndAreUnprovenBelow(double spacing, Verdict expected)
    {
        var answer = LineLadder.Of(SpanCase.Question(80, 8, spacing));
        Assert.Equal(expected, answer.Design.Verdict);
        Assert.Equal(spacing < 75, answer.Design.Checks.Any(c => c.Name == LineCheckNames.Clearance && c.Verdict == Verdict.Fail));
    }

    // Open ROADM MSA optical specification 9.0: a channel is 1.2 times the symbol rate wide, 141.84 and 157.56 GHz here.
    [Theory]
    [InlineData("OR-800G-118.2GBd-16QAM", 137.5, Verdict.Unproven)]
    [InlineData("OR-800G-118.2GBd-16QAM", 150, Verdict.Pass)]
    [InlineData("OR-800G-131.3GBd-16QAM", 150, Verdict.Unproven)]
    [InlineData("OR-800G-131.3GBd-16QAM", 162.5, Verdict.Pass)]
    public void Spectra_HaveToFitIntoTheirChannels(string name, double spacing, Verdict expected)
    {
        var type = StandardsLibrary.Shipped.Wavelength(name)!;
        var asked = SpanCase.Question(60, 8, spacing) with { Type = type, Rate = type.Rate };
        Assert.Equal(expected, LineLadder.Of(asked).Design.Verdict);
        var penalty = Decibels.From(0.7);
        var stated = LineLadder.Of(asked with { FilterPenalty = penalty });
        Assert.Equal(Verdict.Pass, stated.Design.Verdict);
        var without = LineLadder.Try(asked, stated.Design.Scheme)!;
        Assert.Equal(penalty.Value, (without.Worst!.Margin!.Value - stated.Design.Worst!.Margin!.Value).Value, 9);
    }

    // Penalties of polarisation rise in steps, so that one amplifier more may take what three more win back.
    [Fact]
    public void InLineAmplifiers_AreAddedPastAStepOfPenalties()
    {
        var type = StandardsLibrary.Shipped.Wavelength("OR-800G-131.3GBd-16QAM")!;
        var asked = SpanCase.Question(600, 8, 162.5) with { Type = type, Rate = type.Rate };
        var design = LineLadder.Of(asked).Design;
        Assert.Equal(Verdict.Pass, design.Verdict);
        Assert.True(design.Spans.Length > 6, $"{design.Spans.Length} spans");
    }

    [Fact]
    public void Spacing_IsTheUsualOneOrWhatTheTypeNeeds()
    {
        var standards = StandardsLibrary.Shipped;
        double Usual(string name) => standards.UsualSpacing(standards.Wavelength(name), default).Spacing.Gigahertz;
        Assert.Equal([100, 75, 150, 162.5],
            [Usual("400ZR"), Usual("ZR+-400G"), Usual("OR-800G-118.2GBd-16QAM"), Usual("OR-800G-131.3GBd-16QAM")]);
    }
}
