namespace Lanewright.Tests.Binding;

/// <summary>What can be wrong with the traffic a plan states; each is told at its place, and nothing falls.</summary>
public sealed class DemandFaultTests
{
    private const string Plan = """
        lanewright: 1
        devices:
          leaf: { model: fixed-32x400, count: 2 }
          host: { model: server-2u, cards: nic-2x200, count: 4 }
        links:
          edge: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m }
          other: { from: leaf-1, to: leaf-2, rate: 400G, length: 2 m, network: side }
        demands:
          d: 
        """;

    [Theory]
    [InlineData("{ from: host-1..2, to: host-3..4, rate: 10G }")]
    [InlineData("{ kind: all-to-all, among: [host, host-1] }")]
    [InlineData("{ kind: permutation, among: host, flows: 1024, network: main }")]
    [InlineData("{ kind: incast, from: host, to: host-4, rate: 1M }")]
    [InlineData("{ kind: hose, among: host, rate: 400G }")]
    public void SoundDemands_AreClean(string demand) => Expect.Clean(Plan + demand);

    [Theory]
    [InlineData("{ from: host }", "LW0105")]
    [InlineData("{ kind: hose, rate: 10G }", "LW0105")]
    [InlineData("{ kind: incast, to: host }", "LW0105")]
    [InlineData("{ from: host, to: host, among: host }", "LW1601")]
    [InlineData("{ kind: all-to-all, among: host, to: host }", "LW1601")]
    [InlineData("{ kind: incast, from: host, to: host }", "LW1601")]
    [InlineData("{ from: leaf, to: host }", "LW1601")]
    [InlineData("{ kind: permutation, among: host-1 }", "LW1601")]
    [InlineData("{ from: host, to: host, with: d }", "LW1601")]
    [InlineData("{ from: host, to: hosts }", "LW1101")]
    [InlineData("{ from: host, to: host, network: sied }", "LW1101")]
    [InlineData("{ from: host, to: host, with: e }", "LW1101")]
    [InlineData("{ from: host, to: host, kind: al-to-all }", "LW0107")]
    [InlineData("{ from: host, to: host, rate: 0G }", "LW0107")]
    [InlineData("{ from: host, to: host, rate: 1e300T }", "LW0107")]
    [InlineData("{ from: host, to: host, flows: 0 }", "LW0107")]
    [InlineData("{ from: host, to: host, flows: 99999999999 }", "LW0107")]
    [InlineData("{ from: host, to: host, rates: 1G }", "LW0104")]
    [InlineData("[]", "LW0106")]
    public void Faults_AreToldOnce(string demand, string code) => Expect.Codes(Plan + demand, code);

    [Fact]
    public void NetworkWithoutHosts_HasNoPath() => Expect.Codes(Plan + "{ from: host-1, to: host-2, rate: 1G, network: side }", "LW3107");

    [Fact]
    public void RatesBeyondThePorts_AreOverloadsAndNoCrash() =>
        Expect.Codes(Plan + "{ from: host-1, to: host-2, rate: 900000T }", "LW3106");

    [Fact]
    public void ManyDemands_AreRefusedBeforeTheyAreStudied()
    {
        var many = string.Concat(Enumerable.Range(1, 80).Select(i => $"\n  e{i}: {{ from: host-1, to: host-2, rate: 1G }}"));
        var judged = PlanBlock.Compile(Plan + "{ from: host-1, to: host-2, rate: 1G }" + many);
        Assert.Single(judged.Findings, f => f.Kind.Code == "LW1105");
        Assert.Equal(64, judged.Plan!.Demands.Length);
    }

    [Theory]
    [InlineData("failure-rates: [{ of: switch, per-year: 0.02, repair: 8 h }, { of: link, per-year: 1e-3, repair: 30 min }]", "")]
    [InlineData("failure-rates: [{ of: switch, per-year: 1, repair: 8 h }, { of: switch, per-year: 2, repair: 8 h }]", "LW0102")]
    [InlineData("failure-rates: { of: switch, per-year: -1, repair: 8 h }", "LW0107")]
    [InlineData("failure-rates: { of: switch, per-year: 1, repair: 8 }", "LW0107")]
    [InlineData("failure-rates: { of: swich, per-year: 1, repair: 8 h }", "LW0107")]
    [InlineData("failure-rates: { of: switch, per-year: 1 }", "LW0105")]
    [InlineData("most-utilisation: 180 %", "LW0107")]
    [InlineData("split: equal", "LW0107")]
    public void PolicyOfTraffic_IsChecked(string policy, string code) => Expect.Codes(
        Plan.Replace("devices:", "policy: { " + policy + " }\ndevices:", StringComparison.Ordinal)
            + "{ from: host-1, to: host-2, rate: 1G }",
        code.Length == 0 ? [] : [code]);
}
