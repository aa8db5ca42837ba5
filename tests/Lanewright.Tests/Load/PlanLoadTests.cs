using Lanewright.Engineering.Load;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>Loads of whole plans against closed forms. D is what the hosts of a leaf send, in uplinks; S are spines, L leaves, N hosts, h
/// hosts
/// of a leaf. The forms are derived; the numbers in brackets are those of the fabric cases under tests/cases.</summary>
public sealed class PlanLoadTests
{
    private const double Exact = 1e-9;

    [Theory]
    [InlineData(4, 4, 8)]
    [InlineData(4, 2, 12)]
    [InlineData(6, 3, 4)]
    public void Permutation_FillsUplinksToDOverS_AndLosingOneToDOverSLessOne(int leaves, int spines, int hosts)
    {
        var study = LoadPlans.Study(LoadPlans.LeafSpine(leaves, spines, hosts, "  shift: { kind: permutation, among: host }\n"));
        var d = hosts * 200 / 400.0;
        Assert.Equal(d / spines, study.MaxUtilisation.Value, Exact);
        Assert.Equal(d / (spines - 1), LoadPlans.WorstAfter(study, FailureKind.Link), Exact);
        var spine = study.Sweep!.Classes.Single(c => Names(study, c).StartsWith("spine", StringComparison.Ordinal));
        Assert.Equal(d / (spines - 1), spine.MaxUtilisation.Value, Exact);
    }

    [Theory]
    [InlineData(4, 4, 8, 1)]
    [InlineData(4, 4, 24, 3)]
    public void Hose_IsDOverS(int leaves, int spines, int hosts, double expected)
    {
        // R23 and R24: the worst matrix sends all of a leaf elsewhere.
        var study = LoadPlans.Study(LoadPlans.LeafSpine(leaves, spines, hosts, "  any: { kind: hose, among: host }\n"));
        Assert.Equal(expected, study.MaxUtilisation.Value, Exact);
        Assert.Equal(expected > 1, study.IsOverloaded);
        Assert.Equal((hosts * 200 / 400.0) * 400, study.WorstCase!.Worst!.Matrix.Sum(f => f.Rate.Gigabits), Exact);
    }

    [Fact]
    public void Tray_TakesDownWhatLiesInIt()
    {
        var study = LoadPlans.Study("""
            lanewright: 1
            sites: { main: { halls: { hall: {
              rows: { A: { racks: 2 }, B: { racks: 1, y: 4 m }, C: { racks: 1, y: 8 m } },
              pathways: {
                leaves: { from: { x: 0 m, y: 0 m }, to: { x: 2 m, y: 0 m }, width: 300 mm },
                one: { from: { x: 0 m, y: 0 m }, to: { x: 0 m, y: 4 m }, width: 300 mm },
                other: { from: { x: 2 m, y: 0 m }, to: { x: 2 m, y: 8 m }, width: 300 mm } } } } } }
            devices:
              host: { model: server-2u, cards: nic-2x200, count: 8 }
              leaf: { model: fixed-32x400, racks: hall/A, unit: 40 }
              spine-b: { model: fixed-32x400, racks: hall/B/1, unit: 40 }
              spine-c: { model: fixed-32x400, racks: hall/C/1, unit: 40 }
            links:
              edge: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: in-runs, from-run: 4, rate: 200G, length: 2 m }
              up: { from: leaf, to: [spine-b, spine-c], pattern: each-to-each, rate: 400G }
            demands:
              shift: { kind: permutation, among: host }
            """);
        double After(FailureKind kind, string name)
        {
            var found = study.Sweep!.Classes.SelectMany(c => c.Units, (c, u) => (Class: c, Unit: study.Fabric.Failures[u])).ToList();
            var one = found.Where(f => f.Unit.Kind == kind && f.Unit.Name == name).ToList();
            Assert.True(one.Count == 1, string.Join(", ", found.Select(f => f.Unit.Name)));
            return study.After(one[0].Class).Value;
        }

        // All cables to the second spine lie in one tray: losing it is losing that spine.
        Assert.Equal(After(FailureKind.Switch, "spine-c"), After(FailureKind.Tray, "hall/other"), Exact);
        Assert.Equal(2 * study.MaxUtilisation.Value, After(FailureKind.Tray, "hall/other"), Exact);
        // The tray over the leaves holds every uplink: half of the hosts are cut off from the others.
        var all = study.Sweep!.Classes.Single(c => c.Units.Any(u => study.Fabric.Failures[u].Name == "hall/leaves"));
        Assert.Equal(4, all.MembersCut);
    }

