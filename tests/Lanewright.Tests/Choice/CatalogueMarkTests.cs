using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Power;
using Lanewright.Text;

namespace Lanewright.Tests.Choice;

/// <summary>A verdict is no better known than the catalogue it rests on, and power is counted where it is drawn.</summary>
public sealed class CatalogueMarkTests
{
    private const string Own = """
        # file: own.yaml
        devices:
          box:
            kind: switch
            title: box
            cages: [{ count: 4, form-factor: QSFP-DD, lane-rates: [50G], modes: [1x400G], power: 12 W }]
        modules:
          own-dr4: { title: DR4, form-factor: QSFP-DD, applications: 400GAUI-8>400GBASE-DR4, power: 10 W }
        """;

    // The shipped figures are of the usual size and nobody's data sheet; a catalogue of the plan's own is what its author read.
    [Theory]
    [InlineData("fixed-32x400", "m-400g-dr4-dd", Mark.CommonPractice)]
    [InlineData("box", "own-dr4", Mark.Seen)]
    [InlineData("box", "m-400g-dr4-dd", Mark.CommonPractice)]
    public void PowerAndModes_AreAsWellKnownAsTheCatalogue(string device, string module, Mark expected)
    {
        var solution = Chosen($$"""
            lanewright: 1
            catalogue: [own.yaml]
            devices:
              a: { model: {{device}} }
              b: { model: {{device}} }
            links:
              up: { from: { of: a, module: {{module}} }, to: { of: b, module: {{module}} }, rate: 400G, length: 50 m }
            {{Own}}
            """);
        Assert.All(solution.Checks.Where(c => c.Name == CheckNames.ModulePower), c => Assert.Equal(expected, c.Mark));
        if (device == "box") Assert.Contains(solution.Checks, c => c.Name == CheckNames.PortMode && c.Mark == Mark.Seen);
        Assert.Contains(solution.Checks, c => c.Name == CheckNames.Connector && c.Mark == Mark.CommonPractice);
    }

    // A cable of unlike ends lies the other way round where its near end fits only the second cage: 9 W are drawn there, 3 W here.
    [Theory]
    [InlineData("small", "large", 3, 9)]
    [InlineData("large", "small", 9, 3)]
    public void UnlikeEnds_DrawTheirPowerWhereTheySit(string from, string to, double first, double second)
    {
        var designed = Expect.Designed(PlanBlock.Compile($$"""
            lanewright: 1
            catalogue: [own.yaml]
            devices:
              a: { model: {{from}} }
              b: { model: {{to}} }
            links:
              up: { from: a, to: b, rate: 200G, assembly: own-aoc, length: 5 m }
            # file: own.yaml
            devices:
              small: { kind: switch, title: s, cages: [{ count: 2, form-factor: QSFP56, lane-rates: [50G], modes: [1x200G] }] }
              large: { kind: switch, title: l, cages: [{ count: 2, form-factor: QSFP-DD, lane-rates: [50G], modes: [1x200G] }] }
            assemblies:
              own-aoc:
                title: cable of unlike ends
                medium: AOC
                near: QSFP-DD
                far: QSFP56
                near-interface: 200GAUI-4
                far-interface: 200GAUI-4
                lengths: 5 10 m
                power-near: 9 W
                power-far: 3 W
            """));
        var power = ModulePower.Of(designed.Plan, designed.Design, designed.Lines);
        Assert.Equal((first, second), (power.Of(0).Value, power.Of(1).Value));
    }

    private static Solution Chosen(string plan) => Expect.Designed(PlanBlock.Compile(plan)).Design.Choices.Single().Chosen!;
}
