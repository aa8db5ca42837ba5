using Lanewright.Engineering.Load;
using Lanewright.Engineering.Reliability;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Tests.Reliability;

/// <summary>Failure rates, spares and availability against published figures; each names its source.</summary>
public sealed class SparingTests
{
    private static readonly Duration Year = Duration.FromHours(8760);

    // Source: reliability note with the example of 125 and 75 FIT (seen): 200 FIT, 5,000,000 h, 0.175 % a year in the linear form.
    [Fact]
    public void Fit_AddsAndTurnsIntoYears()
    {
        var both = FailureIntensity.FromFit(125) + FailureIntensity.FromFit(75);
        Assert.Equal(200, both.Fit, 9);
        Assert.Equal(5_000_000, both.MeanTimeBetween!.Value.Hours, 3);
        Assert.Equal(0.175, 100 * both.Expected(1, Year), 0.0005);
    }

    // Source: spare-drive worked example (seen).
    [Theory]
    [InlineData(100_000, 1, 0.0876, 0.00005)]
    [InlineData(200_000, 45, 1.971, 0.002)]
    [InlineData(300_000, 45, 1.314, 0.002)]
    public void MeanTimeBetween_GivesFailuresToExpect(double hours, long units, double expected, double tolerance) => Assert.Equal(
        expected, FailureIntensity.FromMeanTimeBetween(Duration.FromHours(hours)).Expected(units, Year), tolerance);

    // Source: sparing procedures of two telecom equipment guides (seen): 100 units, 10 days, 99.9 %, 3 spares. Convention F gives one less
    // (derived).
    [Theory]
    [InlineData(3619, 0.086856, 3, 2)]
    [InlineData(4523, 0.108552, 3, 2)]
    public void Spares_OfTwoPublishedGuides(double fit, double failures, long onShelf, long neverShort)
    {
        var expected = FailureIntensity.FromFit(fit).Expected(100, Duration.FromHours(240));
        Assert.Equal(failures, expected, 1e-9);
        Assert.Equal(onShelf, Sparing.Least(expected, Share.FromPercent(99.9), SpareCount.OneOnShelf));
        Assert.Equal(neverShort, Sparing.Least(expected, Share.FromPercent(99.9), SpareCount.NeverShort));
    }

    // Source: reliability newsletter (seen): MTBF 8760 h over 26,280 h with three spares, 42 % by the strict convention; 65 % by the other
    // (derived).
    [Fact]
    public void ThreeSpares_OfAReliabilityNewsletter()
    {
        var expected = FailureIntensity.FromMeanTimeBetween(Year).Expected(1, Duration.FromHours(26_280));
        Assert.Equal(3, expected, 1e-9);
        Assert.Equal(0.4232, Sparing.NoMoreThan(expected, 2).Value, 0.0005);
        Assert.Equal(0.6472, Sparing.NoMoreThan(expected, 3).Value, 0.0005);
    }

    // Source: course solution (seen): 0.2 failures a year over five years, two or more with 0.2642.
    [Fact]
    public void TwoOrMore_OfACourseSolution() =>
        Assert.Equal(0.2642, 1 - Sparing.NoMoreThan(FailureIntensity.FromPerYear(0.2).Expected(5, Duration.Year), 1).Value,
            0.0005);

    // Source: reliability handbook, four displays of 0.9 (seen).
    [Theory]
    [InlineData(3, 0.9477)]
    [InlineData(2, 0.9963)]
    public void SomeOfFour_OfAReliabilityHandbook(int needed, double expected) =>
        Assert.Equal(expected, Availability.AtLeast(4, needed, Share.From(0.9)).Value, 0.00005);

    [Fact]
    public void Spares_AreTheFewestThatReachTheLevel()
    {
        foreach (var expected in new[] { 0, 1e-6, 0.3, 1, 7.5, 42, 900, 25_000 })
        {
            foreach (var level in new[] { 0.5, 0.9, 0.999 })
            {
                var least = Sparing.Least(expected, Share.From(level), SpareCount.NeverShort);
                Assert.True(Sparing.NoMoreThan(expected, least).Value >= level, $"{expected} {level}");
                Assert.True(Sparing.NoMoreThan(expected, least - 1).Value < level, $"{expected} {level}");
                Assert.Equal(least + 1, Sparing.Least(expected, Share.From(level), SpareCount.OneOnShelf));
            }
        }
    }

