using System.Collections.Immutable;
using Lanewright.Engineering.Lines;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Lines;

/// <summary>What a design chooses against trying everything: launch, places of amplifiers, sweeps, and what to change.</summary>
public sealed class LineDesignTests
{
    private static readonly WavelengthType Type = StandardsLibrary.Shipped.Wavelength("400ZR")!;

    [Theory]
    [InlineData(60, 16, LineScheme.BoosterAndPreamplifier)]
    [InlineData(80, 8, LineScheme.BoosterAndPreamplifier)]
    [InlineData(100, 48, LineScheme.BoosterAndPreamplifier)]
    public void Launch_IsTheBestOfAllTenths(double kilometres, int channels, LineScheme scheme)
    {
        var asked = SpanCase.Question(kilometres, channels);
        var chosen = LineLadder.Try(asked, scheme)!;
        var best = double.NegativeInfinity;
        for (var tenths = -100; tenths <= 100; tenths++)
        {
            var launch = PowerLevel.FromDbm(tenths / 10.0);
            if (launch.OfAll(channels) > PowerLevel.FromDbm(23)) break;
            best = Math.Max(best, LineLadder.Try(asked with { Launch = launch }, scheme)!.Worst!.Margin!.Value.Value);
        }
        // A launch that is tilted may gain some more than any flat one; none loses more than a thousandth.
        Assert.InRange(chosen.Worst!.Margin!.Value.Value - best, -0.001, 0.2);
    }

    // With huts anywhere the amplifiers stand where spans are alike: no other place on a grid of 2 km leaves more.
    [Fact]
    public void Amplifier_StandsWhereNoOtherPlaceLeavesMore()
    {
        var asked = SpanCase.Question(120, 8);
        var middle = Margin(60);
        for (var at = 40; at <= 80; at += 2) Assert.True(Margin(at) <= middle + 0.002, $"{at} km");
        var design = LineLadder.Try(asked, LineScheme.InLine)!;
        Assert.Equal(middle, design.Worst!.Margin!.Value.Value, 0.002);
        Assert.Equal(design.Spans[0].Length.Kilometres, design.Spans[^1].Length.Kilometres, 1e-9);

        double Margin(double at) => CoherentLine.Of(
            asked with { Spans = [Part(at), Part(120 - at)] }, Type, LineScheme.InLine).Worst!.Margin!.Value.Value;

        // A new hut has a panel: a mated pair at either end of a piece, as the design reckons it.
        LineSpan Part(double kilometres) => SpanCase.Span(kilometres, 0.22) with { Connectors = asked.Spans[0].Piece(2).Connectors };
    }

    [Theory]
    [InlineData("length")]
    [InlineData("channels")]
    [InlineData("launch")]
    public void Sweep_IsThatOfDesignsOneByOne(string quantity)
    {
        var asked = SpanCase.Question(80, 8);
        var answer = LineLadder.Of(asked);
        var sweep = LineSweep.Over(answer, quantity);
        Assert.True(sweep.Points.Length >= 10);
        foreach (var (value, margin, verdict, failing) in sweep.Points)
        {
            var design = LineLadder.Try(quantity switch
            {
                "length" => SpanCase.Question(value, 8),
                "channels" => Multiplexed(SpanCase.Question(80, (int)value)),
                _ => asked with { Launch = PowerLevel.FromDbm(value) },
            }, answer.Design.Scheme)!;
            Assert.Equal(design.Worst!.Margin!.Value.Value, margin!.Value, 1e-9);
            Assert.Equal(design.Verdict, verdict);
            Assert.Equal(verdict == Engineering.Links.Verdict.Fail, failing.Length > 0);
        }

        // Everything else as designed: a single channel keeps the multiplexers.
        static LineQuestion Multiplexed(LineQuestion asked) => asked with { Equipment = asked.Equipment with { AlwaysMultiplexes = true } };
    }

    // Loss grows with length alone, so that every kilometre more leaves less.
    [Fact]
    public void Sweep_OfGreyOpticsIsOneOfLoss()
    {
        var asked = SpanCase.Question(8, 1) with { Type = null, Rate = BitRate.FromGigabits(10) };
        var answer = LineLadder.Of(asked);
        Assert.Equal(LineScheme.Grey, answer.Design.Scheme);
        var sweep = LineSweep.Over(answer, "length");
        Assert.Equal(LineSweep.Loss, sweep.Of);
        var margins = sweep.Points.Select(p => p.MarginDb!.Value).ToList();
        Assert.True(margins.Count > 10 && margins.Zip(margins.Skip(1)).All(m => m.Second < m.First));
        Assert.NotEmpty(LineSweep.Over(answer, "launch").WhyNone);
    }

    [Fact]
    public void Changes_GainWhatADesignWithThemHasMore()
    {
        var asked = SpanCase.Question(100, 16);
        var answer = LineLadder.Of(asked);
        var now = answer.Design.Worst!.Margin!.Value.Value;
        var changes = LineChange.Of(answer, CatalogueBinder.Shipped);
        Assert.NotEmpty(changes);
        var quieter = asked.Equipment.Preamplifier!;
        quieter = quieter with { Figure = quieter.Figure!.Value.As(f => f - Decibels.From(1)) };
        var half = ChannelPlan.Middle(asked.Standards.Grid, asked.Channels.Spacing, 8)!;
        Holds("a preamplifier 1 dB less noisy", asked with { Equipment = asked.Equipment with { Preamplifier = quieter } });
        Holds("half the channels", asked with { Channels = half });
        var bought = changes.Where(c => c.Cost is { } cost && cost > Money.Zero).ToList();
        var best = LineChange.BestBuy(changes);
        Assert.All(bought, c => Assert.True(
            c.Gained.Value / (double)c.Cost!.Value.Units <= best!.Gained.Value / (double)best.Cost!.Value.Units + 1e-15));
        Assert.Equal(changes.OrderByDescending(c => c.Gained).Select(c => c.Gained), changes.Select(c => c.Gained));

        void Holds(string what, LineQuestion then)
        {
            var gained = LineLadder.Try(then, answer.Design.Scheme)!.Worst!.Margin!.Value.Value - now;
            Assert.Equal(gained, changes.Single(c => c.What == what).Gained.Value, 1e-9);
        }
    }

    [Fact]
    public void Gains_BringEveryAmplifierToItsLevel()
    {
        var design = LineLadder.Try(SpanCase.Question(160, 8), LineScheme.InLine)!;
        Assert.All(design.Amplifiers, a => Assert.Equal((a.Output - a.Input).Value, (a.Gain - a.Pad).Value, 1e-9));
        ImmutableArray<LineAmplifier> between = [.. design.Amplifiers.Where(a => a.Place.StartsWith("in-line", StringComparison.Ordinal))];
        Assert.NotEmpty(between);
        Assert.All(between, a => Assert.Equal(design.Launch!.Value.Dbm, a.Output.Dbm, 1e-9));
    }
}
