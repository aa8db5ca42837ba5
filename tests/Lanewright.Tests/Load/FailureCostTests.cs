using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Tests.Load.Support;

namespace Lanewright.Tests.Load;

/// <summary>What a failure costs comes first: hosts and traffic lost, then the fullest link. Figures by hand.</summary>
public sealed class FailureCostTests
{
    /// <summary>Two racks of two hosts with a leaf each, two spines elsewhere; all send 100G to all.</summary>
    private const string Racks = """
        lanewright: 1
        sites: { main: { halls: { hall: { rows: { A: { racks: 2, y: 0 m }, B: { racks: 2, y: 3 m } } } } } }
        devices:
          host: { model: server-2u, cards: nic-2x200, racks: hall/A/1..2, per-rack: 2 FEEDS }
          leaf: { model: fixed-32x400, racks: hall/A/1..2, unit: 40 }
          spine: { model: fixed-32x400, racks: hall/B/1..2 }
        links:
          edge: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: same-rack, rate: 200G }
          up: { from: leaf, to: spine, pattern: each-to-each, rate: 400G }
        demands:
          all: { kind: all-to-all, among: host, rate: 100G }

        """;

    [Fact]
    public void ARackThatFails_LosesItsHostsAndTheirTraffic()
    {
        var study = LoadPlans.Study(Racks.Replace("FEEDS", "", StringComparison.Ordinal));
        var rack = study.Failures.Single(f => f.Kind == FailureKind.Rack && f.HostsLost > 0);
        // Two of four hosts are down. Four times 100G are sent; what stays is a third of the other two hosts' traffic.
        Assert.Equal((2, 0, 2), (rack.MembersDown, rack.MembersCut, rack.Size));
        Assert.Equal(400 - (2 * 100 / 3.0), rack.LostGigabits, 1e-9);
        Assert.Equal(0, rack.UnroutedGigabits, 1e-9);
        // A leaf that fails leaves its hosts up and cuts them off: as many, and as much.
        var leaf = study.Failures.Single(f => f.Kind == FailureKind.Switch && f.HostsLost > 0);
        Assert.Equal((0, 2), (leaf.MembersDown, leaf.MembersCut));
        Assert.Equal(rack.LostGigabits, leaf.LostGigabits, 1e-9);
        // A spine costs room alone: the other carries twice as much.
        var spine = study.Failures.Single(f => f.Kind == FailureKind.Switch && f.HostsLost == 0);
        Assert.Equal(study.Intact.Value * 2, study.After(spine).Value, 1e-9);
        Assert.Equal(0, spine.LostGigabits, 1e-9);
    }

    [Theory]
    [InlineData(", feeds: [a]", "", 4)]
    [InlineData(", feeds: [a, b]", "", 0)]
    [InlineData("", "power: { a: { racks: hall/A, volts: 230 V, breaker: 32 A } }\n", 4)]
    [InlineData("", "power: { a: { racks: hall/A/1, volts: 230 V, breaker: 32 A }, "
        + "b: { racks: hall/A/1..2, volts: 230 V, breaker: 32 A } }\n", 2)]
    public void AFeedThatFails_TakesDownWhatDrawsFromItAlone(string feeds, string power, int down)
    {
        var study = LoadPlans.Study(Racks.Replace("FEEDS", feeds, StringComparison.Ordinal) + power);
        Assert.Equal(down, study.Failures.Where(f => f.Kind == FailureKind.Feed).Sum(f => f.MembersDown));
    }

    /// <summary>Four hosts fill four ports each on four rails. A rail that fails takes a quarter of what they send, though every host is
    /// reached.</summary>
    [Fact]
    public void ARailThatFails_LosesWhatItsPortsWouldHaveSent()
    {
        var study = LoadPlans.Study("""
            lanewright: 1
            devices:
              gpu: { model: accelerator-8u, cards: [nic-1x400, nic-1x400, nic-1x400, nic-1x400], count: 4 }
              rail: { model: fixed-32x400, count: 4 }
            links:
              r: { from: gpu, to: rail, pattern: each-to-each, rate: 400G, length: 2 m, medium: OS2 }
            demands:
              all: { kind: all-to-all, among: gpu }
            """);
        var rail = Assert.Single(study.Failures, f => f.Kind == FailureKind.Switch);
        Assert.Equal((4, 0), (rail.Size, rail.HostsLost));
        Assert.Equal(4 * 400, rail.LostGigabits, 1e-6);
        Assert.Contains("counts as one", LoadSentences.Ports(study), StringComparison.Ordinal);
    }

