using System.Collections.Immutable;
using System.Numerics;
using CsCheck;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Lines;

/// <summary>Where amplifiers stand on a line of many spans: not at every site, but where so few add least noise.</summary>
public sealed class AmplifierPlacesTests
{
    // Source: brute force over all divisions of the spans into as many stretches: what an amplifier adds goes with the loss before it, as a
    // ratio.
    [Fact]
    public void Places_AreThoseOfLeastNoise() =>
        Gen.Int[5, 60].Array[3, 6].Sample(kilometres =>
        {
            var asked = Question([.. kilometres.Select(k => SpanCase.Span(k, 0.22) with { MayDivide = false })]);
            var design = LineLadder.Try(asked, LineScheme.InLine)!;
            var between = design.Amplifiers.Count(a => a.IsBetween);
            Assert.Equal(Divisions(asked.Spans, between).Min(Noise), Noise(design.Spans), 6);
        }, iter: 60);

    private static double Noise(ImmutableArray<LineSpan> spans)
    {
        var (sum, loss) = (0.0, 0.0);
        foreach (var span in spans)
        {
            loss += span.Loss.Value;
            if (span.GoesOn) continue;
            sum += Math.Pow(10, loss / 10);
            loss = 0;
        }
        return sum;
    }

    // Source: 48 spans of 5 km are the fibre of 3 spans of 80 km, in other pieces; pieces without loss of their own cost nothing.
    [Theory]
    [InlineData(3, 80)]
    [InlineData(8, 30)]
    [InlineData(16, 15)]
    [InlineData(48, 5)]
    public void SitesAlongTheWay_NeedNoMoreAmplifiers(int spans, double kilometres)
    {
        var asked = Question([.. Enumerable.Range(0, spans).Select(_ => SpanCase.Span(kilometres, 0.22) with { MayDivide = false })]);
        var design = LineLadder.Try(asked, LineScheme.InLine)!;
        Assert.Equal(Verdict.Pass, design.Verdict);
        Assert.Equal(2, design.Amplifiers.Count(a => a.IsBetween));
        Assert.Equal(spans, design.Spans.Length);
        Assert.Equal(240, design.Stages[^1].At.Kilometres, 9);
    }

    [Fact]
    public void AShortPatchBetweenSites_IsPassedUnamplified()
    {
        var asked = Question([.. new[] { 80, 95, 0.4, 60 }.Select(k => SpanCase.Span(k, 0.22) with { MayDivide = false })]);
        var design = LineLadder.Try(asked, LineScheme.InLine)!;
        Assert.Equal([false, false, true, false], design.Spans.Select(s => s.GoesOn));
        Assert.DoesNotContain(design.Stages, s => s.What == LineStage.Pad);
    }

    // Huts are where the fibre is halved, though a site lies 0.4 km from its end.
    [Fact]
    public void AHutOnALongSpan_IsBetterThanASiteAtItsEnd()
    {
        var asked = Question([SpanCase.Span(0.4, 0.22) with { MayDivide = false }, SpanCase.Span(160, 0.22)]);
        var design = LineLadder.Try(asked, LineScheme.InLine)!;
        Assert.Equal([true, false, false], design.Spans.Select(s => s.GoesOn));
        Assert.Equal([0.4, 80, 80], design.Spans.Select(s => s.Length.Kilometres));
    }

    private static LineQuestion Question(IEnumerable<LineSpan> spans)
    {
        var type = StandardsLibrary.Shipped.Wavelength("OR-400G-63.1GBd-16QAM")!;
        return SpanCase.Question(1, 1) with { Spans = [.. spans], Type = type, Launch = PowerLevel.FromDbm(1) };
    }

    private static IEnumerable<ImmutableArray<LineSpan>> Divisions(
        ImmutableArray<LineSpan> spans, int amplifiers) =>
        from chosen in Enumerable.Range(0, 1 << (spans.Length - 1))
        where BitOperations.PopCount((uint)chosen) == amplifiers
        select (ImmutableArray<LineSpan>)
            [.. spans.Select((s, i) => s with { GoesOn = i < spans.Length - 1 && (chosen >> i & 1) == 0 })];
}
