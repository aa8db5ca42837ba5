using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Tests.Lines;

/// <summary>Formulas of lines between sites against an independent reference calculation, whose figures are the expected values, and
/// against a split-step simulation of the glass.</summary>
public sealed class LinePhysicsTests
{
    private static readonly GlassSpan Glass = new(0.2, 80, 17, 0.067, 1.3, 1550);
    private static readonly NonlinearNoise Comb = new(Glass, 64, 75e9, 59.84375e9);

    [Fact]
    public void GlassKeepsToTheReference()
    {
        Near(4.605170186e-05, Glass.Alpha, 1e-9);
        Near(-2.168261939e-26, Glass.Beta2, 1e-6);
        Near(1.44677409e-40, Glass.Beta3, 1e-6);
        Near(21169.27489, Glass.EffectiveMetres, 1e-6);
        Near(21628.27622, (Glass with { Kilometres = 120 }).EffectiveMetres, 1e-6);
    }

    [Fact]
    public void NonlinearNoiseKeepsToTheReference()
    {
        var (own, cross) = Comb.Plain(32);
        Near(397.158619, own + cross, 1e-4);
        Near(409.4599402, Comb.WithRaman(32, 1e-3, 0.028), 1e-4);
        Near(297.0089148, Comb.WithRaman(63, 1e-3, 0.028), 1e-4);
        Near(301.1475369, Comb.WithRaman(0, Math.Pow(10, 0.3) / 1000, 0.028), 1e-4);
        Near(0.002180583598, NonlinearNoise.BestWatts(8.596943276148568e-06, 414.56806277845317), 1e-4);
        Near(328.3249801, NonlinearNoise.Ratio(0.0025118864315095803, 1.3560702525590393e-06, 397.1586190477259), 1e-4);
    }

    // Expected values: the reference calculation. Simulated values: split step, Manakov, 60 GBd at 75 GHz, one seed, about 0.1 dB.
    [Theory]
    [InlineData(1, 20.75062452, 20.135, 17.198)]
    [InlineData(5, 22.16349088, 23.196, 19.918)]
    public void ModelsStayAboveTheSimulation(int channels, double expected, double gaussian, double sixteen)
    {
        var comb = new NonlinearNoise(Glass, channels, 75e9, 60e9);
        var (own, cross) = comb.Plain(channels / 2);
        var corrected = 10 * Math.Log10(comb.Expected(channels / 2, -0.68));
        Assert.Equal(expected, corrected, 0.01);
        Assert.True(10 * Math.Log10(own + cross) > gaussian);
        Assert.True(corrected > sixteen);
    }

    [Fact]
    public void AmplifiersKeepToTheReference()
    {
        const double carrier = 193.4e12;
        Near(1.676998765e-05, AmplifierNoise.Watts(Decibels.From(5.5), Decibels.From(27.9), carrier, 59.84375e9), 1e-5);
        Assert.Equal(48.31322002, AmplifierNoise.Over(PowerLevel.FromDbm(-5), Decibels.From(5), Decibels.From(6), carrier).Value, 1e-4);
        var booster = AmplifierNoise.Over(PowerLevel.FromDbm(-15.5), Decibels.From(5.5), Decibels.From(16.5), carrier);
        var receiver = AmplifierNoise.Over(PowerLevel.FromDbm(-17.6), Decibels.From(5.5), Decibels.From(15.6), carrier);
        Assert.Equal(32.79918124, AmplifierNoise.Together([booster, receiver]).Value, 0.001);
    }

    [Fact]
    public void ErrorsKeepToTheReference()
    {
        Near(0.004465400361, SymbolErrors.SixteenQam.At(31.622776601683793), 1e-6);
        Assert.Equal(13.54931715, Level(SymbolErrors.SixteenQam.RatioFor(0.0125)), 0.005);
        Assert.Equal(10.40932428, Level(SymbolErrors.EightQam.RatioFor(0.02)), 0.005);
        Assert.Equal(8.33964349, Level(SymbolErrors.Qpsk.RatioFor(0.0045)), 0.005);
        Assert.Equal(18.42950372, Level(SymbolErrors.SixtyFourQam.RatioFor(0.02)), 0.005);
        var specified = Math.Pow(10, 19.19891213 / 10);
        Assert.Equal(14.92976668, Level(SymbolErrors.SixteenQam.OwnRatio(0.0125, specified)), 0.02);
    }

    private static double Level(double ratio) => 10 * Math.Log10(ratio);

    private static void Near(double expected, double actual, double share) =>
        Assert.InRange(actual / expected, 1 - share, 1 + share);
}