    // Worked by hand from the definition: sum of e^-l l^i / i!.
    [Theory]
    [InlineData(0.5)]
    [InlineData(4)]
    [InlineData(20)]
    public void NoMoreThan_IsTheSumOfPoissonTerms(double expected)
    {
        var (term, sum) = (Math.Exp(-expected), 0.0);
        for (var i = 0; i < 30; i++)
        {
            sum += term;
            term *= expected / (i + 1);
            Assert.Equal(sum, Sparing.NoMoreThan(expected, i).Value, 1e-12);
        }
    }

    private const string Plan = """
        lanewright: 1
        policy:
          spares: 0 %
          spare-level: { confidence: 99.9 %, resupply: 10 d, convention: CONVENTION }
          failure-rates:
            - { of: module, fit: 3619, repair: 4 h }
            - { of: cable, per-year: 0, repair: 4 h }
            - { of: switch, mtbf: 300000 h, repair: 4 h }
        devices:
          a: { model: fixed-32x400, count: 2 }
          b: { model: fixed-32x400, count: 2 }
        links:
          l: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, length: 30 m, count: 25 }
        """;

    // 50 links with a module at each end are 100 units: the published case in a plan.
    [Theory]
    [InlineData("S", 3)]
    [InlineData("F", 2)]
    public void Plan_BuysTheSparesOfItsConvention(string convention, long spares)
    {
        var designed = Expect.Designed(PlanBlock.Compile(Plan.Replace("CONVENTION", convention, StringComparison.Ordinal)));
        var module = designed.Parts.Single(p => p.Item is Lanewright.Model.Catalogues.ModuleModel);
        Assert.Equal((100, spares, 100 + spares), (module.Needed, module.Spares, module.ToBuy));
    }

    [Fact]
    public void Rate_IsSaidOnce()
    {
        var twice = PlanBlock.Compile(Plan.Replace("fit: 3619", "fit: 3619, per-year: 0.1", StringComparison.Ordinal));
        Assert.Contains(twice.Findings, f => f.Kind.Code == "LW0102");
        var never = PlanBlock.Compile(Plan.Replace("fit: 3619, ", "", StringComparison.Ordinal));
        Assert.Contains(never.Findings, f => f.Kind.Code == "LW0105");
    }

    // The published case holds for the one model that has the rate; the other keeps the rate of its kind, by which ten times as many fail.
    [Fact]
    public void RateOfAModel_GoesBeforeThatOfItsKind()
    {
        var module = Module(Plan.Replace("CONVENTION", "S", StringComparison.Ordinal));
        var own = Plan.Replace("CONVENTION", "S", StringComparison.Ordinal).Replace("- { of: module, fit: 3619, repair: 4 h }",
            "- { of: module, fit: 36190, repair: 4 h }\n    - { of: module, model: " + module.Item.Name
            + ", fit: 3619, repair: 4 h, source: maker }", StringComparison.Ordinal);
        var need = SpareBook.Of(Expect.Designed(PlanBlock.Compile(own)).Plan, module.Item, 100);
        Assert.Equal((3619, 3, "maker"), (Math.Round(need!.Each.Fit, 6), need.Count, need.Source));
        var other = own.Replace(module.Item.Name, "dr4-400-dd-other", StringComparison.Ordinal);
        Assert.Contains(PlanBlock.Compile(other).Findings, f => f.Kind.Code == "LW1101");
        var general = SpareBook.Of(Expect.Designed(PlanBlock.Compile(other)).Plan, module.Item, 100);
        Assert.Equal((36190, ""), (Math.Round(general!.Each.Fit, 6), general.Source));
    }

    private static Lanewright.Engineering.Cost.PartLine Module(string plan) =>
        Expect.Designed(PlanBlock.Compile(plan)).Parts.Single(p => p.Item is Lanewright.Model.Catalogues.ModuleModel);
}
