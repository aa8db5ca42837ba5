using Lanewright.Findings;
using Lanewright.Model.Wanted;
using Lanewright.Text;

namespace Lanewright.Tests.Binding;

/// <summary>The section <c>wanted</c>: what it says is bound, what it says wrongly is a finding, and a question lies over it.</summary>
public sealed class WantedTests
{
    private const string Hall = """
        lanewright: 1
        sites: { s: { halls: { h: { rows: { A: { racks: 9 }, S: { racks: 3, y: 5 m } } } } } }
        devices: { old: { model: chassis-4, cards: card-36x400 x2, count: 3, existing: yes } }
        stock: [{ model: m-400g-dr4-dd, quantity: 40 }]

        """;

    [Fact]
    public void Section_IsBoundKeyByKey()
    {
        var wanted = Wanted(Hall + """
            wanted:
              hosts:
                b: { count: 20, rate: 100G, ports: 2, per-rack: 4, model: server-2u, cards: nic-2x100 }
                a: { count: 10, rate: 400G }
              growth: 120 %
              years: 3
              oversubscription: [6:2, 1:1]
              survive: 1
              planes: 2
              form-factors: [OSFP, QSFP-DD]
              uplink-rates: [800G, 400G]
              tiers: 2
              shapes: [planes, leaf-spine]
              rack-units: 40
              rack-power: 12 kW
              rack-weight: 300 kg
              budget: 1e6
              energy-price: 0.1234
              overhead: 35 %
              racks: h/A/1..4
              spine-racks: [h/S/2, h/S/1]
              reuse: [old, m-400g-dr4-dd]
            """);
        Assert.Equal(["a 10 1 400G 16 ", "b 20 2 100G 4 server-2u"],
            wanted.Hosts.Select(h => $"{h.Name} {h.Count} {h.Ports} {h.Rate} {h.PerRack} {h.Model?.Name}"));
        Assert.Equal((1.2, 3, 1, 2, 2), (wanted.Growth.Value, wanted.Years, wanted.Survive, wanted.Planes, wanted.MostTiers ?? 0));
        Assert.Equal(["6:2", "1:1"], wanted.Oversubscription.Select(r => r.ToString()));
        Assert.Equal([FabricShape.LeafSpine, FabricShape.Planes], wanted.Shapes);
        Assert.Equal(["OSFP", "QSFP-DD"], wanted.FormFactors);
        Assert.Equal(["400G", "800G"], wanted.UplinkRates.Select(r => r.ToString()));
        Assert.Equal((40, 12_000.0, 300.0), (wanted.RackUnits ?? 0, wanted.RackPower?.Value ?? 0, wanted.RackWeight?.Kilograms ?? 0));
        Assert.Equal((1_000_000m, 0.1234m), (wanted.Budget?.Units ?? 0, wanted.EnergyPrice.PerKilowattHour));
        Assert.Equal(0.35, wanted.Overhead.Value, 1e-9);
        Assert.Equal(["h/A/01", "h/A/02", "h/A/03", "h/A/04"], wanted.HostRacks.Select(r => r.Name));
        Assert.Equal(["h/S/02", "h/S/01"], wanted.SpineRacks.Select(r => r.Name));
        Assert.Equal(["card-36x400 6", "chassis-4 3", "m-400g-dr4-dd 40"], wanted.Reuse.Select(r => $"{r.Item.Name} {r.Count}"));
    }

