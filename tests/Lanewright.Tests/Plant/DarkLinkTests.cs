using System.Text.Json;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Links;
using Lanewright.Rules;

namespace Lanewright.Tests.Plant;

/// <summary>A link that stays dark is no pass, whatever its loss. Angled ends do not meet key up to key up: a note on TIA-568.3-E (seen);
/// type C exchanges the lanes of parallel optics: TIA-568.3 (seen), position by position derived; how type B joins two rows was not
/// read, so nothing is proved of it.</summary>
public sealed class DarkLinkTests
{
    private const string Plan = """
        lanewright: 1
        name: dark
        policy: { connection-loss: 0.35 dB }
        sites: { main: { halls: { m: { rows: { A: { racks: 8 }, B: { racks: 10, y: 3 m }, C: { racks: 10, y: 6 m } } } } } }
        devices:
          l1: { model: fixed-48x25-8x100, racks: m/A/1, unit: 44 }
          l4: { model: fixed-32x400, racks: m/A/3, unit: 44 }
          s1: { model: fixed-48x25-8x100, racks: m/C/1, unit: 44 }
          s4: { model: fixed-32x400, racks: m/C/3, unit: 44 }
          oa: { model: panel-1u-12, racks: m/B/1..8, unit: 40, name: "oa{n}" }
          ob: { model: panel-1u-12, racks: m/C/9..10, per-rack: 4, unit: 30, name: "ob{n}" }
        trunks:
          good: { from: oa1, to: ob1, cable: trunk-os2-12, cassette: cassette-lc-sm, method: A }
          angledB: { from: oa2, to: ob2, cable: trunk-os2-12, cassette: cassette-lc-sm, method: B }
          rows: { from: oa3, to: ob3, cable: trunk-om4-24, cassette: cassette-lc-mm-12, method: B }
          openC: { from: oa4, to: ob4, cable: trunk-os2-12, count: 2, type: C }
          flat: { from: oa5, to: ob5, cable: trunk-om4-12, cassette: cassette-lc-sm }
          full: { from: oa6, to: ob6, cable: trunk-os2-8, count: 2 }
        links:
          a: { from: l4, to: s4, rate: 400G, type: 400GBASE-FR4, count: 2, through: good }
          b: { from: l4, to: s4, rate: 400G, type: 400GBASE-FR4, count: 2, through: angledB }
          c: { from: l1, to: s1, rate: 25G, type: 25GBASE-SR, count: 2, through: rows }
          d: { from: l4, to: s4, rate: 400G, type: 400GBASE-DR4, count: 2, through: openC }
          e: { from: l1, to: s1, rate: 25G, type: 25GBASE-SR, count: 2, through: flat }
          f: { from: l4, to: s4, rate: 400G, type: 400GBASE-DR4, count: 3, through: full }
        """;

    private static readonly JudgedPlan Judged = PlanBlock.Compile(Plan);
    private static readonly DesignedPlan Designed = Expect.Designed(Judged);

    /// <summary>Pass: a and two of f. Unproven: c. Fail: b, d, e and the third of f, for which no port is left.</summary>
    [Fact]
    public void Totals_CountDarkLinksAsFailed()
    {
        var summary = PlanSummary.Of(Designed);
        Assert.Equal((4L, 2L, 7L), (summary.Passing, summary.Unproven, summary.Failing));
    }

    [Theory]
    [InlineData("a", Verdict.Pass)]
    [InlineData("b", Verdict.Fail)]
    [InlineData("c", Verdict.Unproven)]
    [InlineData("d", Verdict.Fail)]
    [InlineData("e", Verdict.Fail)]
    [InlineData("f", Verdict.Pass)]
    public void Verdict_TakesInPolarityAndMating(string set, Verdict expected) =>
        Assert.All(Designed.Design.Choices.Where(c => c.Class.Statement.Name == set), c => Assert.Equal(expected, c.Verdict));

    /// <summary>The comparison of a class and the way that its links are followed on say the same.</summary>
    [Fact]
    public void Comparison_IsThatOfTheWayFollowed() => Assert.All(Designed.Plant.Value.Ways, way => Assert.Equal(
        way.Polarity.Verdict, Designed.Design.SolutionOf(way.FirstLink)!.Checks.Single(c => c.Name == CheckNames.Polarity).Verdict));

    [Theory]
    [InlineData("good", "crossed", "pass")]
    [InlineData("angledB", "not mated", "fail")]
    [InlineData("rows", "unknown", "unproven")]
    [InlineData("openC", "lanes exchanged", "fail")]
    [InlineData("flat", "crossed", "fail")]
    public void Trunks_SayWhatBecomesOfLight(string trunk, string polarity, string verdict)
    {
        var view = TrunksView.Of(Designed);
        var names = view.Columns.Select(c => c.Name).ToList();
        var row = view.Rows().Single(r => r[0].Text == trunk);
        Assert.Equal((polarity, verdict), (row[names.IndexOf("polarity")].Text, row[names.IndexOf("verdict")].Text));
    }

    /// <summary>One cause, one finding: what trunks lead astray is not said again of every link.</summary>
    [Fact]
    public void Findings_SpeakOfTheTrunksOnce()
    {
        Assert.Equal(["b", "d"], Judged.Findings.Where(f => f.Kind.Code == "LW4202").Select(f => f.Subject).Order());
        Assert.Equal(["c"], Judged.Findings.Where(f => f.Kind.Code == "LW4203").Select(f => f.Subject));
        Assert.DoesNotContain(Judged.Findings, f => f.Kind.Code is "LW2701" or "LW2702");
    }

    [Fact]
    public void LinksJson_HasTheVerdict()
    {
        using var stream = new MemoryStream();
        LinksJson.Write(Designed, stream);
        using var read = JsonDocument.Parse(stream.ToArray());
        var verdicts = read.RootElement.GetProperty("classes").EnumerateArray()
            .ToLookup(c => c.GetProperty("set").GetString(), c => c.GetProperty("verdict").GetString());
        Assert.Equal(["fail"], verdicts["b"].Distinct());
        Assert.Equal(["unproven"], verdicts["c"].Distinct());
    }

    [Fact]
    public void LinkWithoutAPort_IsTracedAsFailed()
    {
        var last = Designed.Plant.Value.Portless.Single();
        var traced = TracedCable.Followed(Designed, new NamedLink(last, IsWholeCable: true))!;
        Assert.Equal(Verdict.Fail, traced.Legs.Single().Verdict);
    }
}