    [Fact]
    public void Failures_AreOrderedByWhatTheyCost()
    {
        var study = LoadPlans.Study(Racks.Replace("FEEDS", ", feeds: [a]", StringComparison.Ordinal));
        Assert.Equal(FailureKind.Feed, study.Failures[0].Kind);
        Assert.Equal(400, study.Failures[0].LostGigabits, 1e-9);
        var costs = study.Failures.Select(f => (f.HostsLost, Math.Round(f.LostGigabits, 6), Math.Round(study.After(f).Value, 9))).ToList();
        Assert.Equal(costs.OrderDescending(), costs);
        var steps = FailureStep.Of(study);
        Assert.Equal(steps.Select(s => s.HostsCut).OrderDescending(), steps.Select(s => s.HostsCut));
        Assert.Equal(study.Failures.Sum(f => f.Size), steps.Sum(s => s.Size));
    }

    [Fact]
    public void Availability_CountsHostsWithoutPower()
    {
        const string Rates = "policy: { failure-rates: [ { of: feed, per-year: 0.1, repair: 8760 h } ] }\n";
        var dark = LoadPlans.Study(Racks.Replace("FEEDS", ", feeds: [a]", StringComparison.Ordinal) + Rates);
        // One feed, down a tenth of a year for each year it ran: up 1 / 1.1 of the time, and nothing else fails.
        Assert.Equal(1 / 1.1, dark.Availability!.Value.Upper.Value, 1e-9);
        var fed = LoadPlans.Study(Racks.Replace("FEEDS", ", feeds: [a, b]", StringComparison.Ordinal) + Rates);
        // Dark where both are down at once: an eleventh of the time each.
        Assert.Equal(1 - (1 / 121.0), fed.Availability!.Value.Lower.Value, 1e-9);
        Assert.Equal(1, fed.Availability.Value.Upper.Value, 1e-9);
    }

    // By hand: two leaves that cut hosts off when they fail. One fails once a year for a year, the other nine times, so that they are up a
    // half and a tenth of the time, and both at once a twentieth.
    [Fact]
    public void Availability_FollowsTheRateOfEachModel()
    {
        const string Two = """
            lanewright: 1
            devices:
              host: { model: server-2u, cards: nic-1x400, count: 2 }
              other: { model: server-2u, cards: nic-1x400, count: 2 }
              leaf: { model: fixed-32x400, count: 1 }
              edge: { model: fixed-64x400, count: 1 }
            links:
              h: { from: host, to: leaf, pattern: each-to-each, rate: 400G, length: 2 m }
              o: { from: other, to: edge, pattern: each-to-each, rate: 400G, length: 2 m }
              up: { from: leaf, to: edge, rate: 400G, count: 8, length: 2 m }
            demands:
              all: { kind: all-to-all, among: [host, other] }
            policy:
              failure-rates:
                - { of: switch, per-year: 1, repair: 8760 h }
                - { of: switch, model: fixed-64x400, per-year: 9, repair: 8760 h }
            """;
        var found = LoadPlans.Study(Two).Availability!.Value;
        Assert.Equal(0.5 * 0.1, found.Lower.Value, 1e-9);
        // Two at once are not known, and called good by the upper bound.
        Assert.Equal((0.5 * 0.1) + (0.5 * 0.9), found.Upper.Value, 1e-9);
    }

