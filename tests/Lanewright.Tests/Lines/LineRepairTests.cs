using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Lines;

/// <summary>What lines once got wrong, each with what must hold instead.</summary>
public sealed class LineRepairTests
{
    // 20 dB measured, and 10 km at 0.4 dB/km with two mated pairs of 3 dB: 30 dB, far beyond the 15 dB and less of grey types.
    [Fact]
    public void GreyOptics_AddUpMeasuredAndReckonedSpans()
    {
        var near = SpanCase.Span(10, 0.22) with { Name = "a", MeasuredLoss = Decibels.From(20) };
        var far = SpanCase.Span(10, 0.22) with
        {
            Name = "b", Connectors = 2, ConnectorLoss = new Known<Decibels>(Decibels.From(3), Citation.OfPlan),
        };
        var asked = SpanCase.Question(20, 1) with { Type = null, Rate = BitRate.FromGigabits(100), Spans = [near, far] };
        var loss = LineLadder.Try(asked, LineScheme.Grey)!.Checks.First(c => c.Name == CheckNames.ChannelLoss);
        Assert.NotEqual(Verdict.Pass, loss.Verdict);
        Assert.True(loss.Value >= 20 + 2.2 + 6 - 1e-9);
        // Measured near 1550 nm, the same glass loses more where most grey types work.
        var one = asked with { Spans = [near] };
        var alone = LineLadder.Try(one, LineScheme.Grey)!.Checks.First(c => c.Name == CheckNames.ChannelLoss);
        Assert.True(alone.Value >= 20);
    }

    [Fact]
    public void StatedTransmitter_OfTheTypesOwnLevelChangesNothing()
    {
        var asked = SpanCase.Question(40, 1);
        var stated = asked with { Transmitter = PowerLevel.FromDbm(-10) };
        Assert.Equal(Verdict.Pass, LineLadder.Try(asked, LineScheme.Coherent)!.Verdict);
        Assert.Equal(Verdict.Pass, LineLadder.Try(stated, LineScheme.Coherent)!.Verdict);
        // 8.8 dB of 11: three decibels less light do not arrive.
        var weak = asked with { Transmitter = PowerLevel.FromDbm(-13) };
        Assert.Equal(Verdict.Fail, LineLadder.Try(weak, LineScheme.Coherent)!.Verdict);
    }

    [Fact]
    public void AmplifierOfUnknownDelay_ProvesNothing()
    {
        var usual = LineEquipment.Usual(StandardsLibrary.Shipped);
        var silent = usual.Preamplifier! with { Pmd = null };
        var asked = SpanCase.Question(80) with { Equipment = usual with { Preamplifier = silent } };
        var design = LineLadder.Try(asked, LineScheme.BoosterAndPreamplifier)!;
        Assert.Equal(Verdict.Unproven, design.Checks.Single(c => c.Name == LineCheckNames.Pmd).Verdict);
        Assert.Equal(Verdict.Unproven, design.Verdict);
    }

    // Behind a span of 13 dB light is too weak to do itself much harm: the second span adds next to nothing.
    [Fact]
    public void NoiseAlongTheWay_ArisesWhereLightIsStrong()
    {
        var asked = SpanCase.Question(60) with { Spans = [SpanCase.Span(55, 0.25), SpanCase.Span(5, 0.25)] };
        var stages = LineLadder.Try(asked, LineScheme.BoosterAndPreamplifier)!.Stages;
        var behind = stages.Where(s => s.What == "span").Select(s => s.OverNoise!.Value.Value).ToList();
        Assert.Equal(2, behind.Count);
        Assert.Equal(behind[0], behind[1], 0.02);
    }

    [Fact]
    public void ThinMargin_IsTakenOnlyWhereNothingBetterWorks()
    {
        var answer = LineLadder.Of(SpanCase.Question(64));
        Assert.Equal(LineScheme.BoosterAndPreamplifier, answer.Design.Scheme);
        var thin = answer.Tried.Single(t => t.Scheme == LineScheme.Booster);
        Assert.Equal(Verdict.Unproven, thin.Verdict);
        Assert.Matches("reserve .* against 1.3 dB .*dB missing", thin.Reason);
        var without = SpanCase.Question(64);
        without = without with { Equipment = without.Equipment with { Preamplifier = null } };
        Assert.Equal((LineScheme.Booster, Verdict.Unproven), (LineLadder.Of(without).Design.Scheme, LineLadder.Of(without).Design.Verdict));
    }

    [Theory]
    [InlineData("measured-loss: 1 dB", true)]
    [InlineData("measured-loss: 10 dB", false)]
    public void LossBelowThatOfAnyGlass_IsRefused(string measured, bool isRefused)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { bay: { }, town: { } }
            spans: { coast: { from: bay, to: town, length: 60 km, {{measured}} } }
            lines: { away: { from: bay, to: town, type: 400ZR, channels: 8 } }
            """);
        Assert.Equal(isRefused, judged.Findings.Any(f => f.Severity == Severity.Error));
    }
}
