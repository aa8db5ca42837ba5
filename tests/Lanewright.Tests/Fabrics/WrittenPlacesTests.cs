using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Lanewright.Deliverables.Fabrics;
using Lanewright.Engineering.Fabrics;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Model.Wanted;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Fabrics;

/// <summary>An option written as a plan says of places, power, policy and labels what the plan says that it was asked in. What is compared
/// is read from the properties of the model themselves, so that one that joins them later cannot be forgotten.</summary>
public sealed class WrittenPlacesTests
{
    private const string AllSections = """
        lanewright: 1
        name: full
        title: All sections
        revision: D
        date: 2026-11-26
        policy:
          connection-loss: 0.35 dB
          connection-grade: C
          splice-loss: 0.2 dB
          reflectance: -50 dB
          ageing-margin: 0.3 dB
          least-margin: 0.15 dB
          connections-in-hall: 1
          connections-between-halls: 3
          contingency: 7 %
          service: 0.7 m
          in-rack: 0.4 m
          prefer: [DAC, OS2]
          forbid: OM3
          prefer-form-factor: QSFP-DD
          copper-limits: [{ rate: 100G, length: 2.5 m }, { rate: 400G, length: 1.5 m }]
          spares: 5 %
          spare-level: { confidence: 99.5 %, resupply: 30 d, convention: F }
          drafts: yes
          split: ideal
          most-utilisation: 85 %
          oversubscription: [4:1, 2:1]
          breaker-share: 75 %
          power-factor: 92 %
          pue: 1.31
          failure-rates:
            - { of: switch, mtbf: 200000 h, repair: 24 h }
            - { of: module, fit: 500, repair: 8 h }
            - { of: tray, per-year: 0.001, repair: 2 d }
        racks:
          cust: { units: 50, width: 650 mm, depth: 1180 mm, front-space: 130 mm, plinth: 90 mm, device-depth: 900 mm, weight-limit: 1190 kg,
            own-weight: 141 kg, power-limit: 15.5 kW }
          other: { units: 42, power-limit: 30 kW }
        sites:
          brook:
            halls:
              main:
                pathway-height: 2.8 m
                exit: { x: -1 m, y: 0.5 m }
                inlet: 25 C
                altitude: 120 m
                air-class: A3
                cooling: 400 kW
                floor-load: 11.5 kPa
                rows:
                  A: { racks: 7, rack: cust, x: 0.4 m }
                  B: { racks: 7, rack: cust, y: 3 m }
                  "N": { racks: 3, rack: other, y: 6 m }
                pathways:
                  over-A: { from: { x: -1 m, y: 0 m }, to: { x: 6 m, y: 0 m }, width: 300 mm }
                  over-B: { from: { x: -1 m, y: 3 m }, to: { x: 6 m, y: 3 m }, width: 300 mm, depth: 80 mm }
                  north: { from: { x: -1 m, y: 3 m }, to: { x: -1 m, y: 6 m }, width: 110 mm, kind: duct }
                  over-N: { from: { x: -1 m, y: 6 m }, to: { x: 6 m, y: 6 m }, width: 250 mm }
                  west: { from: { x: -1 m, y: 0 m }, to: { x: -1 m, y: 3 m }, width: 400 mm }
              far: { rows: { Z: { racks: 1 } } }
        routes: { from: main, to: far, length: 50 m }
        power:
          a: { racks: [main/A, main/B/1..4, main/N], volts: 400 V, breaker: 40 A, phases: 3 }
          b: { racks: [main/A, main/N], volts: 208 V, breaker: 60 A, phases: 3, outlets: phase-to-phase, full-rated: yes }
          c: { racks: [main/B, far/Z], volts: 230 V, breaker: 63 A }
        labels: { page: A5, width: 40 mm, height: 20 mm, columns: 3, rows: 8, left: 5 mm, top: 10 mm, gap-across: 1 mm, gap-down: 2 mm }
        wanted:
          hosts: { server: { count: 120, rate: 100G, ports: 2, per-rack: 10, model: server-1u, cards: nic-2x100 } }
          oversubscription: 3:1
          survive: 1
          racks: [main/A, main/B]
          spine-racks: main/N
        """;