    /// <summary>One of two links to a spine breaks. What comes down from the spine to a host with one leaf doubles on the other; a host of
    /// two leaves is reached over three links where there were four.</summary>
    [Theory]
    [InlineData(1, 2, 2.0)]
    [InlineData(1, 3, 1.5)]
    [InlineData(2, 2, 4 / 3.0)]
    public void ParallelLinkThatBreaks_IsToldAsLoadComputesIt(int leaves, int parallel, double times)
    {
        var judged = PlanBlock.Compile(Pairs(leaves, parallel));
        var study = Expect.Designed(judged).Load.Demands[0];
        var link = study.Failures.First(f => f.Kind == FailureKind.Link && f.BusiestLink >= 0
            && study.Fabric.Failures[f.Units[0]].Name.Contains("spine", StringComparison.Ordinal));
        Assert.Equal(study.Intact.Value * times, study.After(link).Value, 1e-9);
        var found = Assert.Single(judged.Findings, f => f.Kind.Code == "LW3102");
        Assert.Equal(study.After(link).Percent, found.Evidence!.Value!.Value, 1e-9);
        Assert.Contains($"one of the {parallel} links", found.Message, StringComparison.Ordinal);
        Assert.Contains($"{Numerals.Shown(study.After(link).Percent, "%")} full", found.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("double", found.Message, StringComparison.Ordinal);
    }

    /// <summary>Two blocks of eight hosts on one or two leaves each, two spines, and traffic that leaves the blocks.</summary>
    private static string Pairs(int leaves, int parallel)
    {
        var hosts = parallel * leaves * 4;
        return $$"""
            lanewright: 1
            policy: { most-utilisation: 60 % }
            devices:
              host-a: { model: server-2u, cards: nic-2x200, count: {{hosts}} }
              host-b: { model: server-2u, cards: nic-2x200, count: {{hosts}} }
              leaf-a: { model: fixed-64x400, count: {{leaves}} }
              leaf-b: { model: fixed-64x400, count: {{leaves}} }
              spine: { model: fixed-64x400, count: 2 }
            links:
              edge-a: { from: host-a, to: { of: leaf-a, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m }
              edge-b: { from: host-b, to: { of: leaf-b, breakout: 2x200G }, pattern: each-to-each, rate: 200G, length: 2 m }
              up: { from: [leaf-a, leaf-b], to: spine, pattern: each-to-each, count: {{parallel}}, rate: 400G, length: 30 m }
            demands:
              over: { from: host-a, to: host-b, rate: 110G }
            """;
    }

    [Fact]
    public void ATrayThatCutsHostsOff_IsFound()
    {
        const string Trays = """
            lanewright: 1
            sites:
              main:
                halls:
                  hall:
                    rows: { A: { racks: 2, y: 0 m }, B: { racks: 2, y: 3 m } }
                    pathways:
                      over-a: { from: { x: 0 m, y: 0 m }, to: { x: 4 m, y: 0 m }, width: 300 mm }
                      across: { from: { x: 4 m, y: 0 m }, to: { x: 4 m, y: 3 m }, width: 300 mm }
                      over-b: { from: { x: 0 m, y: 3 m }, to: { x: 4 m, y: 3 m }, width: 300 mm }
            devices:
              host: { model: server-2u, cards: nic-2x200, racks: hall/A/1..2, per-rack: 3 }
              near: { model: server-2u, cards: nic-2x200, racks: hall/B/1, per-rack: 8, unit: 5 }
              leaf: { model: fixed-32x400, racks: hall/B/1 }
            links:
              edge: { from: [host, near], to: { of: leaf, breakout: 2x200G }, pattern: each-to-each, rate: 200G }
            demands:
              all: { kind: all-to-all, among: [host, near], rate: 10G }
            """;
        var judged = PlanBlock.Compile(Trays);
        var found = Assert.Single(judged.Findings, f => f.Kind.Code == "LW3116");
        // Six hosts of row A hang on a leaf of row B, and all three trays lie between; over-a stands over all six.
        Assert.Equal((6.0, 3L), (found.Evidence!.Value!.Value, found.Count));
        Assert.Contains("6 hosts of 14 are cut off", found.Message, StringComparison.Ordinal);
    }
}