    /// <summary>Four leaves and two spines in two halls, patched through two trunks of six duplex ports: the first trunk takes the
    /// first six links, so that losing it is losing three leaves' uplinks, and losing the panel, its rack or the way
    /// is losing all.</summary>
    [Fact]
    public void TrunksPanelsAndRoutes_TakeDownWhatIsPatchedThroughThem()
    {
        var study = LoadPlans.Study("""
            lanewright: 1
            sites: { main: { halls: { low: { rows: { A: { racks: 3 } } }, high: { rows: { B: { racks: 2 } } } } } }
            routes: [ { from: low, to: high, length: 100 m } ]
            devices:
              host: { model: server-2u, cards: nic-2x200, racks: low/A/1..2, per-rack: 4, unit: 2 }
              leaf: { model: fixed-32x400, racks: low/A/1..2, per-rack: 2, unit: 40 }
              spine: { model: fixed-32x400, racks: high/B/1, per-rack: 2, unit: 40 }
              near: { model: panel-1u-12, racks: low/A/3, unit: 46 }
              far: { model: panel-1u-12, racks: high/B/2, unit: 46 }
            trunks:
              riser: { from: near, to: far, cable: trunk-os2-12, count: 2, cassette: cassette-lc-sm }
            links:
              edge: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: in-runs, from-run: 2, rate: 200G, length: 2 m }
              up: { from: leaf, to: spine, pattern: each-to-each, rate: 400G, type: 400GBASE-FR4, through: riser }
            demands:
              shift: { kind: permutation, among: host }
            """);
        FailureClass After(FailureKind kind, string name) => study.Sweep!.Classes.Single(c =>
            c.Kind == kind && c.Units.Any(u => study.Fabric.Failures[u].Name == name));
        int Links(FailureKind kind, string name) => study.Fabric.Failures.Single(u => u.Kind == kind && u.Name == name)
            .Outage.Links.Sum(l => l.Count);
        Assert.Equal((6, 2), (Links(FailureKind.Trunk, "riser-1"), Links(FailureKind.Trunk, "riser-2")));
        Assert.Equal((8, 8), (Links(FailureKind.Panel, "near"), Links(FailureKind.Panel, "far")));
        Assert.Equal(8, Links(FailureKind.Route, "low to high"));
        Assert.Equal(8, Links(FailureKind.Rack, "low/A/03"));
        // Two hosts at each leaf: one leaf is the largest island that is left.
        Assert.Equal(6, After(FailureKind.Trunk, "riser-1").MembersCut);
        Assert.Equal(2, After(FailureKind.Trunk, "riser-2").MembersCut);
        Assert.Equal(6, After(FailureKind.Panel, "far").MembersCut);
        Assert.Equal(study.Traffic!.TotalGigabits, After(FailureKind.Route, "low to high").LostGigabits, Exact);
    }

