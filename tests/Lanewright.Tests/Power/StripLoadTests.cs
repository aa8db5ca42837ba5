using Lanewright.Engineering.Power;

namespace Lanewright.Tests.Power;

/// <summary>What strips carry, whole and with a feed lost. Expected values are worked by hand from the arithmetic of currents.</summary>
public sealed class StripLoadTests
{
    private const string Hall = """
        lanewright: 1
        catalogue: [own.yaml]
        policy: { power-factor: 100 % }
        sites: { main: { halls: { hall: { rows: { A: { racks: 2 } } } } } }
        devices:
          load: { model: load, racks: hall/A, per-rack: 4 }
        """;

    internal const string Own = """

        # file: own.yaml
        devices:
          load:
            kind: host
            title: A load of 1150 W
            units: 2
            typical: 500 W
            maximum: 1150 W
            cages: [{ count: 1, form-factor: QSFP28, lane-rates: [25G], modes: [1x100G], power: 5 W }]
        """;

    [Fact]
    public void SinglePhase_IsSharedAndMovesToTheOther()
    {
        var loads = Of("""
            power:
              a: { racks: hall/A, volts: 230 V, breaker: 32 A }
              b: { racks: hall/A, volts: 230 V, breaker: 32 A }
            """);
        Assert.Equal(4, loads.Count);
        Assert.All(loads, s =>
        {
            // 4 x 1150 W over two feeds of 230 V.
            Assert.Equal(10, s.Highest.Value, 9);
            Assert.Equal(20, s.AfterLoss.Value, 9);
            Assert.Equal(25.6, s.Limit.Value, 9);
        });
    }

    [Fact]
    public void ThreePhases_PutTheFourthLoadOnOneOfThem()
    {
        var strip = Of("power: { a: { racks: hall/A/1, volts: 398.3717 V, phases: 3, breaker: 16 A } }").Single();
        // 230 V to neutral: two phases with 5 A, one with 10 A.
        Assert.Equal([10, 5, 5], strip.Phases.Select(p => Math.Round(p.Value, 3)));
        Assert.Equal(50, strip.Unbalance.Percent, 2);
        Assert.Null(strip.Lost);
    }

    [Fact]
    public void OutletsBetweenPhases_MeetInTheLines()
    {
        var strip = Of("power: { a: { racks: hall/A/1, volts: 230 V, phases: 3, outlets: phase-to-phase, breaker: 32 A } }").Single();
        // Sections of 10, 5 and 5 A: sqrt(100 + 25 + 50) where the largest meets another, sqrt(25 + 25 + 25) where the others meet.
        Assert.Equal([13.229, 13.229, 8.66], strip.Phases.Select(p => Math.Round(p.Value, 3)).OrderDescending());
    }

    [Fact]
    public void NamedFeeds_CarryTheirGroupsAlone()
    {
        var loads = Of("""
            power:
              a: { racks: hall/A, volts: 230 V, breaker: 32 A }
              b: { racks: hall/A, volts: 230 V, breaker: 32 A }
            """, "per-rack: 4, feeds: a }");
        Assert.Equal([20, 0, 20, 0], loads.Select(s => s.Highest.Value));
    }

    private static List<StripLoad> Of(string power, string group = "per-rack: 4 }")
    {
        var judged = PlanBlock.Compile(Hall.Replace("per-rack: 4 }", group, StringComparison.Ordinal) + "\n" + power + Own);
        Assert.False(judged.HasErrors, Expect.Text(judged));
        return [.. Expect.Designed(judged).Strips];
    }
}