    [Fact]
    public void WrittenOption_OfAllSections_SaysWhatThePlanSays() => SaysTheSame(Asked.Study(Asked.Plan(AllSections)));

    [Fact]
    public void WrittenOption_OfTheExample_SaysWhatThePlanSays()
    {
        var files = new FolderFiles(Repository.Path("examples", "kestrel-bay"));
        SaysTheSame(Asked.Study(Compilation.Size(files, "plan.yaml", null)), files);
    }

    /// <summary>Every limit of a place by itself, tightened until the answer has to mind it: 24 hosts of a rack that may draw 15.5 kW,
    /// breakers too small for hosts and leaves together, a floor, a rack, a hall's air, a tray. Either no option is offered and the racks
    /// are named as what stands in the way, or every option passes.</summary>
    [Theory]
    [InlineData("per-rack: 10", "per-rack: 24, count: 240", false)]
    [InlineData("breaker: 40 A", "breaker: 25 A", true)]
    [InlineData("breaker: 40 A", "breaker: 16 A", false)]
    [InlineData("floor-load: 11.5 kPa", "floor-load: 1.5 kPa", false)]
    [InlineData("weight-limit: 1190 kg", "weight-limit: 180 kg", true)]
    [InlineData("weight-limit: 1190 kg", "weight-limit: 90 kg", false)]
    [InlineData("cooling: 400 kW", "cooling: 100 kW", true)]
    [InlineData("cooling: 400 kW", "cooling: 97.5 kW", true)]
    [InlineData("cooling: 400 kW", "cooling: 90 kW", false)]
    [InlineData("width: 110 mm, kind: duct", "width: 40 mm, kind: duct", true)]
    [InlineData("width: 300 mm, depth: 80 mm", "width: 16 mm, depth: 30 mm", true)]
    [InlineData("width: 300 mm, depth: 80 mm", "width: 10 mm, depth: 20 mm", true)]
    public void Options_KeepEveryLimitOfTheirPlace(string loose, string tight, bool isPossible)
    {
        Assert.Contains(loose, AllSections, StringComparison.Ordinal);
        var block = AllSections.Replace(loose, tight, StringComparison.Ordinal);
        if (tight.Contains("count", StringComparison.Ordinal)) block = block.Replace("count: 120, ", "", StringComparison.Ordinal);
        var (plan, study) = Asked.Study(Asked.Plan(block));
        Assert.Equal(isPossible, !study.Answer.Options.IsEmpty);
        foreach (var option in study.Answer.Options)
        {
            var judged = PlanBlock.Compile(Text(plan, option));
            Assert.False(judged.HasErrors, $"{option.Shape}\n{Expect.Text(judged)}");
        }
        if (!isPossible) Assert.Contains(study.Conflicts, c => c.Any(w => w.Key == WishList.Racks));
    }

    /// <summary>Cooling and a duct that bind: what is best where they are ample breaks them, and the same question asked where they are
    /// tight does not offer it.</summary>
    [Theory]
    [InlineData("cooling: 400 kW", "cooling: 97.5 kW", "cooling: 400000 W", "cooling: 97500 W", FabricShape.LeafSpine, "LW4405")]
    [InlineData("width: 110 mm, kind", "width: 28 mm, kind", "width: 0.11 m, kind", "width: 0.028 m, kind", FabricShape.ThreeTier,
        "LW4101")]
    [InlineData("width: 300 mm, depth: 80 mm", "width: 10 mm, depth: 20 mm", "width: 0.3 m, depth: 0.08 m", "width: 0.01 m, depth: 0.02 m",
        FabricShape.Planes, "LW4101")]
    public void OptionThatOverloadsItsPlace_IsNotOfferedThere(
        string loose, string tight, string written, string writtenTight, FabricShape shape, string code)
    {
        var (plan, ample) = Asked.Study(Asked.Plan(AllSections));
        var (_, study) = Asked.Study(Asked.Plan(AllSections.Replace(loose, tight, StringComparison.Ordinal)));
        var best = Assert.Single(ample.Answer.Options, o => o.Shape == shape);
        var text = Text(plan, best);
        Assert.Contains(written, text, StringComparison.Ordinal);
        Assert.False(PlanBlock.Compile(text).HasErrors);
        var judged = PlanBlock.Compile(text.Replace(written, writtenTight, StringComparison.Ordinal));
        Assert.Contains(judged.Findings, f => f.Kind.Code == code && f.Severity == Severity.Error);
        Assert.DoesNotContain(study.Answer.Options, o => o.Shape == shape && o.PriceOverYears <= best.PriceOverYears);
    }

