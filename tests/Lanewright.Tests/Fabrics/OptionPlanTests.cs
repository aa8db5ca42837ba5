using System.Text;
using Lanewright.Deliverables.Fabrics;
using Lanewright.Engineering.Cost;
using Lanewright.Engineering.Fabrics;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Tests.Fabrics;

/// <summary>An option written as a plan is judged by the rules of plans, and comes to what the option said to the hundredth: the figures
/// of the option come from the sizing engine, those of the plan from binding, choice and tally, which know nothing of it.</summary>
public sealed class OptionPlanTests
{
    public static TheoryData<string> Questions => new(
        "{ hosts: { host: { count: 1024, rate: 200G } }, oversubscription: '3:1' }",
        "{ hosts: { host: { count: 1000, rate: 200G, per-rack: 12 } }, oversubscription: '3:1', growth: 20 %, energy-price: 0.2 }",
        "{ hosts: { host: { count: 96, rate: 100G } } }",
        "{ hosts: { host: { count: 40, rate: 100G, ports: 2 } }, survive: 1 }",
        "{ hosts: { host: { count: 256, rate: 400G } } }",
        "{ hosts: { host: { count: 300, rate: 25G, ports: 2 } }, oversubscription: '3:1', survive: 1 }",
        "{ hosts: { host: { count: 48, rate: 10G } }, oversubscription: '5:2' }",
        "{ hosts: { a: { count: 200, rate: 100G }, b: { count: 100, rate: 200G, ports: 2, per-rack: 8 } }, oversubscription: '3:1' }",
        "{ hosts: { host: { count: 512, rate: 200G, ports: 2 } }, planes: 2, oversubscription: '2:1' }",
        "{ hosts: { host: { count: 64, rate: 400G, ports: 8, per-rack: 2, model: accelerator-8u, cards: nic-2x400 x4 } }, rails: 8 }",
        "{ hosts: { host: { count: 120, rate: 100G, ports: 2, per-rack: 24, model: server-2u, cards: nic-2x100 } }, "
            + "oversubscription: '3:1', survive: 1, growth: 20 %, energy-price: 0.2 }",
        "{ hosts: { host: { count: 1500, rate: 100G } }, oversubscription: ['3:1', '1:1'], shapes: three-tier }",
        "{ hosts: { host: { count: 333, rate: 25G, ports: 2, per-rack: 20 } }, oversubscription: '2:1', survive: 1, shapes: three-tier }",
        "{ hosts: { host: { count: 128, rate: 400G, ports: 8, per-rack: 4, model: accelerator-8u, cards: nic-2x400 x4 } }, rails: 8, "
            + "oversubscription: '2:1', shapes: rails }");

    [Theory]
    [MemberData(nameof(Questions))]
    public void WrittenOption_CompilesToWhatTheOptionSaid(string question)
    {
        var (plan, study) = Asked.Study(Asked.Question(question));
        Assert.NotEmpty(study.Answer.Options);
        foreach (var option in study.Answer.Options) HoldsWhatItSaid(plan, option);
    }

    [Fact]
    public void WrittenOption_KeepsPolicyCatalogueHallAndWhatStays()
    {
        const string block = """
            lanewright: 1
            name: lab
            catalogue: prices.yaml
            policy: { spares: 5 %, contingency: 12 %, service: 1 m, forbid: [AOC], connection-loss: 0.3 dB }
            racks: { wide: { units: 42, width: 800 mm } }
            sites: { s: { halls: { "north hall": { pathway-height: 3 m, rows: {
              A: { racks: 9, rack: wide, x: 1.3 m }, B: { racks: 9, rack: wide, y: 4 m }, S: { racks: 3, rack: wide, y: 8 m } } } } } }
            devices: { old: { model: fixed-64x400, count: 1, existing: yes } }
            wanted:
              hosts: { node: { count: 120, rate: 200G, per-rack: 8 } }
              oversubscription: 2:1
              racks: ["north hall/A", "north hall/B"]
              spine-racks: north hall/S
              reuse: old
            # file: prices.yaml
            modules:
              own-400g: { title: own, form-factor: QSFP-DD, applications: "400GAUI-8>400GBASE-DR4", power: 9 W, price: 77.77 }
            """;
        var (plan, study) = Asked.Study(Asked.Plan(block));
        Assert.NotEmpty(study.Answer.Options);
        var beside = "\n# file: prices.yaml" + block.Split("# file: prices.yaml")[1];
        foreach (var option in study.Answer.Options) HoldsWhatItSaid(plan, option, beside);
    }