    [Theory]
    [InlineData("hosts: { h: { count: 0, rate: 100G } }", "LW0107")]
    [InlineData("hosts: { h: { count: 10 } }", "LW0105")]
    [InlineData("growth: 10 %", "LW0105")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, grwth: 10 %", "LW0104")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, growth: -1 %", "LW0107")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, oversubscription: '3:0'", "LW0107")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, oversubscription: ['3:1', 0:1]", "LW0107")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, form-factors: QSFPDD", "LW1101")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, racks: h/B", "LW1101")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, reuse: older", "LW1101")]
    [InlineData("hosts: { h: { count: 10, rate: 100G } }, shapes: leafspine", "LW0107")]
    [InlineData("hosts: { h: { count: 10, rate: 100G, model: server-9u } }", "LW1101")]
    [InlineData("hosts: { h: { count: 10, rate: 100G, model: server-1u, cards: nic-2x100 x3 } }", "LW1203")]
    [InlineData("hosts: { h: { count: 10, rate: 100G, ports: 4, model: server-1u, cards: nic-2x100 } }", "LW1302")]
    [InlineData("hosts: { h: { count: 10, rate: 800G, cards: nic-2x100 } }", "LW1302")]
    [InlineData("hosts: { h: { count: 4000000, rate: 10G } }, growth: 100 %", "LW1105")]
    [InlineData("hosts: { h: { count: 3000000, rate: 10G, ports: 16 } }", "LW1105")]
    [InlineData("hosts: { h: { count: 4, rate: 10G } }, growth: 1000 %, years: 20", "LW1105")]
    [InlineData("hosts: { h: { count: 1e9, rate: 10G } }", "LW0107")]
    [InlineData("hosts: { h: { count: 10, rate: 1e300G } }", "LW0107")]
    [InlineData("hosts: [1, 2]", "LW0106")]
    public void WrongSection_IsAFinding(string section, string code) => Expect.Codes(Hall + "wanted: { " + section + " }", code);

    [Fact]
    public void NearMiss_IsOffered()
    {
        var judged = Expect.Codes(Hall + "wanted: { hosts: { h: { count: 10, rate: 100G } }, oversubscripton: '3:1' }", "LW0104");
        Assert.Contains(judged.Findings, f => f.Message.Contains("did you mean 'oversubscription'", StringComparison.Ordinal));
    }

    [Fact]
    public void Question_LiesOverTheSectionKeyByKey()
    {
        var wanted = Over("wanted: { hosts: { a: { count: 10, rate: 400G, per-rack: 2 } }, growth: 5 %, survive: 1 }",
            "wanted: { hosts: { host: { count: 12 } }, growth: 7 % }");
        Assert.Equal("a 12 400G 2", $"{wanted.Hosts[0].Name} {wanted.Hosts[0].Count} {wanted.Hosts[0].Rate} {wanted.Hosts[0].PerRack}");
        Assert.Equal((0.07, 1), (Math.Round(wanted.Growth.Value, 9), wanted.Survive));
    }

    [Fact]
    public void Question_FindsItsSectionInAnIncludedFile()
    {
        var wanted = Over("include: more.yaml\n# file: more.yaml\nlanewright: 1\nwanted: { hosts: { a: { count: 10, rate: 400G } } }",
            "wanted: { hosts: { host: { rate: 100G } } }");
        Assert.Equal("10 100G", $"{wanted.Hosts[0].Count} {wanted.Hosts[0].Rate}");
    }

    [Fact]
    public void OneNumberForSeveralKinds_IsRefused()
    {
        var sized = Compilation.Size(
            PlanBlock.Files(Hall + "wanted: { hosts: { a: { count: 1, rate: 10G }, b: { count: 1, rate: 10G } } }"), "plan.yaml",
            new SourceText("question", "lanewright: 1\nwanted: { hosts: { host: { count: 3 } } }"));
        Assert.Equal(["LW0107"], sized.Findings.Select(f => f.Kind.Code));
        Assert.Null(sized.Study);
    }

    [Fact]
    public void PlanWithoutTheSection_TakesTheQuestionAsItsOwn() =>
        Assert.Equal(3, Over("title: none", "wanted: { hosts: { host: { count: 3, rate: 100G } } }").Hosts[0].Count);

    private static WantedFabric Wanted(string plan)
    {
        // Wishes that are read here are not always to be had.
        var judged = PlanBlock.Compile(plan);
        Assert.DoesNotContain(judged.Findings, f => f.Severity != Severity.Advice && f.Kind.Code != "LW3113");
        return judged.Plan?.Wanted ?? throw new InvalidOperationException("nothing is wanted");
    }

    private static WantedFabric Over(string plan, string question)
    {
        var sized = Compilation.Size(
            PlanBlock.Files("lanewright: 1\n" + plan), "plan.yaml", new SourceText("question", "lanewright: 1\n" + question));
        Assert.Empty(sized.Findings);
        return sized.Plan?.Wanted ?? throw new InvalidOperationException("nothing is wanted");
    }
}
