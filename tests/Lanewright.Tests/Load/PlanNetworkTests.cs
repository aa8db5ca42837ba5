using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Which links of a plan make up a network, and what can fail in it.</summary>
public sealed class PlanNetworkTests
{
    [Fact]
    public void ManagementOfTheDemo_CarriesNoDemand()
    {
        var plan = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml").Plan!;
        var main = PlanNetwork.All(plan)[0];
        var byStatement = Enumerable.Range(0, plan.Links.Count).GroupBy(l => plan.Statements[plan.Links.Statement(l)].Name).ToList();
        Assert.All(byStatement, set => Assert.Single(set.Select(main.Contains).Distinct()));
        var left = byStatement.Where(s => !main.Contains(s.First())).Select(s => s.Key).Order(StringComparer.Ordinal);
        Assert.Equal(["keep-dome", "keep-dome-up", "keep-hosts", "keep-switches", "keep-up"], left);
    }

    [Fact]
    public void NamedNetworks_NeverCarryOneAnothersTraffic()
    {
        const string Two = """
            lanewright: 1
            devices:
              host: { model: server-2u, cards: nic-2x200, count: 4 }
              data: { model: fixed-32x400 }
              store: { model: fixed-32x400 }
            links:
              one: { from: host, to: { of: data, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m }
              two: { from: host, to: { of: store, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m, network: storage }
            demands:
              main: { kind: permutation, among: host }
              side: { kind: permutation, among: host, network: storage }
            """;
        var load = Expect.Designed(PlanBlock.Compile(Two)).Load;
        Assert.Equal(["", "storage"], load.Networks.Select(n => n.Name));
        foreach (var study in load.Demands)
        {
            Assert.Equal(4, study.Fabric.Map.Graph.Links.Sum(l => l.Count));
            Assert.Equal(200, study.Fabric.Map.LineRate(study.Demand.Senders[0]).Gigabits);
            Assert.Equal(1, study.MaxUtilisation.Value, 1e-9);
        }
    }

    [Fact]
    public void Tiers_AreCountedFromTheHosts()
    {
        var plan = PlanBlock.Compile(LoadPlans.FatTree(4, "")).Plan!;
        var network = PlanNetwork.All(plan)[0];
        int[] Tiers(string stem) => [.. plan.Devices.Groups.Where(g => g.Name.StartsWith(stem, StringComparison.Ordinal))
            .SelectMany(g => Enumerable.Range(g.First, g.Count)).Select(network.Tier).Distinct()];
        Assert.Equal([0], Tiers("host"));
        Assert.Equal([1], Tiers("edge"));
        Assert.Equal([2], Tiers("agg"));
        Assert.Equal([3], Tiers("core"));
    }

    [Fact]
    public void EverythingThatFailsAsAWhole_IsAUnit()
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("tests", "plans", "loads")), "plan.yaml");
        var study = Expect.Designed(judged).Load.Demands.Single(d => d.Demand.Name == "across");
        var units = study.Fabric.Failures.GroupBy(u => u.Kind).ToDictionary(g => g.Key, g => g.ToList());
        // 16 links of west, 16 of east, 8 of stores, 16 uplinks.
        Assert.Equal(32 + 8 + 16, units[FailureKind.Link].Count);
        Assert.Equal(8, units[FailureKind.Switch].Count);
        // Two hosts share each split cage.
        Assert.Equal(16, units[FailureKind.Cable].Count);
        Assert.Equal(10, units[FailureKind.Rack].Count);
        // Only what has no other feed falls with A; nothing falls with B.
        Assert.Equal(["A", "B"], units[FailureKind.Feed].Select(f => f.Name));
        Assert.Empty(units[FailureKind.Feed][1].Outage.Nodes);
        var feed = units[FailureKind.Feed][0];
        Assert.Equal(["store-1", "store-2", "store-3", "store-4"], feed.Outage.Nodes.SelectMany(n => study.Fabric.Map.Devices(n))
            .Select(study.Fabric.Map.Plan.Devices.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Oversubscription_IsBelowOverAbove()
    {
        var plan = PlanBlock.Compile(LoadPlans.LeafSpine(4, 2, 12, "")).Plan!;
        var tier = Assert.Single(TierOversubscription.Of(PlanNetwork.All(plan)[0]));
        Assert.Equal((1, 4, 2400.0, 800.0), (tier.Tier, tier.Switches, tier.Below.Gigabits, tier.Above.Gigabits));
        Assert.Equal(3, tier.Ratio, 1e-12);
    }

    [Fact]
    public void Latency_IsSwitchesCodesAndWay()
    {
        var study = LoadPlans.Study(LoadPlans.LeafSpine(4, 4, 4, "  all: { kind: all-to-all, among: host }\n"));
        var latency = study.Fabric.Latency;
        Assert.NotNull(latency);
        var switching = study.Fabric.Map.Plan.Standards.Practice("switch", "delay").Value;
        Assert.Equal((2, 1, switching), (latency.Shortest.Links, latency.Shortest.Switches, latency.Shortest.Switching.Nanoseconds));
        Assert.Equal((4, 3, 3 * switching), (latency.Longest.Links, latency.Longest.Switches, latency.Longest.Switching.Nanoseconds));
        // Two host cables of 2 m and two of 30 m, all of which the design has judged by themselves.
        var design = Expect.Designed(PlanBlock.Compile(LoadPlans.LeafSpine(4, 4, 4, ""))).Design;
        double Of(string set) => design.Choices.First(c => c.Class.Statement.Name == set).Chosen!.Latency.Value.Nanoseconds;
        Assert.Equal((2 * Of("edge-1")) + (2 * Of("up")) + (3 * switching), latency.Longest.Total.Nanoseconds, 1e-6);
        Assert.Equal((2 * Of("edge-1")) + switching, latency.Shortest.Total.Nanoseconds, 1e-6);
    }
}
