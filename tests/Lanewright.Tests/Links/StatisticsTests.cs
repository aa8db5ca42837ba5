using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Links;

/// <summary>The chance of exceeding a loss limit: the fit against worked values, the folding against a seeded simulation.</summary>
public sealed class StatisticsTests
{
    // Source: bounds of the grades from IEC 61753-1 (secondary source, seen); the log-normal fit worked by hand from
    // sigma = z - sqrt(z^2 - 2 ln(q97/mean)), mu = ln(mean) - sigma^2/2, z = 1.88079 (derived).
    [Theory]
    [InlineData("B", -2.2181, 0.4422)]
    [InlineData("C", -1.4720, 0.4141)]
    [InlineData("D", -0.7789, 0.4141)]
    public void Fit_ReproducesTheWorkedParameters(string grade, double mu, double sigma)
    {
        var fit = LossStatistics.Of(StandardsLibrary.Shipped.Grade(grade)!);
        Assert.Equal(mu, fit.Mu, 0.0005);
        Assert.Equal(sigma, fit.Sigma, 0.0005);
    }

    // Source: four grade C pairs: mean 1.00 dB, standard deviation 0.216 dB, mean and two deviations 1.43 dB (derived by hand).
    [Fact]
    public void Sum_HasTheWorkedMeanAndDeviation()
    {
        var fit = LossStatistics.Of(StandardsLibrary.Shipped.Grade("C")!);
        Assert.Equal(1.00, (fit.Mean * 4).Value, 0.0005);
        Assert.Equal(0.2163, fit.Deviation.Value * 2, 0.0005);
        Assert.Equal(1.4325, (fit.Mean * 4).Value + (fit.Deviation.Value * 4), 0.001);
    }

    // Source: MathNet.Numerics' log-normal distribution, a general-purpose reference library.
    [Theory]
    [InlineData("B", 0.25)]
    [InlineData("C", 0.3)]
    [InlineData("D", 1.2)]
    public void OneMating_AgreesWithTheReferenceDistribution(string grade, double limit)
    {
        var fit = LossStatistics.Of(StandardsLibrary.Shipped.Grade(grade)!);
        var reference = 1 - new MathNet.Numerics.Distributions.LogNormal(fit.Mu, fit.Sigma).CumulativeDistribution(limit);
        Assert.Equal(reference, fit.ChanceAbove(Decibels.From(limit), 1), 2e-4);
    }

    [Theory]
    [InlineData("B", 4, 0.7)]
    [InlineData("B", 8, 1.2)]
    [InlineData("C", 4, 1.43)]
    [InlineData("C", 6, 2.75)]
    [InlineData("D", 2, 1.5)]
    [InlineData("D", 4, 3.0)]
    public void Folding_AgreesWithASeededSimulation(string grade, int matings, double limit)
    {
        const int Draws = 400_000;
        var fit = LossStatistics.Of(StandardsLibrary.Shipped.Grade(grade)!);
        var random = new Random(20261125);
        var above = 0;
        for (var i = 0; i < Draws; i++)
        {
            var sum = 0.0;
            for (var m = 0; m < matings; m++) sum += Math.Exp(fit.Mu + (fit.Sigma * Normal(random)));
            if (sum > limit) above++;
        }
        var simulated = above / (double)Draws;
        var computed = fit.ChanceAbove(Decibels.From(limit), matings);
        // Four standard errors of the simulation: a seeded run does not change, a wrong formula does not hide.
        Assert.InRange(computed, simulated - (4 * Error(simulated)) - 1e-5, simulated + (4 * Error(simulated)) + 1e-5);

        static double Error(double p) => Math.Sqrt(p * (1 - p) / Draws);
    }

    [Fact]
    public void Chance_GrowsWithMatingsAndFallsWithTheLimit()
    {
        var fit = LossStatistics.Of(StandardsLibrary.Shipped.Grade("C")!);
        for (var matings = 1; matings < 8; matings++)
        {
            Assert.True(fit.ChanceAbove(Decibels.From(1.5), matings) <= fit.ChanceAbove(Decibels.From(1.5), matings + 1));
            Assert.True(fit.ChanceAbove(Decibels.From(1.6), matings) <= fit.ChanceAbove(Decibels.From(1.5), matings));
        }
        Assert.Equal(0, fit.ChanceAbove(Decibels.From(1), 0));
        Assert.Equal(1, fit.ChanceAbove(Decibels.From(-0.1), 3));
    }

    // A link that fails anyway is told to fail, and not that it may.
    [Theory]
    [InlineData("length: 100 m, connections: 5", true)]
    [InlineData("length: 12 km, connections: 5", false)]
    public void Chance_IsNotReckonedOfALinkThatFails(string way, bool isReckoned)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            policy: { connection-grade: D, connection-loss: 0.5 dB }
            devices: { a: { model: fixed-32x400 }, b: { model: fixed-32x400 } }
            links: { up: { from: a, to: b, count: 32, rate: 400G, medium: [OS2, OM3], connection-loss: 0.5 dB, {{way}} } }
            """);
        var codes = judged.Findings.Select(f => f.Kind.Code).ToHashSet();
        Assert.Equal(isReckoned, codes.Contains("LW2415"));
        Assert.Equal(!isReckoned, codes.Contains("LW2701"));
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