    /// <summary>Places with trays that lead round, feeds that do not bear a leaf above its hosts, racks that are part full, several kinds
    /// of host, rails and planes.</summary>
    public static TheoryData<int, string> Sites => new(
        (25, """
            hosts: { a: { count: 30, rate: 100G, ports: 2, per-rack: 6, model: server-2u, cards: nic-2x100 },
                     b: { count: 20, rate: 200G, ports: 2, per-rack: 5, model: server-2u, cards: nic-2x200 } }
            oversubscription: 3:1
            survive: 1
            racks: [room/A, room/B]
            spine-racks: room/S
            energy-price: 0.2
        """),
        (80, """
            hosts: { gpu: { count: 12, rate: 400G, ports: 8, per-rack: 1, model: accelerator-8u, cards: nic-2x400 x4 } }
            rails: 8
            oversubscription: 2:1
            racks: [room/A, room/B]
            spine-racks: room/S
        """),
        (25, """
            hosts: { web: { count: 50, rate: 25G, ports: 2, per-rack: 8, model: server-2u, cards: nic-2x25 } }
            planes: 2
            oversubscription: 4:1
            racks: [room/A, room/B]
            spine-racks: room/S
            growth: 10 %
        """),
        (25, """
            hosts: { node: { count: 60, rate: 100G, per-rack: 6, model: server-2u, cards: nic-2x100 } }
            oversubscription: ['2:1', '1:1']
            shapes: [three-tier, leaf-spine, pair]
            racks: [room/A, room/B]
            spine-racks: room/S
            reuse: old-spine
        """));

    [Theory]
    [MemberData(nameof(Sites))]
    public void WrittenOption_InAHallWithFeedsTraysAndWhatStandsThere_CompilesToWhatTheOptionSaid(int breaker, string wanted)
    {
        var block = """
            lanewright: 1
            name: room
            racks: { deep: { units: 42, width: 600 mm, weight-limit: 900 kg, own-weight: 120 kg, power-limit: 16 kW } }
            sites: { s: { halls: { room: { pathway-height: 3 m, cooling: 250 kW, floor-load: 14 kPa,
              rows: { A: { racks: 8, rack: deep }, B: { racks: 8, rack: deep, y: 3 m }, S: { racks: 5, rack: deep, y: 6 m } },
              pathways: {
                over-A: { from: { x: -1 m, y: 0 m }, to: { x: 6 m, y: 0 m }, width: 400 mm },
                over-B: { from: { x: -1 m, y: 3 m }, to: { x: 6 m, y: 3 m }, width: 400 mm },
                over-S: { from: { x: -1 m, y: 6 m }, to: { x: 6 m, y: 6 m }, width: 400 mm },
                end: { from: { x: -1 m, y: 0 m }, to: { x: -1 m, y: 6 m }, width: 600 mm } } } } } }
            power:
              a: { racks: [room/A, room/B, room/S], volts: 400 V, phases: 3, breaker: 25 A }
              b: { racks: [room/A, room/B, room/S], volts: 400 V, phases: 3, breaker: 25 A }
            devices:
              stays: { model: fixed-48x10-4x40, racks: room/A/2..4, unit: 40, existing: yes, feeds: [a, b] }
              leaf: { model: server-2u, cards: nic-2x10, racks: room/B/1, per-rack: 3, unit: 5, existing: yes, feeds: [a, b] }
              old-spine: { model: fixed-32x100, racks: room/S/1..2, unit: 30, existing: yes, feeds: [a, b] }
            wanted:

            """.Replace("25 A", breaker + " A", StringComparison.Ordinal)
            .Replace("16 kW", breaker > 25 ? "40 kW" : "16 kW", StringComparison.Ordinal)
            + wanted;
        var (plan, study) = Asked.Study(Asked.Plan(block));
        Assert.NotEmpty(study.Answer.Options);
        Assert.Contains(study.Answer.Options[0].Layout.Standing, d => d.Group.Name == "stays");
        foreach (var option in study.Answer.Options) HoldsWhatItSaid(plan, option, mayShareRacks: true);
    }