    /// <summary>A host sends 300G over two ports of 200G, into 1600G and into 400G of uplinks. Between switches alone 240 and 60 would be
    /// best, which its port does not carry: 200 and 100 is, a quarter of the narrow uplink. With a port lost the other carries all it
    /// can.</summary>
    [Fact]
    public void IdealSplit_KeepsToThePortsOfHosts()
    {
        var study = LoadPlans.Study("""
            lanewright: 1
            policy: { split: ideal }
            devices:
              host: { model: server-2u, cards: nic-2x200 }
              sink: { model: server-2u, cards: nic-2x200, count: 2 }
              wide: { model: fixed-32x400 }
              narrow: { model: fixed-32x400 }
              far: { model: fixed-32x400 }
            links:
              a: { from: host, to: { of: wide, breakout: 2x200G }, rate: 200G, length: 2 m }
              b: { from: host, to: { of: narrow, breakout: 2x200G }, rate: 200G, length: 2 m }
              c: { from: wide, to: far, count: 4, rate: 400G, length: 20 m }
              d: { from: narrow, to: far, rate: 400G, length: 20 m }
              e: { from: sink, to: { of: far, breakout: 2x200G }, rate: 200G, length: 2 m, pattern: each-to-each }
            demands:
              one: { from: host, to: sink, rate: 300G }
            """);
        Assert.Equal(0.25, study.MaxUtilisation.Value, 1e-6);
        Assert.Equal(1, study.MaxAccessUtilisation.Value, 1e-6);
        var port = study.Sweep!.Classes.Single(c => c.Kind == FailureKind.Link
            && study.Fabric.Failures[c.Units[0]].Name.StartsWith("host", StringComparison.Ordinal)
            && study.Fabric.Failures[c.Units[0]].Name.Contains("wide", StringComparison.Ordinal));
        Assert.Equal(200 / 400.0, study.After(port).Value, 1e-6);
    }

    [Fact]
    public void AllToAll_LeavesOutWhatStaysBelowTheLeaf()
    {
        // The closed form of equal spreading, times the share of other hosts that sit elsewhere.
        var study = LoadPlans.Study(LoadPlans.LeafSpine(4, 4, 8, "  all: { kind: all-to-all, among: host }\n"));
        Assert.Equal((32 - 8) / 31.0, study.MaxUtilisation.Value, Exact);
        Assert.Equal(1, study.MaxAccessUtilisation.Value, Exact);
    }

    [Fact]
    public void ParallelPair_DoublesOnOneBreak()
    {
        // R16: four leaves, two spines, two parallel cables, D = 2; intact one half, and the last cable of the pair carries 1. Times the
        // share of traffic that leaves the leaf, 12 of 15.
        const string All = "  all: { kind: all-to-all, among: host }\n";
        var study = LoadPlans.Study(LoadPlans.LeafSpine(4, 2, 4, All, parallel: 2));
        Assert.Equal(0.5 * 12 / 15, study.MaxUtilisation.Value, Exact);
        Assert.Equal(1.0 * 12 / 15, LoadPlans.WorstAfter(study, FailureKind.Link), Exact);
        // Weighed by paths the pair gets what it can carry: three cables share what four did.
        var weighed = LoadPlans.Study(LoadPlans.LeafSpine(4, 2, 4, All, parallel: 2, policy: "policy: { split: path-weighted }"));
        Assert.Equal(2 / 3.0 * 12 / 15, LoadPlans.WorstAfter(weighed, FailureKind.Link), Exact);
    }

    [Theory]
    [InlineData("per-hop", 2)]
    [InlineData("path-weighted", 4 / 3.0)]
    public void FatTree_AfterACoreLink_DependsOnTheSplit(string split, double expected)
    {
        // R08 and R09: h/(h-1) per hop, h^2/(h^2-1) by paths, under a shift between pods at full rate, k = 4.
        var shift = $"  shift: {{ kind: permutation, among: {LoadPlans.HostsOfTree(4)} }}\n";
        var plan = LoadPlans.FatTree(4, $"{shift}policy: {{ split: {split} }}\n");
        var study = LoadPlans.Study(plan);
        Assert.Equal(1, study.MaxUtilisation.Value, Exact);
        var core = study.Sweep!.Classes.Single(c =>
            c.Kind == FailureKind.Link && Names(study, c).Contains("core", StringComparison.Ordinal));
        Assert.Equal(expected, core.MaxUtilisation.Value, Exact);
        Assert.Equal(16, core.Size);
    }

