using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;

namespace Lanewright.Tests.Lines;

/// <summary>What a line as a whole comes to: its verdict, what it carries and what is left of it.</summary>
public sealed class LineVerdictTests
{
    [Theory]
    // Every way leads through one duct.
    [InlineData("ducts: [bridge]", "ducts: [bridge]", "routes: 2", Verdict.Fail)]
    [InlineData("ducts: [bridge]", "", "routes: 2", Verdict.Pass)]
    // Stated ways in one duct.
    [InlineData("ducts: [bridge]", "ducts: [bridge]", "routes: 2, over: [near], other-way: [far]", Verdict.Fail)]
    // More of the time than fibre of 70 km gives: 0.07 x 2.73 cuts of 12 h in a year are 0.026 % of it.
    [InlineData("", "", "over: [far], availability: 99.99 %", Verdict.Fail)]
    [InlineData("", "", "over: [far], availability: 99.9 %", Verdict.Pass)]
    public void Verdict_IsThatOfAllThePlanWants(string near, string far, string wants, Verdict expected) =>
        Assert.Equal(expected, Line(near, far, $"type: 400ZR, channels: 8, {wants}").Verdict);

    // 400ZR without amplifiers does not reach 70 km, whatever else is there: that route counts for nothing.
    [Fact]
    public void RoutesThatFail_CountForNothing()
    {
        var line = Line("", "measured-loss: 40 dB", "type: 400ZR, channels: 8, routes: 2");
        Assert.Equal([Verdict.Pass, Verdict.Fail], line.Routes.Select(r => r.Verdict).Order());
        Assert.Equal(3200, line.Capacity.Gigabits);
        Assert.Equal(0, line.Cuts.Min(c => c.Left.Gigabits));
        Assert.Equal(3200, line.Cuts.Max(c => c.Left.Gigabits));
        var alone = Line("", "", "type: 400ZR, channels: 8, over: [near]");
        Assert.Equal(alone.Availability.Value, line.Availability.Value, 12);
    }

    // Three ways, each two of which share a duct: no single cut proves that there is no pair, and all three conflicts together do.
    [Fact]
    public void NoPair_IsProvenByWhatEveryTwoWaysShare()
    {
        var line = Expect.Designed(PlanBlock.Compile("""
            lanewright: 1
            sites: { a: { }, b: { } }
            spans:
              s1: { from: a, to: b, length: 10 km, ducts: [x, y] }
              s2: { from: a, to: b, length: 11 km, ducts: [x, z] }
              s3: { from: a, to: b, length: 12 km, ducts: [y, z] }
            lines: { l: { from: a, to: b, type: 400ZR, routes: 2 } }
            """)).Lines.Value.Lines.Single();
        Assert.Equal(Verdict.Fail, line.Verdict);
        Assert.Empty(line.Separating);
        Assert.Equal(["s1 s2 duct 'x'", "s1 s3 duct 'y'", "s2 s3 duct 'z'"],
            line.Conflicts.Select(c => $"{c.Way.Single()} {c.OtherWay.Single()} {c.Share.Single()}").Order());
    }

    // Compensating fibre turns the sign and not the limit: OIF-400ZR allows 2400 ps/nm, and 80 km of 40 ps/(nm km) have 3200.
    [Theory]
    [InlineData("40ps/nm/km", 1)]
    [InlineData("-40ps/nm/km", 1)]
    [InlineData("-4ps/nm/km", 0)]
    public void Dispersion_CountsByItsAmount(string dispersion, int exit) =>
        Assert.Equal(exit, Program.Run($"line --length 80km --type 400ZR --channels 8 --dispersion={dispersion}").Code);

    private static LineResult Line(string near, string far, string keys) => Expect.Designed(PlanBlock.Compile($$"""
        lanewright: 1
        policy: { fibre-cuts: 2.73, fibre-repair: 12 h, site-availability: 100 % }
        sites: { a: { }, b: { } }
        spans:
          near: { from: a, to: b, length: 50 km, {{near}} }
          far: { from: a, to: b, length: 70 km, {{far}} }
        lines: { x: { from: a, to: b, {{keys}} } }
        """)).Lines.Value.Lines.Single();
}