    private static void SaysTheSame((Plan Plan, FabricStudy Study) asked, FolderFiles? files = null)
    {
        var (plan, study) = asked;
        Assert.NotEmpty(study.Answer.Options);
        foreach (var option in study.Answer.Options)
        {
            var text = Text(plan, option);
            var judged = files is null ? PlanBlock.Compile(text) : Compilation.Of(new Beside(files, "option.yaml", text), "option.yaml");
            Assert.True(judged.Designed is not null, Expect.Text(judged));
            var written = Expect.Designed(judged).Plan;
            Assert.Equal((plan.Revision, plan.Date, plan.Currency), (written.Revision, written.Date, written.Currency));
            // The wishes are not repeated, so where there are tiers their ratio becomes one of the policy.
            var promised = option.Uplinks.IsEmpty ? plan.Policy.Oversubscription : plan.Wanted?.Oversubscription ?? [];
            Assert.Equal(Facts(plan.Policy with { Oversubscription = promised }), Facts(written.Policy));
            Assert.Equal(Facts(plan.Labels), Facts(written.Labels));
            var halls = option.Layout.Racks.Select(r => r.Hall.FullName).ToHashSet();
            Assert.Equal(Facts(plan.Building.Racks.Where(r => halls.Contains(r.Hall.FullName))), Facts(written.Building.Racks));
            Assert.Equal(Facts(plan.Building.Pathways.Where(p => halls.Contains(p.Hall.FullName))), Facts(written.Building.Pathways));
            Assert.Equal(Feeds(plan, r => halls.Contains(r.Hall.FullName)), Feeds(written, _ => true));
            foreach (var group in written.Devices.Groups)
            {
                for (var i = 0; i < group.Count; i++)
                {
                    var rack = written.Devices.RackIndex(group.First + i);
                    Assert.Equal(written.Power.Where(f => f.Racks.Contains(rack)).Select(f => f.Name), group.Feeds);
                }
            }
        }
    }

    private static string Text(Plan plan, FabricOption option)
    {
        using var stream = new MemoryStream();
        OptionPlan.Write(plan, option, path => path, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static IEnumerable<string> Feeds(Plan plan, Func<Rack, bool> isIn) => plan.Power
        .Select(f => Facts(f with { Racks = [] })
            + string.Join(' ', f.Racks.Select(r => plan.Building.Racks[r]).Where(isIn).Select(r => r.Name)))
        .Where(f => f.Contains('/', StringComparison.Ordinal));

    /// <summary>Every property of a thing of the model, and of the things in it, as text; numbers given by order and places in the text of
    /// a plan aside.</summary>
    private static string Facts(object? thing)
    {
        if (thing is null) return "none";
        if (thing is double number) return Math.Round(number, 6).ToString(CultureInfo.InvariantCulture);
        if (thing is string or Enum or IFormattable or Ratio) return Convert.ToString(thing, CultureInfo.InvariantCulture) ?? "";
        if (thing is bool flag) return flag ? "yes" : "no";
        if (thing is SourceSpan or Citation) return "";
        if (thing is IEnumerable many) return "[" + string.Join("; ", many.Cast<object?>().Select(Facts)) + "]";
        var facts = thing.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(p => p.GetIndexParameters().Length == 0 && p.Name != "Index")
            .Select(p => p.Name + "=" + Facts(p.GetValue(thing)));
        return thing.GetType().Name + "{" + string.Join(", ", facts) + "}";
    }

    /// <summary>The files of a folder with one more beside them.</summary>
    private sealed class Beside(PlanFiles files, string path, string text) : PlanFiles
    {
        public override SourceText? Read(string named) => named == path ? new SourceText(path, text) : files.Read(named);
    }
}