    [Fact]
    public void FatTree_HasTwoClassesOfLinksBetweenSwitches()
    {
        // R01: (N-h)/(N-1) and (N-h^2)/(N-1), k = 4.
        var study = LoadPlans.Study(LoadPlans.FatTree(4, $"  all: {{ kind: all-to-all, among: {LoadPlans.HostsOfTree(4)} }}\n"));
        var busiest = study.Busiest(10);
        Assert.Equal(2, busiest.Length);
        Assert.Equal(14 / 15.0, busiest[0].Utilisation.Value, Exact);
        Assert.Equal(4 / 5.0, busiest[1].Utilisation.Value, Exact);
        Assert.Equal([16L, 16L], busiest.Select(b => b.ClassSize));
        Assert.Equal(8 * 400, study.Fabric.Bisection.AtLeast.Gigabits, Exact);
    }

    [Fact]
    public void Incast_OverloadsTheReceiversLink()
    {
        // R33: eight senders of 25 into 100 are asked for 2; here 50 into 200. Bursts of 65536 bytes leave n*b - C*(b/r).
        var study = LoadPlans.Study(LoadPlans.LeafSpine(4, 4, 4, "  in: { kind: incast, from: host-1..8, to: host-16, rate: 50G }\n"));
        Assert.Equal(2, study.MaxUtilisation.Value, Exact);
        Assert.True(study.IsOverloaded);
        Assert.Equal(2, study.Queue!.Overload.Value, Exact);
        Assert.Equal((8 * 65536) - (4 * 65536), study.Queue.QueueBytes, Exact);
    }

    [Fact]
    public void HostsThatLostALink_SendNoMoreThanTheOtherCarries()
    {
        // Eight hosts on two leaves send 400G each; without the first leaf they send 200G each over the four uplinks of the second.
        const string Plan = """
            lanewright: 1
            devices:
              leaf: { model: fixed-32x400, count: 4 }
              spine: { model: fixed-32x400, count: 4 }
              host: { model: server-2u, cards: nic-2x200, count: 16 }
            links:
              west: { from: host-1..8, to: { of: leaf-1..2, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m }
              east: { from: host-9..16, to: { of: leaf-3..4, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m }
              up: { from: leaf, to: spine, pattern: each-to-each, rate: 400G, length: 30 m }
            demands:
              copy: { from: host-1..8, to: host-9..16 }
            """;
        var study = LoadPlans.Study(Plan);
        Assert.Equal(1, study.MaxUtilisation.Value, Exact);
        var leaf = study.Sweep!.Classes.Single(c => c.Kind == FailureKind.Switch && Names(study, c) == "leaf-1");
        Assert.Equal(1, leaf.MaxUtilisation.Value, Exact);
        Assert.Equal(0, leaf.MembersCut);
    }

    [Fact]
    public void DemandsThatRunTogether_AddUp()
    {
        const string Demands = """
              a: { from: host-1..8, to: host-9..16, rate: 50G }
              b: { from: host-1..8, to: host-17..24, rate: 100G, with: a }

            """;
        var judged = PlanBlock.Compile(LoadPlans.LeafSpine(4, 4, 8, Demands));
        var studies = Expect.Designed(judged).Load.Demands;
        Assert.Equal(8 * 50 / 4 / 400.0, studies[0].MaxUtilisation.Value, Exact);
        Assert.Equal(8 * 150 / 4 / 400.0, studies[1].MaxUtilisation.Value, Exact);
    }

