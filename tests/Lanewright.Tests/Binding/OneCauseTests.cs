using Lanewright.Findings;

namespace Lanewright.Tests.Binding;

/// <summary>A misspelt word is one finding: what hangs on it is not judged.</summary>
public sealed class OneCauseTests
{
    private const string Sound = """
        lanewright: 1
        catalogue: own.yaml
        sites: { s: { halls: { h: { rows: { A: { racks: 4 }, B: { racks: 2, y: 5 m } } }, g: { rows: { C: { racks: 2 } } } } } }
        routes: [ { from: h, to: g, length: 40 m } ]
        devices:
          leaf: { model: fixed-32x100, racks: h/A, unit: 40 }
          host: { model: server-1u, cards: nic-2x100, racks: h/A, per-rack: 4, unit: 2 }
          far: { model: fixed-32x100, racks: g/C, unit: 40 }
          other: { model: fixed-32x100, racks: h/B, unit: 40 }
        links:
          edge: { from: host, to: leaf, pattern: same-rack, rate: 100G, medium: [DAC, AOC] }
          mesh: { from: leaf, to: other, pattern: each-to-each, rate: 100G }
          away: { from: leaf-1..2, to: far, rate: 100G, type: 100GBASE-DR }
          lamp: { from: { of: leaf-3, module: m-own }, to: { of: leaf-4, module: m-own }, rate: 100G, length: 9 m }
        # file: own.yaml
        modules:
          m-own: { title: own, form-factor: QSFP28, applications: CAUI-4>100GBASE-SR4, power: 2 W, price: 10 }
        """;

    [Fact]
    public void SoundPlan_IsClean() => Expect.Clean(Sound);

    [Theory]
    [InlineData("cards: nic-2x100", "cards: nic-2x10O", "LW1101")]
    [InlineData("cards: nic-2x100", "crds: nic-2x100", "LW0104")]
    [InlineData("cards: nic-2x100", "cards: [nic-2x100 xx]", "LW0107")]
    [InlineData("A: { racks: 4 }", "A: { raks: 4 }", "LW0104")]
    [InlineData("A: { racks: 4 }", "A: { racks: four }", "LW0107")]
    [InlineData("A: { racks: 4 }", "A: { }", "LW0105")]
    [InlineData("g: { rows:", "g: { rws:", "LW0104")]
    [InlineData("s: { halls:", "s: { hals:", "LW0104")]
    [InlineData("routes: [ { from: h,", "routes: [ { from: hh,", "LW1101")]
    [InlineData("length: 40 m } ]", "lenght: 40 m } ]", "LW0104")]
    [InlineData("racks: h/A, per-rack: 4, unit: 2", "racks: h/A, per-rak: 4, unit: 2", "LW0104")]
    [InlineData("racks: h/A, per-rack: 4, unit: 2", "racks: h/A, per-rack: 4, unit: two", "LW0107")]
    [InlineData("racks: g/C, unit: 40", "racks: g/D, unit: 40", "LW1101")]
    [InlineData("model: server-1u", "model: server-1v", "LW1101")]
    [InlineData("model: server-1u", "modl: server-1u", "LW0104")]
    [InlineData("from: host,", "from: hosts,", "LW1101")]
    [InlineData("from: host,", "form: host,", "LW0104")]
    [InlineData("medium: [DAC, AOC]", "medium: [DAK]", "LW0107")]
    [InlineData("type: 100GBASE-DR", "type: 100GBASE-DQ", "LW1101")]
    [InlineData("type: 100GBASE-DR", "typ: 400GBASE-DR4", "LW0104")]
    [InlineData("of: leaf-3, module: m-own", "of: leaf-3, module: m-ownn", "LW1101")]
    [InlineData("power: 2 W", "power: 2 V", "LW0107")]
    [InlineData("form-factor: QSFP28", "form-factor: QSFP29", "LW1101")]
    [InlineData("form-factor: QSFP28", "frm-factor: QSFP28", "LW0104")]
    public void MisspeltWord_IsOneFinding(string right, string wrong, string code)
    {
        Assert.Contains(right, Sound, StringComparison.Ordinal);
        var judged = Expect.Codes(Sound.Replace(right, wrong, StringComparison.Ordinal), code);
        Assert.Equal(1, judged.Findings.Count(f => f.Severity != Severity.Advice));
    }

    [Fact]
    public void FaultOfOneGroup_LeavesTheOthersJudged()
    {
        var plan = Sound.Replace("cards: nic-2x100", "cards: nic-2x10O", StringComparison.Ordinal)
            .Replace("type: 100GBASE-DR }", "type: 100GBASE-DR, length: 900 m }", StringComparison.Ordinal);
        Expect.Codes(plan, "LW1101", "LW2403");
    }
}
