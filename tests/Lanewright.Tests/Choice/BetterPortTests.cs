using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Tests.Choice;

/// <summary>What only the port keeps out is listed with its reason, and the ports that would do are named.</summary>
public sealed class BetterPortTests
{
    // Every fourth cage of fixed-32x400 gives 21 W and the others 12 W; the module for 20 km draws 14 W (shipped catalogue).
    private const string Far = """
        lanewright: 1
        devices:
          west: { model: fixed-32x400 }
          east: { model: fixed-32x400 }
        links:
          span: { from: WEST, to: EAST, rate: 400G, length: 20 km }
        """;

    [Fact]
    public void HotModule_IsListedAndTheStrongerPortsAreNamed()
    {
        var judged = Expect.Codes(Far.Replace("WEST", "west").Replace("EAST", "east"), "LW2701");
        var candidate = Assert.Single(
            judged.Design!.Choices[0].Candidates, s => s.Name.StartsWith("2 x m-400g-er8-dd", StringComparison.Ordinal));
        var power = candidate.Checks.Where(c => c.Name == CheckNames.ModulePower).ToList();
        Assert.Equal([("from", 14.0, 12.0), ("to", 14.0, 12.0)], power.Select(c => (c.End, c.Value!.Value, c.Limit!.Value)));
        var text = Expect.Text(judged);
        Assert.Contains("14 W against 12 W at port 1 of west; ports 4, 8, 12 ... give 21 W", text, StringComparison.Ordinal);
        Assert.Contains("14 W against 12 W at port 1 of east; ports 4, 8, 12 ... give 21 W", text, StringComparison.Ordinal);
        Assert.Contains("then 2 x m-400g-er8-dd, cord-os2-lc would do, its overload unproven", text, StringComparison.Ordinal);
    }

    [Fact]
    public void NamedStrongerPort_IsTheCureItSays()
    {
        var judged = PlanBlock.Compile(Far.Replace("WEST", "{ of: west, ports: 4 }").Replace("EAST", "{ of: east, ports: 8 }"));
        Assert.Equal("2 x m-400g-er8-dd, cord-os2-lc 20000 m", judged.Design!.Choices[0].Chosen!.Name);
        Assert.Equal(Verdict.Unproven, judged.Design.Choices[0].Verdict);
    }

    [Fact]
    public void NamedHotModule_IsToldTheStrongerPorts()
    {
        var judged = Expect.Codes(Far.Replace("WEST", "{ of: west, module: m-400g-er8-dd }").Replace("EAST", "east"), "LW2103");
        Assert.Contains("ports 4, 8, 12 ... give 21 W", Expect.Text(judged), StringComparison.Ordinal);
    }

    [Fact]
    public void LanesOfAnotherRow_AreNamedByTheirPorts()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            catalogue: rows.yaml
            devices:
              a: { model: two-rows }
              b: { model: two-rows }
            links:
              up: { from: { of: a, ports: 1 }, to: { of: b, ports: 1 }, rate: 100G, length: 1.5 km }
            # file: rows.yaml
            devices:
              two-rows:
                kind: switch
                title: two rows of cages, the second with faster lanes
                cages:
                  - { count: 2, form-factor: QSFP112, lanes: 4, lane-rates: [50G], modes: [1x100G], power: 9 W }
                  - { count: 2, form-factor: QSFP112, lanes: 4, lane-rates: [50G, 100G], modes: [1x100G], power: 9 W }
            modules:
              only:
                title: 100G over one lane
                form-factor: QSFP112
                applications: 100GAUI-1>100GBASE-FR1
                power: 5 W
                price: 1
            """);
        var choice = judged.Design!.Choices[0];
        var listed = Assert.Single(choice.Candidates, s => s.FromModule?.Name == "only" && s.ToModule?.Name == "only");
        var failing = listed.Checks.Where(c => c.Verdict == Verdict.Fail).ToList();
        Assert.Equal([(CheckNames.HostInterface, "from"), (CheckNames.HostInterface, "to")], failing.Select(c => (c.Name, c.End)));
        Assert.Equal("ports 3, 4 do", BetterPorts.Cure(judged.Plan!, choice.Class, listed, failing[0]));
    }
}
