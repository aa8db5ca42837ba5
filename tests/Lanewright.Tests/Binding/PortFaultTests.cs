namespace Lanewright.Tests.Binding;

/// <summary>Who gets which port, and what is said when somebody gets none.</summary>
public sealed class PortFaultTests
{
    private const string Spine = """
        lanewright: 1
        devices: { a: { model: fixed-32x40 }, b: { model: fixed-48x10-4x40, count: 4 }, c: { model: fixed-32x40 } }
        links:

        """;

    [Fact]
    public void PortNamedByOneLink_IsNotLostToTheSplitOfAnother()
    {
        var plan = Expect.Clean(Spine + """
              down: { from: b, to: { of: a, breakout: 4x10G }, pattern: striped, rate: 10G, length: 2 m }
              up: { from: { of: a, ports: 2 }, to: c, rate: 40G, length: 2 m }
            """).Plan!;
        Assert.Equal(5, plan.Links.Count);
        Assert.All(Enumerable.Range(0, 4), link => Assert.Equal(2, plan.Links.ToPort(link).Cage));
    }

    [Theory]
    [InlineData("a")]
    [InlineData("z")]
    public void SplitThatCostsANamedPort_IsReportedOnceWhateverTheOrder(string name) =>
        Expect.Codes(
            Spine + $$"""
              {{name}}: { from: { of: a, ports: 2 }, to: c, rate: 40G, length: 2 m }
              down: { from: b, to: { of: a, breakout: 4x10G, ports: 1 }, pattern: striped, rate: 10G, length: 2 m }
            """,
            "LW1307");

    [Fact]
    public void TooFewNamedPorts_AreExhaustedAndNotTaken() =>
        Expect.Codes(Spine + "  up: { from: { of: a, ports: 1 }, to: c, rate: 40G, count: 2, length: 2 m }", "LW1302");

    [Fact]
    public void PortNamedTwice_NamesTheLinkThatHoldsIt()
    {
        var judged = Expect.Codes(
            Spine + """
              down: { from: { of: a, ports: 1 }, to: c, rate: 40G, length: 2 m }
              up: { from: { of: a, ports: 1 }, to: c, rate: 40G, length: 2 m }
            """,
            "LW1303");
        var taken = judged.Findings.Single(f => f.Kind.Code == "LW1303");
        Assert.Contains("port 1 is held by 'down'", taken.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void PortThatDoesNotExist_IsReportedOnce() =>
        Expect.Codes(Spine + "  up: { from: { of: a, ports: 34 }, to: c, rate: 40G, length: 2 m }", "LW1304");

    [Fact]
    public void LinkToItself_AsksForNoPorts() =>
        Expect.Codes(Spine + "  up: { from: a, to: a, rate: 40G, count: 100, length: 2 m }", "LW1306");

    [Fact]
    public void PortsNamedOnOneDevice_StayFreeOnItsSisters() =>
        Expect.Clean(
            """
            lanewright: 1
            devices: { a: { model: fixed-32x400, count: 2 }, b: { model: fixed-32x400, count: 2 } }
            links:
              x: { from: { of: a-1, ports: "1..16" }, to: b-1, rate: 400G, count: 16, length: 2 m }
              y: { from: a-2, to: b-2, rate: 400G, count: 32, length: 2 m }
            """);

    [Fact]
    public void PortsNamedOnADevice_AreKeptFromTheLinksOfItsGroup()
    {
        var plan = Expect.Clean(
            """
            lanewright: 1
            devices: { a: { model: fixed-32x400, count: 2 }, b: { model: fixed-32x400, count: 2 } }
            links:
              x: { from: a, to: b, rate: 400G, length: 2 m }
              y: { from: { of: a-1, ports: 1 }, to: b-2, rate: 400G, length: 2 m }
            """).Plan!;
        Assert.Equal([1, 0, 0], Enumerable.Range(0, plan.Links.Count).Select(link => (int)plan.Links.FromPort(link).Cage));
    }
}
