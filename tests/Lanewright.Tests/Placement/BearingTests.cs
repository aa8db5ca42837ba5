using Lanewright.Deliverables;
using Lanewright.Engineering.Placement;

namespace Lanewright.Tests.Placement;

/// <summary>Racks that are offered bear what would stand there.</summary>
public sealed class BearingTests
{
    private static readonly string[] Bearing =
        ["LW4301", "LW4302", "LW4305", "LW4401", "LW4402", "LW4403", "LW4404", "LW4414"];

    // Against the rules: the spine is written into every rack, the plan is judged anew, and the racks that are offered are those of which
    // no rule of weight, floor, power or feeds says anything. Racks alike meet the tighter of the limits of rack and floor first, so both
    // are tried.
    [Theory]
    [InlineData("12 kPa", "345 kg", 1, "LW4301", 3)]
    [InlineData("6 kPa", "100 kg", 3, "LW4302", 1)]
    public void OfferedRacks_AreThoseThatNoRuleFindsFaultWith(string floor, string lead, int heavy, string code, int light)
    {
        var plan = Plan.Replace("12 kPa", floor, StringComparison.Ordinal).Replace("345 kg", lead, StringComparison.Ordinal);
        var offered = Offers(In(plan, "hall/S/7")).Select(o => o.Rack.Number).Order().ToArray();
        Assert.Equal([light, 6, 7], offered);
        Assert.All(offered, r => Assert.Empty(FaultsOf(plan, r)));
        // Each of the others fails for a reason of its own.
        Assert.Equal([code], FaultsOf(plan, heavy));
        Assert.Equal(["LW4305"], FaultsOf(plan, 2));
        Assert.Equal(["LW4403"], FaultsOf(plan, 4));
        Assert.Equal(["LW4402"], FaultsOf(plan, 5));
    }

    [Fact]
    public void WhatIsNotStated_IsToldBesideTheOffer()
    {
        var plan = In(Plan, "hall/S/7").Replace("own-weight: 100 kg, ", "", StringComparison.Ordinal);
        Assert.All(Offers(plan), o => Assert.Equal(BearingGaps.RackWeight, o.Gaps));
        Assert.All(Offers(In(Plan, "hall/S/7")), o => Assert.Equal(BearingGaps.None, o.Gaps));
        var unweighed = In(Plan, "hall/S/7").Replace(
            "model: fixed-32x400, racks: hall/S", "model: unweighed, racks: hall/S", StringComparison.Ordinal);
        var gaps = Offers(unweighed).Select(o => o.Gaps).Distinct().Single();
        Assert.Equal("weight of devices, power of devices", PlacementWords.Of(gaps));
    }

    /// <summary>Codes that a plan has with the spine in a rack and not without it.</summary>
    private static IEnumerable<string> FaultsOf(string plan, int rack) =>
        Codes(In(plan, $"hall/S/{rack}")).Except(Codes(In(plan, "hall/A/12")));

    private static string In(string plan, string spine) => plan.Replace("SPINE", spine, StringComparison.Ordinal);

    private static IEnumerable<string> Codes(string plan) =>
        PlanBlock.Compile(plan).Findings.Select(f => f.Kind.Code).Where(c => Bearing.Contains(c)).Distinct().Order();

    private static System.Collections.Immutable.ImmutableArray<RackOffer> Offers(string plan)
    {
        var designed = Expect.Designed(PlanBlock.Compile(plan));
        var group = designed.Plan.Devices.Groups.Single(g => g.Name == "spine");
        return Assert.Single(PlacementAnswer.Of(designed, [group], r => r.Row == "S").Groups).Offers;
    }

    // Rack 1 or 3 is full by weight, 2 by power, no feed leads to 4, and 5 bears no loss of a feed. In A every rack has feeds,
    // and it is of another kind, so that no limit is met there.
    private const string Plan = """
        lanewright: 1
        catalogue: [own.yaml]
        racks:
          standard: { weight-limit: 1000 kg, own-weight: 100 kg, power-limit: 5 kW }
          deep: { weight-limit: 350 kg, own-weight: 100 kg, power-limit: 5 kW }
        sites: { main: { halls: { hall: { floor-load: 12 kPa, rows: {
          A: { racks: 12 }, S: { racks: 7, y: 4 m, rack: deep } } } } } }
        devices:
          leaf: { model: fixed-32x400, racks: hall/A/1..4, unit: 46 }
          spine: { model: fixed-32x400, racks: SPINE, unit: 48 }
          lead: { model: lead, racks: hall/S/1, unit: 1 }
          stove: { model: stove, racks: hall/S/2, unit: 1 }
          iron: { model: iron, racks: hall/S/3, unit: 1 }
          oven: { model: oven, racks: hall/S/5, unit: 1 }
        links:
          up: { from: leaf, to: spine, pattern: each-to-each, count: 2, rate: 400G }
        power:
          a: { racks: [hall/A/1..12, hall/S/1..3, hall/S/6..7], volts: 230 V, breaker: 32 A }
          b: { racks: [hall/A/1..12, hall/S/1..3, hall/S/6..7], volts: 230 V, breaker: 32 A }
          c: { racks: hall/S/5, volts: 230 V, breaker: 16 A }
          d: { racks: hall/S/5, volts: 230 V, breaker: 16 A }
        # file: own.yaml
        devices:
          lead: { kind: host, title: Lead, weight: 345 kg, maximum: 100 W }
          stove: { kind: host, title: Stove, weight: 10 kg, maximum: 4.5 kW }
          iron: { kind: host, title: Iron, weight: 335 kg, maximum: 100 W }
          oven: { kind: host, title: Oven, weight: 10 kg, maximum: 2.4 kW }
          unweighed:
            kind: switch
            title: Switch of which little is stated
            cages: [{ count: 32, form-factor: QSFP-DD, lane-rates: [50G], modes: [1x400G], power: 14 W }]
        """;
}