    private static void HoldsWhatItSaid(Plan plan, FabricOption option, string beside = "", bool mayShareRacks = false)
    {
        using var stream = new MemoryStream();
        OptionPlan.Write(plan, option, path => path, stream);
        var text = Encoding.UTF8.GetString(stream.ToArray());
        var judged = PlanBlock.Compile(text + beside);
        Assert.False(judged.HasErrors, $"{option.Shape}\n{Expect.Text(judged)}\n{text}");
        // Where racks do not suffice for two to a tier, switches stand closely, and a warning says so.
        var warnings = judged.Findings.Where(f => f.Severity == Severity.Warning && !(mayShareRacks && f.Kind.Name == "PairInOneRack"));
        Assert.Equal([], warnings.Select(f => f.Kind.Code).Distinct());
        var designed = Expect.Designed(judged);
        // What was promised to the hosts is told beside what is built, and the warnings above would say if that were worse.
        foreach (var tier in TierOversubscription.Of(designed.Load.Networks[0]))
            Assert.Equal(
                plan.Wanted?.OversubscriptionOf(tier.Tier - 1), Ratio.OfTier(designed.Plan.Policy.Oversubscription, tier.Tier - 1));
        Assert.Equal(
            option.Switches.GroupBy(s => s.Model.Name).Select(g => $"{g.Key} {g.Sum(s => s.Count)}").Order(),
            designed.Plan.Devices.Groups.Where(g => g.Model.Kind != DeviceKind.Host && !g.IsExisting)
                .GroupBy(g => g.Model.Name).Select(g => $"{g.Key} {g.Sum(d => d.Count)}").Order());
        Assert.Equal(option.HostPorts + option.FabricLinks, designed.Plan.Links.Count);
        Assert.Equal(Parts(option.ModulesByModel), Parts<ModuleModel>(designed.Parts));
        Assert.Equal(Parts(option.CablesByModel), Parts<CableItem>(designed.Parts));
        Assert.Equal(Parts(option.SmallParts), Parts<SundryModel>(designed.Parts));
        Assert.Equal(option.Modules, designed.Parts.Where(p => p.Item is ModuleModel).Sum(p => p.Needed));
        // The energy of an option and that of a built plan are reckoned from the same watts: a usual load, and modules at their most, at
        // both ends. What hosts draw without the fabric is no part of it.
        var hosts = designed.Plan.Devices.Groups.Where(g => g.IsExisting)
            .Sum(g => g.Count * (g.Model.Typical.Value + g.Cards.Sum(c => c.Typical.Value)));
        var all = designed.Racks.Value.Racks.Sum(r => r.Typical.Value);
        Assert.Equal(all - hosts, option.Watts.Value, 4);
        Assert.Equal(option.Price, designed.Parts.Aggregate(Money.Zero, (sum, p) => sum + p.Total));
    }

    private static IEnumerable<string> Parts(IEnumerable<FabricPart> parts) =>
        parts.Select(p => $"{p.Item.Name} {p.Length} {p.Count} {p.ToBuy}").Order();

    private static IEnumerable<string> Parts<T>(IEnumerable<PartLine> lines) =>
        lines.Where(l => l.Item is T).Select(l => $"{l.Item.Name} {l.Length} {l.Needed} {l.ToBuy}").Order();
}
