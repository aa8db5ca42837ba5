using Lanewright.Model.Catalogues;

namespace Lanewright.Tests.Links;

/// <summary>What a plan names is judged by every measure, at both ends alike, and everything it needs is bought.</summary>
public sealed class NamedPartsTests
{
    private const string MixedSplits = """
        lanewright: 1
        devices:
          a: { model: fixed-32x800, count: 2 }
          b: { model: fixed-128x400, count: 4 }
        links:
          up:
            from: { of: a, breakout: 8x100G }
            to: { of: b, breakout: 4x100G }
            rate: 100G
            pattern: each-to-each
            count: 2
            length: 20 m
        """;

    [Fact]
    public void FanOutsThatMeet_AreCountedByTheCagesTheyLeave()
    {
        var parts = Expect.Clean(MixedSplits + "\n    type: 100GBASE-DR").Parts;
        Assert.Equal(2, parts.Single(p => p.Item.Name == "fan-os2-mpo16-8lc").Needed);
        Assert.Equal(4, parts.Single(p => p.Item.Name == "fan-os2-mpo12-4lc").Needed);
    }

    [Fact]
    public void StraightCord_DoesNotJoinMixedSplits()
    {
        var alike = MixedSplits
            .Replace("8x100G", "4x100G", StringComparison.Ordinal)
            .Replace("fixed-32x800", "fixed-128x400", StringComparison.Ordinal);
        Assert.Contains("LW2303", CodesOf(alike + "\n    cord: cord-os2-mpo12"));
    }

    [Fact]
    public void FanOut_DoesNotJoinWholeCages() => Assert.Contains("LW2303", CodesOf("""
        lanewright: 1
        devices:
          a: { model: fixed-128x400 }
          b: { model: fixed-128x400 }
        links:
          up: { from: a, to: b, rate: 400G, type: 400GBASE-VR4, cord: fan-om4-mpo12-2mpo12a, length: 20 m }
        """));

    [Theory]
    [InlineData("a", "b")]
    [InlineData("b", "a")]
    public void CommonCode_IsNotOfferedToUnlikeLanes_WhicheverEndComesFirst(string first, string second)
    {
        var modules = new Dictionary<string, string> { ["a"] = "m-100g-sr4", ["b"] = "m-100g-sr2" };
        var codes = CodesOf($$"""
            lanewright: 1
            devices:
              a: { model: fixed-32x100 }
              b: { model: server-1u, cards: [nic-2x100] }
            links:
              up:
                from: { of: {{first}}, module: {{modules[first]}} }
                to: { of: {{second}}, module: {{modules[second]}} }
                rate: 100G
                length: 20 m
            """);
        Assert.DoesNotContain("LW2207", codes);
        Assert.Contains("LW2203", codes);
        Assert.Contains("LW2410", codes);
    }

    [Theory]
    [InlineData("{ of: a, module: m-1600g-dr8 }", "b")]
    [InlineData("a", "{ of: b, module: m-1600g-dr8 }")]
    public void ModuleNamedAtEitherEnd_LetsADraftPass(string from, string to)
    {
        var codes = CodesOf($$"""
            lanewright: 1
            devices:
              a: { model: fixed-64x1600 }
              b: { model: fixed-64x1600 }
            links:
              up: { from: {{from}}, to: {{to}}, rate: 1600G, length: 300 m }
            """);
        Assert.DoesNotContain("LW2209", codes);
        Assert.Contains("LW2210", codes);
    }

    [Fact]
    public void FourLaneModule_RunsInItsAdapter_AndTheAdapterIsBought()
    {
        var judged = Expect.Codes("""
            lanewright: 1
            devices:
              a: { model: fixed-64x800, count: 2 }
              b: { model: fixed-128x400, count: 2 }
            links:
              up: { from: { of: a, adapter: yes }, to: b, rate: 400G, type: 400GBASE-DR4, length: 100 m }
            """, "LW2109");
        Assert.Equal(2, judged.Parts.Single(p => p.Item is SundryModel).Needed);
        Assert.Equal("adapter-osfp-qsfp", judged.Parts.Single(p => p.Item is SundryModel).Item.Name);
    }

    [Fact]
    public void ActiveCable_StaysDarkInLowPower() => Assert.Contains("LW2104", CodesOf("""
        lanewright: 1
        catalogue: [own.yaml]
        devices:
          a: { model: edge }
          b: { model: edge }
        links:
          up: { from: a, to: b, rate: 400G, assembly: aoc-400-dd, length: 10 m }
        # file: own.yaml
        devices:
          edge:
            kind: switch
            title: Edge switch
            cages: [{ count: 8, form-factor: QSFP-DD, lane-rates: [50G], modes: [1x400G], high-power: no }]
        """));

    [Fact]
    public void UnlistedMode_TakesACageForModules_NotTheManagementSocket()
    {
        var finding = PlanBlock.Compile("""
            lanewright: 1
            devices:
              a: { model: server-1u, cards: [nic-2x100] }
              b: { model: fixed-48x25-8x100 }
            links:
              up: { from: { of: a, breakout: 4x25G }, to: b, rate: 25G, count: 4, assembly: dac-100-4x25, length: 2 m }
            """).Findings.Single(f => f.Kind.Code == "LW2106");
        Assert.Contains("a:1/1 to b:1", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void StandardsOfThePlan_ReachTheShippedCatalogue() => Expect.Codes("""
        lanewright: 1
        standards: [own-interface-types.csv]
        devices:
          a: { model: fixed-32x400 }
          b: { model: fixed-32x400 }
        links:
          up: { from: a, to: b, rate: 400G, type: 400GBASE-DR4, length: 300 m }
        # file: own-interface-types.csv
        subject,field,value,unit,document,clause,edition,mark,read-in,note
        400GBASE-DR4,reach-os2,100,m,own measurement,,,seen,,
        """, "LW2403");

    private static IEnumerable<string> CodesOf(string plan) => PlanBlock.Compile(plan).Findings.Select(f => f.Kind.Code);
}
