using Lanewright.Findings;

namespace Lanewright.Tests.Binding;

/// <summary>Figures that mean nothing are refused, and the range is told.</summary>
public sealed class RangeTests
{
    private const string Hall = "lanewright: 1\nsites: { main: { halls: { hall: { rows: { A: { racks: 2 } } } } } }\n";

    private static string OfHall(string pathwayTo) =>
        "lanewright: 1\nsites: { main: { halls: { hall: { rows: { A: { racks: 2 } }, pathways: { tray: { from: { x: 0 m, y: 0 m }, to: "
        + pathwayTo + " } } } } } }\n"
        + "devices: { a: { model: fixed-32x400, racks: hall/A } }\n"
        + "links: { up: { from: a-1, to: a-2, rate: 400G, medium: OM4 } }\n";

    [Theory]
    [InlineData("policy: { pue: 0.5 }", "from 1 to 10")]
    [InlineData("policy: { pue: 11 }", "from 1 to 10")]
    [InlineData("policy: { spare-level: { confidence: 100 %, resupply: 8 h } }", "above 0 % and below 100 %")]
    [InlineData("policy: { spare-level: { confidence: 0 %, resupply: 8 h } }", "above 0 % and below 100 %")]
    [InlineData("policy: { breaker-share: 0 % }", "above 0 % and up to 100 %")]
    [InlineData("policy: { power-factor: 0 % }", "above 0 % and up to 100 %")]
    [InlineData("policy: { failure-rates: [{ of: switch, mtbf: 0 h, repair: 4 h }] }", "1 h or more")]
    [InlineData("routes: { from: hall, to: hall, length: 0 m }", "1 mm or more")]
    [InlineData("labels: { width: 20 mm }", "from 25 mm to 300 mm")]
    [InlineData("labels: { height: 6 mm }", "from 9 mm to 300 mm")]
    [InlineData("power: { a: { racks: hall/A, volts: 4 V, breaker: 16 A } }", "from 12 V to 1500 V")]
    [InlineData("racks: { r: { width: 0 mm } }", "from 100 mm to 5000 mm")]
    public void BeyondTheRange_IsAnErrorThatTellsIt(string section, string range)
    {
        var judged = PlanBlock.Compile(Hall + section + "\n");
        var found = Assert.Single(judged.Findings, f => f.Kind.Code == "LW0107");
        Assert.Contains(range, found.Message, StringComparison.Ordinal);
    }

    // What is usual cannot be more than the most.
    [Theory]
    [InlineData("typical: 300 W, maximum: 200 W", true)]
    [InlineData("typical: 200 W, maximum: 200 W", false)]
    [InlineData("typical: 200 W", false)]
    public void UsualPowerAboveTheMost_IsRefused(string keys, bool isTold)
    {
        var judged = PlanBlock.Compile(Hall + $$"""
            catalogue: own.yaml
            # file: own.yaml
            devices: { load: { kind: host, title: a load, cages: [], {{keys}} } }
            """);
        Assert.Equal(isTold, judged.Findings.Any(f => f.Kind.Code == "LW1501" && f.Message.Contains("300 W", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("width: 0 mm", "LW0107")]
    [InlineData("width: 300 mm, depth: 0 mm", "LW0107")]
    [InlineData("width: 100 km", "LW0107")]
    [InlineData("kind: duct, width: 100 mm, depth: 50 mm", "LW1711")]
    public void PathwayThatHoldsNothing_IsRefused(string keys, string code) => Expect.Codes(OfHall("{ x: 4 m, y: 0 m }, " + keys), code);

    [Fact]
    public void PathwayFromAPointToItself_IsRefused() => Expect.Codes(OfHall("{ x: 0 m, y: 0 m }, width: 300 mm"), "LW1711");

    [Theory]
    [InlineData("policy: { pue: 1 }")]
    [InlineData("policy: { pue: 1.35, spare-level: { confidence: 99.9 %, resupply: 8 h } }")]
    [InlineData("labels: { width: 25 mm, height: 9 mm }")]
    [InlineData("power: { a: { racks: hall/A, volts: 48 V, breaker: 16 A } }")]
    public void WithinTheRange_IsTaken(string section)
    {
        var judged = PlanBlock.Compile(Hall + section + "\n");
        Assert.DoesNotContain(judged.Findings, f => f.Severity == Severity.Error && f.Kind.Code == "LW0107");
    }

    [Theory]
    [InlineData("feeds: [c]", true)]
    [InlineData("feeds: [a, c]", true)]
    [InlineData("feeds: [a, b]", false)]
    public void FeedThatNobodyDescribes_IsAnErrorWithWhatToDo(string feeds, bool isWrong)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 2 } } } } } }
            power:
              a: { racks: hall/A, volts: 230 V, breaker: 16 A }
              b: { racks: hall/A, volts: 230 V, breaker: 16 A }
            devices:
              host: { model: server-2u, cards: nic-2x200, racks: hall/A, {{feeds}} }
            """);
        var found = judged.Findings.Where(f => f.Kind.Code == "LW1101").ToList();
        Assert.Equal(isWrong, found.Count == 1);
        if (isWrong) Assert.Contains("name one of a, b, or describe 'c' under 'power'", found[0].Message, StringComparison.Ordinal);
    }

    // A feed that is described and cannot be read is told once; that a group draws from it raises nothing more.
    [Theory]
    [InlineData("{ racks: hall/A, breaker: 16 A }", "LW0105")]
    [InlineData("{ racks: hall/A, volts: -3 V, breaker: 16 A }", "LW0107")]
    public void FeedThatCannotBeRead_IsToldAndNothingFalls(string feed, string code)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            sites: { main: { halls: { hall: { rows: { A: { racks: 2 } } } } } }
            power:
              a: {{feed}}
              b: { racks: hall/A, volts: 230 V, breaker: 16 A }
            devices:
              host: { model: server-2u, cards: nic-2x200, racks: hall/A, feeds: [a, b] }
            """);
        Assert.Equal(code, Assert.Single(judged.Findings, f => f.Severity == Severity.Error).Kind.Code);
    }

    [Fact]
    public void FeedsOfAPlanWithoutPower_AreNamesOfItsOwn() => Assert.DoesNotContain(
        PlanBlock.Compile("lanewright: 1\ndevices:\n  host: { model: server-2u, feeds: [left, right] }\n").Findings,
        f => f.Severity == Severity.Error);
}
