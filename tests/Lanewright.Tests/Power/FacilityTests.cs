using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Power;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Power;

/// <summary>Arithmetic of power, heat and air against published figures; each names its source.</summary>
public sealed class FacilityTests
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    private static readonly double ContinuousShare = Limits.Facility("breaker", "continuous-share").Value;

    // Source: NEC 210.20(A) as commonly applied, data bulletin (seen).
    [Fact]
    public void Breaker_OfThirtyAmperes_CarriesTwentyFourWithoutEnd()
    {
        Assert.Equal(24, BreakerRule.Most(Amperes.From(30), ContinuousShare, isFullRated: false).Value, 9);
        Assert.Equal(30, BreakerRule.Most(Amperes.From(30), ContinuousShare, isFullRated: true).Value, 9);
    }

    // Source: NEC 210.20(A): 1.25 x 20 A of continuous load and 4 A of other (seen inputs, computed).
    [Fact]
    public void LeastBreaker_IsAQuarterMoreThanContinuousLoad() =>
        Assert.Equal(29, BreakerRule.Least(Amperes.From(20), Amperes.From(4), ContinuousShare).Value, 9);

    // Source: three-phase formula (seen): 208 V, 24 A at unity power factor.
    [Fact]
    public void ThreePhases_CarryTheirVoltAmperes()
    {
        Assert.Equal(8646.4, ThreePhase.VoltAmperes(208, Amperes.From(24)), 0);
        // A load of 8646.4 W between neutral and three phases draws the same current again.
        var each = ThreePhase.Between(Watts.From(8646.4 / 3), ThreePhase.ToNeutral(208), 1);
        Assert.Equal(24, each.Value, 3);
    }

    // Source: rack-power question and answer (seen): currents of sections between phases add by the law of cosines.
    [Theory]
    [InlineData(10, 10, 17.3205)] // equal sections: times the root of three
    [InlineData(10, 0, 10)]
    [InlineData(8, 5, 11.3578)] // sqrt(64 + 25 + 40)
    public void SectionsBetweenPhases_AddByTheLawOfCosines(double one, double other, double expected) =>
        Assert.Equal(expected, ThreePhase.OfPhase(Amperes.From(one), Amperes.From(other)).Value, 4);

    // Source: ASHRAE TC 9.9 2021 reference card (seen): class A2 allows 10 C to 35 C, and 18 C to 27 C are recommended.
    [Theory]
    [InlineData("5 C", "LW4406", "warmer", 10)]
    [InlineData("36 C", "LW4406", "cooler", 35)]
    [InlineData("15 C", "LW4407", "", 18)]
    [InlineData("30 C", "LW4407", "", 27)]
    public void Inlet_IsHeldAgainstTheEndItMisses(string inlet, string code, string word, double limit)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 2 } }, inlet: {{inlet}} } } } }
            devices: { host: { model: server-2u, cards: nic-2x200, racks: hall/A/1, per-rack: 1 } }
            """);
        var finding = Assert.Single(judged.Findings, f => f.Kind.Code is "LW4406" or "LW4407");
        Assert.Equal((code, limit), (finding.Kind.Code, finding.Evidence!.Limit));
        Assert.Contains(word, finding.Message, StringComparison.Ordinal);
    }

    // Source: own example of the reference notes (derived): 6000 W on one surviving feed of 230 V and 32 A.
    [Fact]
    public void SurvivingFeed_CarriesAll()
    {
        var current = ThreePhase.Between(Watts.From(6000), 230, 1);
        Assert.Equal(26.087, current.Value, 3);
        Assert.True(current > BreakerRule.Most(Amperes.From(32), ContinuousShare, isFullRated: false));
    }

    // Source: definition (memory), and a published environmental sheet with 24,356 BTU/h (seen).
    [Fact]
    public void Heat_InBritishUnits()
    {
        Assert.Equal(3.412142, AirStream.BtuAnHour(Watts.From(1)), 6);
        Assert.Equal(24356, AirStream.BtuAnHour(Watts.From(7138)), 0);
    }

    // Source: the same sheet prints 1,128 cubic feet a minute; a rise of 20 F is inferred. Air of 0.075 lb/ft3.
    [Fact]
    public void Air_OfAPublishedSheet()
    {
        const double cubicMetresAnHourInCfm = 1.699011;
        var rise = TemperatureRise.FromKelvin(20 / 1.8);
        var air = new AirStream(Limits).CubicMetresAnHour(Watts.From(7138), rise, 1.2014);
        // 0.1 % between 1005 and 1006 J/(kg K) for the heat of air.
        Assert.InRange(air / cubicMetresAnHourInCfm, 1126, 1129);
    }

    // Source: unit conversion (derived): air of 1.2014 kg/m3 and 1005 J/(kg K), a cubic foot a minute and a degree Fahrenheit; ours takes
    // 1006 J/(kg K).
    [Fact]
    public void CoefficientOfAir_IsThatOfTheUnits()
    {
        const double cubicMetresAnHourInCfm = 1.699011;
        var air = new AirStream(Limits).CubicMetresAnHour(Watts.From(1), TemperatureRise.FromKelvin(1 / 1.8), 1.2014);
        var heat = Limits.Facility("air", "heat").Value;
        Assert.Equal(3.159, air / cubicMetresAnHourInCfm * (heat / 1005), 0.002);
    }

    // Source: International Standard Atmosphere (memory).
    [Fact]
    public void Air_ThinsWithHeight()
    {
        var air = new AirStream(Limits);
        Assert.Equal(1.0581, air.Density(Length.FromMetres(1500)), 3);
        Assert.Equal(1.1578, air.Factor(Length.FromMetres(1500)), 3);
    }

    // Source: published environmental sheets (seen): 1 C for each 300 m above 900 m.
    [Theory]
    [InlineData("A2", 1500, 33.0)]
    [InlineData("A1", 3048, 24.84)]
    [InlineData("A1", 0, 32)]
    [InlineData("A3", 900, 40)]
    [InlineData("A4", 1150, 43)] // 1 C for each 125 m (memory)
    public void InletLimit_IsLoweredByHeight(string airClass, double metres, double expected) =>
        Assert.Equal(expected, InletLimits.Of(Limits, airClass, Length.FromMetres(metres)).AllowableHigh.Value.Celsius, 2);

    // Source: the 2021 reference card (seen).
    [Theory]
    [InlineData("A1", 15, 32)]
    [InlineData("A2", 10, 35)]
    [InlineData("A3", 5, 40)]
    [InlineData("A4", 5, 45)]
    public void Classes_HaveTheirRanges(string airClass, double low, double high)
    {
        var limits = InletLimits.Of(Limits, airClass, default);
        Assert.Equal((18, 27), (limits.RecommendedLow.Value.Celsius, limits.RecommendedHigh.Value.Celsius));
        Assert.Equal((low, high), (limits.AllowableLow.Value.Celsius, limits.AllowableHigh.Value.Celsius));
        Assert.Equal(3050, limits.Highest.Value.Metres);
    }

    // Source: NIOSH lifting equation, load constant 51 lb (seen).
    [Fact]
    public void OnePersonLifts_TheLoadConstant() => Assert.Equal(51 * 0.45359237, Limits.Facility("lift", "one-person").Value, 0);
}
