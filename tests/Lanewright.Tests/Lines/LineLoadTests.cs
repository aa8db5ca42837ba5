using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;

namespace Lanewright.Tests.Lines;

/// <summary>Traffic between sites: it fills lines, and cuts of fibre are failures like others.</summary>
public sealed class LineLoadTests
{
    // Counted by hand: 8 hosts send 50G each to the other site, 400G over two routes of two channels of 400G. Cuts: one route carries
    // all of it; in one duct with the other, none does.
    [Theory]
    [InlineData("routes: 2", "", 0.25, 0.5, 0)]
    [InlineData("over: [north], other-way: [south]", "ducts: [bridge]", 0.25, 0, 400)]
    [InlineData("over: [north]", "", 0.5, 0, 400)]
    public void Traffic_GoesOverLinesAndCutsTakeItDown(string routes, string duct, double full, double afterCut, double lost)
    {
        var ports = routes.Contains("north]") && !routes.Contains("south") ? "28, 32" : "20, 24, 28, 32";
        var study = Study(routes, duct, ports).Demands.Single();
        Assert.Equal(0, study.UnroutedGigabits, 6);
        var lines = study.Fabric.Map.Routes.Keys.Select(l => study.Utilisation(l).Value).ToList();
        Assert.Equal(full, lines.Max(), 6);
        Assert.Equal(full, lines.Min(), 6);
        var cuts = study.Fabric.Failures.Where(u => u.Kind == (duct.Length > 0 ? FailureKind.Duct : FailureKind.Span)).ToList();
        Assert.NotEmpty(cuts);
        var classes = study.Failures.Where(c => c.Kind == cuts[0].Kind).ToList();
        Assert.Equal(lost, classes.Max(c => c.UnroutedGigabits), 6);
        if (lost == 0)
        {
            var left = study.Fabric.Map.Routes.Keys.Max(l => study.AfterLosing(cuts[0].Outage)!.Value.Value);
            Assert.Equal(afterCut, left, 6);
        }
    }

    // A route that no scheme makes work carries nothing: 40 dB without amplifiers between.
    [Fact]
    public void RoutesThatFail_CarryNoTraffic()
    {
        var study = Study("over: [far]", "", "28, 32").Demands.Single();
        Assert.Empty(study.Fabric.Map.Routes);
        Assert.Equal(400, study.UnroutedGigabits, 6);
    }

    // Nothing is known of how often a span is cut where only switches have a rate: the answer says so.
    [Fact]
    public void PartsWithoutAFailureRate_AreNamed()
    {
        const string rates = "policy: { failure-rates: [ { of: switch, per-year: 0.1, repair: 24 h } ] }";
        var study = Study("over: [north]", "", "28, 32", rates).Demands.Single();
        Assert.Contains(FailureKind.Span, study.TakenAsUp);
        Assert.DoesNotContain(FailureKind.Switch, study.TakenAsUp);
        Assert.Matches("as if no .*span.* ever failed: no rate is stated", LoadSentences.Availability(study));
        Assert.Empty(Study("over: [north]", "", "28, 32").Demands.Single().TakenAsUp);
    }

    private static LoadStudy Study(string routes, string duct, string ports, string policy = "policy: { }") =>
        Expect.Designed(PlanBlock.Compile($$"""
        lanewright: 1
        {{policy}}
        sites:
          bay: { halls: { hall: { rows: { A: { racks: 1 } } } } }
          town: { halls: { room: { rows: { B: { racks: 1 } } } } }
        spans:
          north: { from: bay, to: town, length: 40 km, {{duct}} }
          south: { from: bay, to: town, length: 50 km, {{duct}} }
          far: { from: bay, to: town, length: 300 km, measured-loss: 90 dB }
        devices:
          near: { model: fixed-32x400, racks: hall/A/1, unit: 40 }
          away: { model: fixed-32x400, racks: room/B/1, unit: 40 }
          host: { model: server-2u, cards: nic-2x200, racks: hall/A/1, per-rack: 8, unit: 4 }
          store: { model: server-2u, cards: nic-2x200, racks: room/B/1, per-rack: 8, unit: 4 }
        links:
          hosts: { from: host, to: { of: near, breakout: 2x200G }, pattern: same-rack, rate: 200G }
          stores: { from: store, to: { of: away, breakout: 2x200G }, pattern: same-rack, rate: 200G }
        lines:
          across:
            from: bay
            to: town
            type: 400ZR
            channels: 2
            {{routes.Replace(", ", "\n    ")}}
            from-ports: { of: near, ports: "{{ports}}" }
            to-ports: { of: away, ports: "{{ports}}" }
        demands:
          copy: { from: host, to: store, rate: 50G }
        """)).Load;
}
