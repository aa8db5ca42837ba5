using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Tests.Choice;

/// <summary>What is ordered and said for links that stand at the edge of a limit.</summary>
public sealed class LinkChoiceTests
{
    private const string OneRack = """
        lanewright: 1
        sites: { main: { halls: { h1: { rows: { A: { racks: 10 } } } } } }
        devices:
          a: { model: fixed-32x400, racks: h1/A/1 }
          b: { model: fixed-32x400, racks: h1/A/1, unit: UNIT }
        links:
          up: { from: a, to: b, rate: 400G, type: 400GBASE-DR4LENGTH }
        """;

    // From the middle of unit 1 to the middle of unit 33 and 0.3 m to the side of the rack at each end: 32 x 44.45 mm + 0.6 m = 2.0224 m.
    [Theory]
    [InlineData("2.0224 m", new string[0])]
    [InlineData("2.1 m", new string[0])]
    [InlineData("2.02 m", new[] { "LW2603" })]
    public void StatedLength_FitsAWayThatIsNotLonger(string length, string[] codes) =>
        Expect.Codes(OneRack.Replace("UNIT", "33").Replace("LENGTH", ", length: " + length), codes);

    [Fact]
    public void Cord_IsNoShorterThanItsTypeAllows()
    {
        var judged = Expect.Clean(OneRack.Replace("UNIT", "2").Replace("LENGTH", ""));
        Assert.Equal(2, SolutionOf(judged).Length.Metres);
    }

    [Theory]
    [InlineData("m-40g-er4", "m-40g-er4", 2)]
    [InlineData("m-40g-er4", "m-40g-lr4", 2)]
    public void Attenuators_StandBeforeEveryReceiverThatNeedsOne(string from, string to, int count)
    {
        var judged = PlanBlock.Compile($$"""
            lanewright: 1
            devices:
              a: { model: fixed-32x40 }
              b: { model: fixed-32x40 }
            links:
              up: { from: { of: a, module: {{from}} }, to: { of: b, module: {{to}} }, rate: 40G, length: 10 m }
            """);
        var solution = SolutionOf(judged);
        Assert.Equal(count, solution.Parts.Where(p => p.Item.Name == solution.Attenuator?.Name).Sum(p => p.Quantity));
    }

    [Fact]
    public void Attenuator_StandsBeforeOneReceiver_WhereTheFibreSparesTheOther()
    {
        // 9 km lose 2.7 dB: enough for 40GBASE-LR4, which 40GBASE-ER4 overloads by 2.2 dB, and not for the other direction.
        var judged = PlanBlock.Compile("""
            lanewright: 1
            devices:
              a: { model: fixed-32x40 }
              b: { model: fixed-32x40 }
            links:
              up: { from: { of: a, module: m-40g-er4 }, to: { of: b, module: m-40g-lr4 }, rate: 40G, length: 9 km }
            """);
        Assert.Equal("from", SolutionOf(judged).AttenuatorEnd);
    }

    [Fact]
    public void WeakValues_AreNamedWhereAConnectionIsAHabit()
    {
        var judged = PlanBlock.Compile(OneRack.Replace("UNIT", "3").Replace("LENGTH", ", connections: 2, length: 100 m"));
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW2704");
    }

    [Fact]
    public void Autonegotiation_IsRefusedOnCopperThatHasNone() => Expect.Codes(
        """
        lanewright: 1
        devices:
          a: { model: fixed-48x10-4x40 }
          b: { model: fixed-48x10-4x40 }
        links:
          up: { from: { of: a, autonegotiation: yes }, to: { of: b, autonegotiation: yes }, rate: 10G, assembly: dac-10, length: 2 m }
        """,
        "LW2503");

    [Fact]
    public void Standards_OfNoTableAreRefused() => Expect.Codes(
        """
        lanewright: 1
        standards: limits.csv
        devices:
          a: { model: fixed-32x400 }
        # file: limits.csv
        subject,field,value,unit,document,mark
        400GBASE-DR4,reach-os2,50,m,data sheet,seen
        """,
        "LW0108");

    [Fact]
    public void Standards_ReplaceALimitOfATypeThatShippedModulesRun() => Expect.Codes(
        """
        lanewright: 1
        standards: my-interface-types.csv
        devices:
          a: { model: fixed-32x400 }
          b: { model: fixed-32x400 }
        links:
          up: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, length: 100 m }
        # file: my-interface-types.csv
        subject,field,value,unit,document,mark
        400GBASE-DR4,reach-os2,50,m,data sheet,seen
        """,
        "LW2403");

    [Fact]
    public void TypeOfAnotherRate_IsNotPassedOver() => Expect.Codes(
        """
        lanewright: 1
        devices:
          a: { model: fixed-32x400 }
          b: { model: fixed-32x400 }
        links:
          up: { from: a, to: b, rate: 400G, type: 800GBASE-DR8, length: 40 m }
        """,
        "LW2703");

    [Fact]
    public void EvidenceOfWords_SaysThatTheyDoNotHold()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            devices:
              a: { model: fixed-32x100 }
              b: { model: fixed-32x400 }
            links:
              up: { from: { of: a, module: m-400g-dr4-dd }, to: b, rate: 400G, length: 10 m }
            """);
        var evidence = Assert.Single(judged.Findings, f => f.Kind.Code == "LW2101").Evidence!.ToString();
        Assert.StartsWith("module-fit does not hold, ", evidence, StringComparison.Ordinal);
    }

    [Fact]
    public void SmallestChange_NamesNoCableThatIsNotMadeThatLong()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            sites: { main: { halls: { h1: { rows: { A: { racks: 10 } } } } } }
            devices:
              a: { model: fixed-32x400, racks: h1/A/1 }
              b: { model: fixed-32x400, racks: h1/A/10 }
            links:
              up: { from: a, to: b, rate: 400G, length: 5 m }
            """);
        var finding = Assert.Single(judged.Findings, f => f.Severity == Severity.Error);
        Assert.Equal("LW2701", finding.Kind.Code);
        Assert.EndsWith("Smallest change: make the cable 10 m longer; then aoc-400-dd would do", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void ActiveCable_LongerThanMade_FailsOnce()
    {
        var judged = Expect.Codes(
            """
            lanewright: 1
            devices:
              a: { model: fixed-32x100 }
              b: { model: fixed-32x100 }
            links:
              up: { from: a, to: b, rate: 100G, assembly: aoc-100, length: 70 m }
            """,
            "LW2403");
        Assert.Contains("the catalogue has aoc-100 up to 50 m", Expect.Text(judged), StringComparison.Ordinal);
        Assert.Single(SolutionOf(judged).Checks, c => c.Verdict == Verdict.Fail);
    }

    [Fact]
    public void Power_IsMissedByDecibels()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            devices:
              a: { model: fixed-32x100 }
              b: { model: fixed-32x100 }
            links:
              up: { from: a, to: b, rate: 100G, type: 100G-4WDM-40, length: 10 m, attenuator: 7 dB }
            """);
        Assert.Contains("at least 1.997 dB more attenuation", Expect.Text(judged), StringComparison.Ordinal);
    }

    private static Solution SolutionOf(JudgedPlan judged)
    {
        var design = judged.Design ?? throw new InvalidOperationException("nothing was designed");
        return design.SolutionOf(0) ?? throw new InvalidOperationException("the link has no way to be made");
    }
}
