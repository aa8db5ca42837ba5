using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>When findings about networks keep silent, and when they speak. That they speak at all, their pages show.</summary>
public sealed class NetworkRuleTests
{
    [Theory]
    [InlineData("", "LW3102", true)]
    [InlineData("  all: { kind: all-to-all, among: host, rate: 100G }\n", "LW3102", false)]
    [InlineData("  all: { kind: permutation, among: host, rate: 200G }\n", "LW3102", true)]
    public void ParallelPair_IsToldOfWhereItMatters(string demands, string code, bool isRaised)
    {
        // D = 2 and S = 2 with two links each: doubled, a link holds half of D at full rate.
        var hosts = demands.Contains("200G", StringComparison.Ordinal) ? 10 : 4;
        var judged = PlanBlock.Compile(LoadPlans.LeafSpine(4, 2, hosts, demands, parallel: 2));
        Assert.Equal(isRaised, judged.Findings.Any(f => f.Kind.Code == code));
    }

    [Fact]
    public void OneCause_IsToldOnceWhereDemandsRunTogether()
    {
        const string Demands = """
              big: { kind: permutation, among: host, rate: 180G }
              small: { from: host-1, to: host-2, rate: 1G, with: big }

            """;
        var judged = PlanBlock.Compile(LoadPlans.LeafSpine(4, 4, 8, Demands));
        var found = Assert.Single(judged.Findings, f => f.Kind.Code == "LW3108");
        Assert.Contains("'big'", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SizedByCounting_SixSpinesForSixteenUplinksAreUneven()
    {
        // S21: 1,000 hosts at 3:1 need six spines by counting and eight when sixteen uplinks must spread equally.
        string Plan(int spines) => $"""
            lanewright: 1
            devices:
              host: {"{"} model: server-2u, cards: nic-2x200, count: 4 {"}"}
              leaf: {"{"} model: fixed-64x400, count: 2 {"}"}
              spine: {"{"} model: fixed-64x400, count: {spines} {"}"}
            links:
              edge: {"{"} from: host, to: {"{"} of: leaf, breakout: 2x200G {"}"}, pattern: each-to-each, rate: 200G, length: 2 m {"}"}
              up: {"{"} from: leaf, to: spine, pattern: striped, count: 16, rate: 400G, length: 30 m {"}"}
            """;
        Assert.Contains(PlanBlock.Compile(Plan(6)).Findings, f => f.Kind.Code == "LW3101" && f.Count == 2);
        Assert.DoesNotContain(PlanBlock.Compile(Plan(8)).Findings, f => f.Kind.Code == "LW3101");
    }

    [Fact]
    public void Pods_AreComparedEachByItself() =>
        Assert.DoesNotContain(PlanBlock.Compile(LoadPlans.FatTree(4, "")).Findings, f => f.Kind.Code is "LW3101" or "LW3103" or "LW3104");

    [Fact]
    public void SiliconWithoutPorts_LeavesCagesDark()
    {
        // S31 in small: cages for twice the ports that the silicon has.
        const string Plan = """
            lanewright: 1
            catalogue: [own.yaml]
            devices:
              leaf: { model: few-ports }
              host: { model: server-1u, cards: nic-2x100, count: 4 }
            links:
              edge: { from: host, to: { of: leaf, breakout: 4x100G }, pattern: each-to-each, count: 2, rate: 100G, length: 2 m }
            # file: own.yaml
            devices:
              few-ports:
                kind: switch
                title: Four cages and eight ports
                port-ceiling: 8
                cages: [{ count: 4, form-factor: QSFP-DD, lanes: 8, lane-rates: [25G, 50G], modes: [1x400G, 4x100G], power: 14 W }]
            """;
        var judged = PlanBlock.Compile(Plan);
        var found = Assert.Single(judged.Findings, f => f.Kind.Code == "LW3105");
        Assert.Equal(2, found.Count);
        Assert.Contains("2 cages of leaf stay dark", found.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void PlanWithErrors_IsNotJudgedAsANetwork()
    {
        var broken = LoadPlans.LeafSpine(4, 2, 4, "  all: { kind: all-to-all, among: host }\n", parallel: 2)
            .Replace("edge-4: { from", "edge-4: { form", StringComparison.Ordinal);
        var judged = PlanBlock.Compile(broken);
        Assert.Contains(judged.Findings, f => f.Kind.Code == "LW0104");
        Assert.DoesNotContain(judged.Findings, f => f.Kind.Code.StartsWith("LW31", StringComparison.Ordinal));
    }
}
