using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Lines;

/// <summary>Codes, levels and whole combs against what is published of them, and against one another.</summary>
public sealed class LineCodeTests
{
    private static readonly StandardsLibrary Standards = StandardsLibrary.Shipped;

    // Source: IEEE 802.3 quotes a frame loss of 9.2e-13 for one codeword and 1.7e-12 for two in turn at 2.4e-4 (memory).
    [Theory]
    [InlineData(1, 9.2e-13)]
    [InlineData(2, 1.7e-12)]
    public void FrameLoss_AtTheLimitIsWhatTheStandardQuotes(int interleaved, double quoted)
    {
        var answer = CodeAnswer.Of(Standards, "RS(544,514)", 2.4e-4, interleaved)!;
        Assert.Equal(Verdict.Pass, answer.Verdict);
        Assert.Equal(1, answer.Frames!.Value / quoted, 0.03);
        Assert.Equal(0, answer.Margin!.Value.Value, 1e-9);
    }

    // Binomial probabilities of another library (MathNet.Numerics), where they are large enough for its plain sums.
    [Theory]
    [InlineData(528, 7, 1e-3)]
    [InlineData(528, 7, 3e-3)]
    [InlineData(544, 15, 3e-3)]
    [InlineData(544, 15, 5e-3)]
    public void Codewords_AgreeWithAnotherLibrary(int symbols, int corrects, double bits)
    {
        var code = new ReedSolomonCode(symbols, 514, corrects, 10);
        var wrong = 1 - Math.Pow(1 - bits, 10);
        var other = 1 - new MathNet.Numerics.Distributions.Binomial(wrong, symbols).CumulativeDistribution(corrects);
        Assert.Equal(1, code.Codewords(bits) / other, 1e-6);
        Assert.Equal(1, code.BitErrorsFor(code.Codewords(bits)) / bits, 1e-6);
    }

    [Fact]
    public void MoreErrors_NeverLeaveMoreMargin()
    {
        var last = double.PositiveInfinity;
        for (var errors = 1e-9; errors < 0.1; errors *= 1.5)
        {
            var margin = new CodeMargin(1.25e-2).Of(errors).Value;
            Assert.True(margin < last);
            Assert.Equal(errors <= 1.25e-2, margin >= 0);
            last = margin;
        }
    }

    // Source: 16QAM with all terms (Gray code; derived). Carena et al. take the first alone.
    [Fact]
    public void FirstTerm_IsEnoughWhereCodesWork()
    {
        var short16 = new SymbolErrors(Standards.Symbols("16QAM")!);
        foreach (var errors in new[] { 1e-4, 1e-3, 1.25e-2, 2e-2 })
        {
            var ratio = short16.RatioFor(errors);
            Assert.Equal(1, LineCodeFunctions.Exact(ratio) / errors, 0.001);
        }
    }

    // The rule is 0.05 dB above the exact form at high gain (57.95 dB at 193.4 THz; derived).
    [Theory]
    [InlineData(18.6, 5.5)]
    [InlineData(25, 5)]
    public void RuleOfThumb_IsNearTheExactForm(double loss, double figure)
    {
        var exact = AmplifierNoise.Over(PowerLevel.FromDbm(1 - loss), Decibels.From(figure), Decibels.From(loss),
            Frequency.FromTerahertz(193.4), Frequency.FromGigahertz(12.5)).Value;
        Assert.InRange(LineCodeFunctions.Rule(1, loss, figure, 1) - exact, 0.0, 0.06);
    }

    // The closed form for a whole comb against the sum over channels, at the middle: both are approximations of one integral, and the
    // reference notes found the first 0.09 dB from it and the channel sum 0.13 dB from a third form.
    [Fact]
    public void SumOverChannels_IsTheClosedFormOfTheComb()
    {
        const double density = 1e-3 / 75e9;
        // The closed form is that of an endless span.
        var glass = new GlassSpan(Attenuation.FromDecibelsPerKilometre(0.2), Length.FromKilometres(10_000), DispersionRate.From(17), 0.067,
            1.3, GlassSpan.Usual);
        // Channels side by side: what is left between them is nothing.
        var comb = new NonlinearNoise(glass, 65, Frequency.FromGigahertz(75), Frequency.FromGigahertz(75));
        var sum = comb.Plain(32) * Math.Pow(1e-3, 3) / 75e9;
        var whole = LineCodeFunctions.WholeComb(1.3e-3, glass.Beta2, glass.Alpha, 1e7, Math.Pow(65 * 75e9, 2), density);
        Assert.Equal(0, 10 * Math.Log10(sum / whole), 0.1);
    }

    [Fact]
    public void Tables_TakeFurtherBoundaries()
    {
        const string own = "subject,field,value,unit,document,clause,edition,mark,read-in,note\n"
            + "ZR+-400G,dispersion-penalty@5000,0.1,dB,maker's sheet,,,invented,,\n";
        var findings = new FindingSink();
        var library = StandardsLibrary.Load([new SourceText("own-wavelength-types.csv", own)], findings);
        Assert.Empty(findings.ToSorted());
        var steps = library.Wavelength("ZR+-400G")!.DispersionPenalties;
        Assert.Equal(0.1, steps.At(5000).Value, 1e-12);
        Assert.Equal(0.5, steps.At(5001).Value, 1e-12);
        StandardsLibrary.Load([new SourceText("own-wavelength-types.csv", own.Replace("penalty@5000", "penalti@5000"))], findings);
        Assert.NotEmpty(findings.ToSorted());
    }

    [Fact]
    public void CoarseChannels_CarryTenGigabitsOverAShortLine()
    {
        var asked = SpanCase.Question(15, 4) with { Type = null, Rate = BitRate.FromGigabits(10) };
        var design = LineLadder.Try(asked, LineScheme.CoarseDirect)!;
        Assert.Equal(Verdict.Pass, design.Verdict);
        Assert.Equal("10G-CWDM", design.TypeName);
        // -1 dBm, two multiplexers of 3 dB, 15 km of 0.22 and 0.05 dB.
        Assert.Equal(-1 - 6 - 3.3 - 0.75, design.Channels[0].Received!.Value.Dbm, 0.01);
        Assert.Equal(Verdict.Fail, LineLadder.Try(SpanCase.Question(15, 12) with { Type = null, Rate = asked.Rate },
            LineScheme.CoarseDirect)!.Verdict);
        Assert.NotEqual(Verdict.Pass, LineLadder.Try(SpanCase.Question(40, 4) with { Type = null, Rate = asked.Rate },
            LineScheme.CoarseDirect)!.Verdict);
    }

    [Fact]
    public void UnknownHighestLaunch_ProvesNothingAtAnUnamplifiedReceiver()
    {
        var rows = Standards.Wavelength("400ZR")!.Sheet.Facts.Where(f => f.Field != "tx-max")
            .Select(f => $"own,{f.Field},{f.Value},{f.Unit},test,,,invented,,");
        var own = string.Join('\n', rows.Prepend("subject,field,value,unit,document,clause,edition,mark,read-in,note"));
        var type = StandardsLibrary.Load([new SourceText("own-wavelength-types.csv", own)], new FindingSink()).Wavelength("own")!;
        var design = LineLadder.Try(SpanCase.Question(20, 1) with { Type = type }, LineScheme.Coherent)!;
        Assert.Contains(design.Checks, c => c.Name == LineCheckNames.ReceiveHigh && c.Verdict == Verdict.Unproven);
    }
}
