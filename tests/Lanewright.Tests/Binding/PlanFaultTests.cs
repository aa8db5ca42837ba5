namespace Lanewright.Tests.Binding;

/// <summary>Faulty plans end in findings: nothing crashes, nothing vanishes, and one cause is told once.</summary>
public sealed class PlanFaultTests
{
    private const string TwoSwitches = """
        lanewright: 1
        devices: { a: { model: fixed-32x400 }, b: { model: fixed-32x400 } }

        """;

    private const string Hall = """
        lanewright: 1
        sites: { s: { halls: { h: { rows: { A: { racks: 3 }, 1: { y: 3 m, racks: 2 } } } } } }

        """;

    [Theory]
    [InlineData("devices:\n  a: { model: fixed-32x400\n  b: { model: fixed-32x400 }", "LW0101")]
    [InlineData("devices:\n\ta: { model: fixed-32x400 }", "LW0101", "LW0106")]
    public void BrokenText_IsASyntaxFault(string text, params string[] codes) => Expect.Codes("lanewright: 1\n" + text, codes);

    [Fact]
    public void TabInTheIndentation_IsReportedAtItsOwnLine()
    {
        var judged = PlanBlock.Compile("lanewright: 1\ndevices:\n\ta: { model: fixed-32x400 }\n");
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW0101" && f.Span.Position.Line == 3);
    }

    [Fact]
    public void EmptyIncludedFile_IsReportedBesideAnEarlierError() =>
        Expect.Codes("lanewright: 1\nbogus: 1\ninclude: empty.yaml\n# file: empty.yaml\n\n", "LW0104", "LW0106");

    [Theory]
    [InlineData("{ from: a, to: b, rate: 0G, length: 2 m }", "LW0107")]
    [InlineData("{ from: a, to: b, rate: 1e200G, length: 2 m }", "LW0107")]
    [InlineData("{ from: { of: [] }, to: b, rate: 400G, length: 2 m }", "LW0105")]
    [InlineData("{ from: a, to: b, rate: 400G, length: 2 m, reflectance: 45 dB }", "LW0107")]
    public void LinkThatSaysNothing_DoesNotVanish(string link, string code) =>
        Expect.Codes(TwoSwitches + "links: { up: " + link + " }", code);

    [Theory]
    [InlineData("count: -3")]
    [InlineData("count: 2000000000")]
    [InlineData("racks: h/A/1..3, unit: -3")]
    public void ValueOutsideItsBounds_IsNotBound(string text) =>
        Expect.Codes(Hall + "devices: { a: { model: fixed-32x400, " + text + " } }", "LW0107");

    [Theory]
    [InlineData("h/1")]
    [InlineData("h/1/1..2")]
    [InlineData("s/h/1")]
    [InlineData("s/h/1/2")]
    [InlineData("h/A/3")]
    public void RowNamedByANumber_CanBeNamed(string racks) =>
        Expect.Clean(Hall + "devices: { a: { model: fixed-32x400, racks: " + racks + " } }");

    [Theory]
    [InlineData("h/B", "LW1101")]
    [InlineData("[]", "LW1204")]
    public void GroupWithoutRacks_IsJudged(string racks, string code) =>
        Expect.Codes(Hall + "devices: { a: { model: fixed-32x400, racks: " + racks + " } }", code);

    [Fact]
    public void DeviceWithTheNameOfAnotherGroup_IsAmbiguous() =>
        Expect.Codes(
            "lanewright: 1\n"
            + "devices: { leaf: { model: fixed-32x400, count: 2 }, leaf-1: { model: fixed-32x400, name: border } }",
            "LW1103");

    [Fact]
    public void SameRowOfALongRow_IsBoundedBeforeItIsListed() =>
        Expect.Codes(
            """
            lanewright: 1
            sites: { s: { halls: { h: { rows: { A: { racks: 999 } } } } } }
            devices:
              a: { model: server-1u, racks: h/A, per-rack: 20 }
              b: { model: server-1u, racks: h/A, per-rack: 20, unit: 21 }
            links: { up: { from: a, to: b, rate: 1G, pattern: same-row } }
            """,
            "LW1105");

    [Fact]
    public void GroupOfAnUnknownModel_IsReportedOnceAndNotAgainByItsLinks() =>
        Assert.Single(Expect.Codes(
            """
            lanewright: 1
            devices: { a: { model: fixed-32x40X }, b: { model: fixed-32x40 } }
            links: { up: { from: a, to: b, rate: 40G, length: 2 m } }
            """,
            "LW1101").Findings, f => f.Kind.Code == "LW1101");

    [Fact]
    public void SplitOfAnotherRate_IsNotJudgedFurther() =>
        Expect.Codes(TwoSwitches + "links: { up: { from: a, to: { of: b, breakout: 4x100G }, rate: 400G, length: 2 m } }", "LW1310");
}
