using Lanewright.Deliverables.Drawings.Ladder;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Tests.Deliverables;

/// <summary>A ladder shows the numbers of the comparison it stands for, and no others.</summary>
public sealed class LadderTests
{
    private const string Passing = "l: { from: a4, to: b4, rate: 400G, type: 400GBASE-FR4, length: 900 m, connections: 4, splices: 3 }";
    private const string Failing = "l: { from: a4, to: b4, rate: 400G, type: 400GBASE-DR4, length: 480 m, connections: 6, "
        + "connection-loss: 0.75 dB }";

    [Theory]
    [InlineData(Passing, false)]
    [InlineData(Failing, true)]
    public void Margin_IsThatOfTheComparison(string link, bool fails)
    {
        var judged = Delivered.Plan(link);
        var check = Delivered.OnlyWay(judged).Solution.Checks.Single(c => c.Name == CheckNames.ChannelLoss);
        var drawing = Delivered.Ladder(judged);
        var words = "margin " + Numerals.Unit(check.Margin!.Value, "dB") + (fails ? ", over the limit" : "");
        Assert.Equal(fails, check.Verdict == Verdict.Fail);
        var label = Assert.Single(drawing.Descendants(Delivered.Svg + "text"), t => t.Value == words);
        Assert.Equal(fails, label.Attribute("class")!.Value == "alert");
        Assert.Equal(fails, Assert.Single(drawing.WithClass("margin")).WithClass("act").Length > 0);
        Assert.Contains("limit of the channel loss: " + Numerals.Unit(check.Limit!.Value, "dB"), drawing.Words());
        Assert.Contains($"{check.Source} [{Lanewright.Text.Marks.Name(check.Source!.Mark)}]", drawing.Words());
    }

    [Fact]
    public void EveryMatedPairAndSplice_IsOneStep()
    {
        var judged = Delivered.Plan(Passing);
        var channel = Delivered.OnlyWay(judged).Solution.Channel!;
        var drawing = Delivered.Ladder(judged);
        Assert.Equal(channel.Connections, drawing.WithClass("mated-pair").Length);
        Assert.Equal(channel.Splices, drawing.WithClass("splice").Length);
        Assert.Contains(drawing.Words(), w => w.StartsWith("The plan does not say where", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Passing)]
    [InlineData(Failing)]
    [InlineData("l: { from: a1, to: b1, rate: 100G, type: 100GBASE-LR4, length: 8 km, connections: 2, splices: 8 }")]
    [InlineData("l: { from: s10, to: t10, rate: 10G, type: 10GBASE-ER, length: 500 m, connections: 2 }")]
    public void Way_EndsAsFarDownAsTheLossSays(string link)
    {
        var judged = Delivered.Plan(link);
        var check = Delivered.OnlyWay(judged).Solution.Checks.Single(c => c.Name == CheckNames.ChannelLoss);
        var drawing = Delivered.Ladder(judged);
        var way = Assert.Single(drawing.WithClass("way"));
        var ends = way.Elements(Delivered.Svg + "circle").Select(c => c.Real("cy")).ToArray();
        var limit = Assert.Single(drawing.WithClass("limit")).Elements(Delivered.Svg + "line").Single().Real("y1");
        // Heights are proportional to decibels: start to end is the loss, start to limit the limit.
        Assert.Equal(check.Value!.Value / check.Limit!.Value, (ends[1] - ends[0]) / (limit - ends[0]), 2);
    }

    [Fact]
    public void BrightestCase_ShowsTheReceiversUpperLimit()
    {
        var judged = Delivered.Plan(Passing);
        var check = Delivered.OnlyWay(judged).Solution.Checks.Single(c => c.Name == CheckNames.Overload);
        var words = Delivered.Ladder(judged).Words();
        Assert.Contains("receiver's upper limit: " + Numerals.Unit(check.Limit!.Value, "dBm"), words);
        Assert.Contains("brightest case arrives with " + Numerals.Unit(check.Value!.Value, "dBm"), words);
    }

    [Fact]
    public void UnknownLaunch_IsDrawnAgainstTheTransmitter()
    {
        var words = Delivered.Ladder(Delivered.Plan("l: { from: a4, to: b4, rate: 400G, type: 400GBASE-SR4.2, length: 40 m, medium: OM4 "
            + "}")).Words();
        Assert.Contains("dB", words);
        Assert.DoesNotContain("dBm", words);
        Assert.Contains(words, w => w.StartsWith("The lowest launch of 400GBASE-SR4.2 is not known", StringComparison.Ordinal));
    }

    [Fact]
    public void PassiveCopper_HasItsEndsAndItsWire()
    {
        var judged = Delivered.Plan("d: { from: { of: a4, breakout: 2x200G }, to: h2, pattern: each-to-each, rate: 200G, medium: "
            + "DAC, length: 1.5 m }");
        var check = Delivered.OnlyWay(judged).Solution.Checks.Single(c => c.Name == CheckNames.CopperLoss);
        var drawing = Delivered.Ladder(judged);
        Assert.Equal(2, drawing.WithClass("copper-end").Length);
        Assert.Contains("margin " + Numerals.Unit(check.Margin!.Value, "dB"), drawing.Words());
        Assert.Contains("wire, 28 AWG", drawing.Words());
    }

    [Theory]
    [InlineData("c: { from: a4, to: b4, rate: 400G, medium: AEC, length: 5 m }", "the cable is active")]
    [InlineData("c: { from: a4, to: b4, rate: 400G, medium: AOC, length: 20 m }", "the cable is active")]
    [InlineData("c: { from: h2, to: mg, rate: 1G, medium: CAT6A, length: 5 m, pattern: each-to-each }", "twisted pair")]
    public void WithoutAChannelToBudget_TheReportSaysSoInOneLine(string link, string words)
    {
        var judged = Delivered.Plan(link);
        var way = Delivered.OnlyWay(judged);
        Assert.DoesNotContain(Delivered.Files(judged).Keys, k => k.EndsWith("-ladder.svg", StringComparison.Ordinal));
        Assert.Contains(words, LadderDrawing.WhyNone(way), StringComparison.Ordinal);
        Assert.Contains(Delivered.Xml(judged, "report.html").Descendants(Delivered.Html + "p"), p =>
            p.Value == LadderDrawing.WhyNone(way));
    }

    [Fact]
    public void DifferentTypes_ShowBothLimits()
    {
        var judged = Delivered.Plan("m: { from: { of: a1, module: m-100g-dr }, to: { of: b1, module: m-100g-fr1 }, rate: 100G, "
            + "length: 300 m, medium: OS2 }");
        var checks = Delivered.OnlyWay(judged).Solution.Checks.Where(c => c.Name is CheckNames.ChannelLoss or CheckNames.PowerBudget)
            .ToArray();
        Assert.Equal(2, checks.Length);
        var drawing = Delivered.Ladder(judged);
        Assert.Equal(2, drawing.WithClass("limit").Length);
        foreach (var check in checks) Assert.Contains(drawing.Words(), w =>
            w.StartsWith("margin " + Numerals.Unit(check.Margin!.Value, "dB"), StringComparison.Ordinal));
    }
}
