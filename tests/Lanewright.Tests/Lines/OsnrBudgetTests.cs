using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Lines;

/// <summary>Signal over amplifier noise of whole designs against the budget of the 400G task force: 58 dB + launch - loss of the line
/// - noise figure, less what the booster adds, which is ten logarithms of one and the ratio of what both amplifiers get (IEEE P802.3cn,
/// OSNR link budget methodology, November 2018; seen). Its 58 dB are 57.95 at 193.4 THz, and its amplifiers have high gain.</summary>
public sealed class OsnrBudgetTests
{
    [Theory]
    [InlineData(80, 0.22, 5.5, 5.5, 0, -10)]
    [InlineData(80, 0.25, 4.5, 5, 2, -10)]
    [InlineData(100, 0.25, 6, 5.5, 3, -8)]
    [InlineData(120, 0.2, 5, 6, 4, -6)]
    [InlineData(60, 0.35, 6, 3, 1, -10)]
    public void Amplifiers_LeaveWhatTheBudgetSays(
        double kilometres, double loss, double figure, double mux, double launch, double transmitter)
    {
        var standards = StandardsLibrary.Shipped;
        var amplifier = standards.Amplifier("EDFA")!.With(Decibels.From(figure)) with { GainMin = null, GainMax = null, TiltMax = null };
        var asked = SpanCase.Question(kilometres, 8, 100, loss);
        asked = asked with
        {
            Launch = PowerLevel.FromDbm(launch),
            Transmitter = PowerLevel.FromDbm(transmitter),
            Equipment = asked.Equipment with
            {
                Booster = amplifier,
                Preamplifier = amplifier,
                MultiplexerLoss = new Known<Decibels>(Decibels.From(mux), Citation.OfPlan),
            },
        };
        var made = CoherentLine.Of(asked, asked.Type!, LineScheme.BoosterAndPreamplifier);
        var line = kilometres * loss;
        var boosted = 10 * Math.Log10(1 + Math.Pow(10, (launch - line - (transmitter - mux)) / 10));
        var budget = 58 + launch - line - figure - boosted;
        // 0.05 dB of the constant, 0.01 dB for channels beside 193.4 THz, and up to 0.05 dB of a gain that is not endless.
        Assert.All(made.Channels, c => Assert.InRange(c.Osnr!.Value.Value, budget - 0.08, budget + 0.06));
    }

    // Source: Fiber Optic Communications: Fundamentals and Applications, example 7.4 (seen): 80 amplifiers 80 km of 0.0461 a kilometre
    // apart, launch -3 dBm, spontaneous emission 1.5, so a noise figure of 4.77 dB: 15.19 dB in 0.1 nm at 1550 nm.
    [Fact]
    public void TextbookExample_ComesOut()
    {
        var loss = Decibels.OfRatio(Math.Exp(0.0461 * 80));
        var one = AmplifierNoise.Over(PowerLevel.FromDbm(-3) - loss, Decibels.OfRatio(2 * 1.5), loss,
            Frequency.Of(Wavelength.FromNanometres(1550)), Frequency.FromGigahertz(12.48));
        Assert.Equal(15.19, AmplifierNoise.Together(Enumerable.Repeat(one, 80)).Value, 0.05);
    }

    // Every further amplifier of the same kind behind the same loss costs ten logarithms of their number (the same source, and ITU-T G.692
    // as handbooks tell it; memory).
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(10)]
    public void SpansAlike_CostTenLogarithmsOfTheirNumber(int spans)
    {
        const double loss = 20;
        var standards = StandardsLibrary.Shipped;
        var amplifier = standards.Amplifier("EDFA")!.With(Decibels.From(5)) with { TiltMax = null };
        var asked = SpanCase.Question(100, 8, 100, loss / 100);
        asked = asked with
        {
            Spans = [.. Enumerable.Repeat(asked.Spans[0], spans)],
            Launch = PowerLevel.FromDbm(0),
            // So strong that the booster adds next to nothing.
            Transmitter = PowerLevel.FromDbm(20),
            Equipment = asked.Equipment with { Booster = amplifier, Preamplifier = amplifier, InLine = amplifier },
        };
        var made = CoherentLine.Of(asked, asked.Type!, LineScheme.InLine);
        var budget = 58 + 0 - loss - 5 - (10 * Math.Log10(spans));
        Assert.All(made.Channels, c => Assert.InRange(c.Osnr!.Value.Value, budget - 0.12, budget + 0.06));
    }
}
