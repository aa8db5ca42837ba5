namespace Lanewright.Tests.Links;

/// <summary>Who negotiates, who trains, and what codes ports agree on. Source unless a line says otherwise: clause 73 of IEEE 802.3
/// (memory), and reports of operators that fixed codes under negotiation behave differently on each platform (seen).</summary>
public sealed class StartupTests
{
    [Theory]
    [InlineData("", "", null)]
    [InlineData(", autonegotiation: yes", ", autonegotiation: yes", null)]
    [InlineData(", autonegotiation: no", ", autonegotiation: no", null)] // 25G copper can link without
    [InlineData(", autonegotiation: yes", ", autonegotiation: no", "LW2503")]
    [InlineData(", autonegotiation: yes, fec: BASE-R", ", autonegotiation: yes, fec: BASE-R", "LW2505")]
    [InlineData(", autonegotiation: yes, fec: BASE-R", "", "LW2505")]
    [InlineData(", autonegotiation: no, fec: BASE-R", ", autonegotiation: no, fec: BASE-R", null)]
    [InlineData(", fec: BASE-R", ", fec: BASE-R", null)] // what is left open is then switched off
    public void TwentyFiveGigCopper_NegotiatesAtBothEndsOrNeither(string from, string to, string? code) =>
        AssertCode(code, Plan("fixed-48x25-8x100", "server-1u, cards: nic-2x25", "25G", "dac-25", from, to));

    [Theory]
    [InlineData("", "", null)]
    [InlineData(", autonegotiation: no", ", autonegotiation: no", "LW2504")] // four levels have to train
    [InlineData(", fec: \"RS(544,514)\"", ", fec: \"RS(544,514)\"", "LW2505")]
    public void FourLevelCopper_Trains(string from, string to, string? code) =>
        AssertCode(code, Plan("fixed-32x400", "fixed-32x400", "400G", "dac-400-dd", from, to));

    [Theory]
    [InlineData("aoc-400-dd", "", null)]
    [InlineData("aoc-400-dd", ", autonegotiation: yes", "LW2503")]
    [InlineData("aec-400-dd", ", autonegotiation: yes", "LW2503")] // an active cable shows the port an electrical interface
    [InlineData("aec-400-dd", ", fec: \"RS(544,514)\"", null)]
    public void ActiveCables_DoNotNegotiate(string cable, string end, string? code) =>
        AssertCode(code, Plan("fixed-32x400", "fixed-32x400", "400G", cable, end, end));

    [Fact]
    public void ModulesDoNotNegotiate() => AssertCode("LW2503", """
        lanewright: 1
        devices:
          a: { model: fixed-32x400 }
          b: { model: fixed-32x400 }
        links:
          up: { from: { of: a, autonegotiation: yes }, to: { of: b, autonegotiation: yes }, rate: 400G, type: 400GBASE-DR4, length: 50 m }
        """);

    // Source: an operator's guide to port codes: optics of 25G run deployed with BASE-R or none as well; one generation of silicon has
    // only BASE-R, one appliance only RS, and those two never link (seen).
    [Theory]
    [InlineData("none, BASE-R", "none, BASE-R", "LW2207")]
    [InlineData("none", "none", "LW2207")]
    [InlineData("none, BASE-R, \"RS(528,514)\"", "none, BASE-R, \"RS(528,514)\"", null)]
    [InlineData("BASE-R", "\"RS(528,514)\"", "LW2208")]
    [InlineData("none, BASE-R", "\"RS(528,514)\"", "LW2208")]
    public void TwentyFiveGigOptics_RunWhatBothSiliconsHave(string from, string to, string? code) => AssertCode(code, $$"""
        lanewright: 1
        catalogue: [own.yaml]
        devices:
          a: { model: one }
          b: { model: other }
        links:
          up: { from: a, to: b, rate: 25G, type: 25GBASE-SR, length: 50 m }
        # file: own.yaml
        devices:
          one: { kind: switch, title: one, cages: [{ count: 8, form-factor: SFP28, lane-rates: [25G], modes: [1x25G], fec: [{{from}}] }] }
          other: { kind: switch, title: other, cages: [{ count: 8, form-factor: SFP28, lane-rates: [25G], modes: [1x25G], fec: [{{to}}] }] }
        """);

    private static string Plan(string from, string to, string rate, string cable, string fromEnd, string toEnd) => $$"""
        lanewright: 1
        devices:
          a: { model: {{from}} }
          b: { model: {{to}} }
        links:
          up: { from: { of: a{{fromEnd}} }, to: { of: b{{toEnd}} }, rate: {{rate}}, assembly: {{cable}}, length: 2 m }
        """;

    private static void AssertCode(string? code, string plan)
    {
        var judged = PlanBlock.Compile(plan);
        string[] watched = ["LW2207", "LW2208", "LW2503", "LW2504", "LW2505"];
        var spoken = judged.Findings.Select(f => f.Kind.Code).Where(watched.Contains).Distinct().ToArray();
        Assert.True(spoken.SequenceEqual(code is null ? [] : [code]), Expect.Text(judged));
    }
}