    [Fact]
    public void BundlesOfPartsOfGroups_GiveTheSameLoadsAsHostsByThemselves()
    {
        // The same demand with every host in a group of its own has no bundles at all.
        const string Demand = "  part: { kind: all-to-all, among: [host-1, host-2, host-5, host-6, host-7], rate: 90G }\n";
        var bundled = LoadPlans.LeafSpine(3, 2, 3, Demand);
        var groups = string.Concat(Enumerable.Range(1, 9).Select(i =>
            $"  h{i}: {{ model: server-2u, cards: nic-2x200, name: \"host-{i}\" }}\n"));
        var single = bundled
            .Replace("  host: { model: server-2u, cards: nic-2x200, count: 9 }\n", groups, StringComparison.Ordinal)
            .Replace("host-1..3", "[host-1, host-2, host-3]", StringComparison.Ordinal)
            .Replace("host-4..6", "[host-4, host-5, host-6]", StringComparison.Ordinal)
            .Replace("host-7..9", "[host-7, host-8, host-9]", StringComparison.Ordinal);
        var (one, other) = (LoadPlans.Study(bundled), LoadPlans.Study(single));
        Assert.NotEqual(one.Fabric.Map.Graph.Nodes.Length, other.Fabric.Map.Graph.Nodes.Length);
        Assert.Equal(one.MaxUtilisation.Value, other.MaxUtilisation.Value, Exact);
        Assert.Equal(one.MaxAccessUtilisation.Value, other.MaxAccessUtilisation.Value, Exact);
        foreach (var kind in new[] { FailureKind.Link, FailureKind.Switch })
            Assert.Equal(LoadPlans.WorstAfter(one, kind), LoadPlans.WorstAfter(other, kind), Exact);
    }

    private static string Names(DemandStudy study, FailureClass failure) => study.Fabric.Failures[failure.Units[0]].Name;

    /// <summary>The receiver does not send to itself, and senders of unlike rates each send their own: (2 x 400 + 4 x 800) / 400 by hand,
    /// whichever is named first.</summary>
    [Theory]
    [InlineData("[host-1..2, store]", 10)]
    [InlineData("[store, host-1..2]", 10)]
    [InlineData("[store, host-16]", 8)]
    public void Incast_AddsWhatEachSenderSends(string senders, double expected)
    {
        var study = LoadPlans.Study(Loads($"  answer: {{ kind: incast, from: {senders}, to: host-16 }}\n"));
        Assert.Equal(expected, study.Queue!.Overload.Value, Exact);
        Assert.Equal(expected, Enumerable.Range(0, study.Fabric.Map.Graph.Links.Length).Max(l => study.Utilisation(l).Value), Exact);
    }

    /// <summary>Beyond the flows for which collisions are computed exactly there is no figure, and no fault.</summary>
    [Theory]
    [InlineData(62, true)]
    [InlineData(255, false)]
    public void Collisions_EndWithTheExactFigure(int flows, bool isTold)
    {
        var study = LoadPlans.Study(Loads($"  backup: {{ from: host, to: store, rate: 50G, flows: {flows} }}\n"));
        Assert.Equal(isTold, study.Collisions is not null);
    }

    /// <summary>What has no path even while nothing is down is never reached, however reliable the parts are.</summary>
    [Fact]
    public void Availability_OfWhatIsNeverRouted_IsNone()
    {
        var text = Loads("  across: { kind: permutation, among: host, rate: 100G }\n").Replace(
            "  up: { from: leaf, to: spine, pattern: each-to-each, rate: 400G }",
            "  up: { from: leaf-1..2, to: spine-1..2, pattern: each-to-each, rate: 400G }\n"
            + "  down: { from: leaf-3..4, to: spine-3..4, pattern: each-to-each, rate: 400G }",
            StringComparison.Ordinal);
        var study = LoadPlans.Study(text);
        Assert.True(study.UnroutedGigabits > 0);
        Assert.Equal(0, study.Availability!.Value.Upper.Value, 1e-2);
        Assert.Equal(0, study.Availability!.Value.Lower.Value, Exact);
    }

    /// <summary>The plan of two pairs of leaves, with other demands.</summary>
    private static string Loads(string demands)
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, "tests", "plans", "loads", "plan.yaml"));
        return text[..(text.IndexOf("demands:", StringComparison.Ordinal) + "demands:\n".Length)] + demands;
    }
}
