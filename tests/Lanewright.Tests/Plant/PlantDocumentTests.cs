using System.Globalization;
using System.Text;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings;
using Lanewright.Rules;
using Lanewright.Tests.Deliverables;

namespace Lanewright.Tests.Plant;

/// <summary>What documents say of trunks: the report, the drawings of light paths, and labels that can be read.</summary>
public sealed class PlantDocumentTests
{
    private const string Plan = """
        lanewright: 1
        name: shown
        labels: { width: 25 mm, height: 9 mm, columns: 7, rows: 28 }
        sites: { main: { halls: { m: { rows: { A: { racks: 2 }, C: { racks: 2, y: 6 m } } } } } }
        devices:
          l4: { model: fixed-32x400, racks: m/A/1, unit: 44 }
          s4: { model: fixed-32x400, racks: m/C/1, unit: 44 }
          oa: { model: panel-1u-12, racks: m/A/2, unit: 40 }
          ob: { model: panel-1u-12, racks: m/C/2, unit: 30 }
        trunks:
          good: { from: oa, to: ob, cable: trunk-os2-8, type: B }
          swapped: { from: oa, to: ob, cable: trunk-os2-8, type: C }
        links:
          a: { from: l4, to: s4, rate: 400G, type: 400GBASE-DR4, through: good }
          b: { from: l4, to: s4, rate: 400G, type: 400GBASE-DR4, through: swapped }
        """;

    private static readonly JudgedPlan Judged = PlanBlock.Compile(Plan);

    /// <summary>The lanes, what they arrive at, and the verdict stand on the drawing; 400GBASE-DR4 has four lanes each way: IEEE 802.3
    /// clause 124 (memory).</summary>
    [Theory]
    [InlineData("T01", "pass", "tx 1 arrives at rx 1")]
    [InlineData("T02", "fail", "tx 1 arrives at rx 2")]
    public void Trace_ShowsLanesAndVerdict(string sheet, string verdict, string arrival)
    {
        var drawing = Encoding.UTF8.GetString(Delivered.File(Judged, $"drawings/{sheet}-trace.svg"));
        Assert.Contains($"verdict {verdict}", drawing, StringComparison.Ordinal);
        Assert.Contains(arrival, drawing, StringComparison.Ordinal);
        Assert.Contains(">Never look into an open end, whatever is said to be switched off.</text>", drawing, StringComparison.Ordinal);
        for (var lane = 1; lane <= 4; lane++)
            foreach (var end in new[] { "tx", "rx" })
                Assert.Contains($">{end} {lane.ToString(CultureInfo.InvariantCulture)}</text>", drawing, StringComparison.Ordinal);
    }

    // Light gets through all of these: what else is wrong with a trunk is in its verdict too.
    [Theory]
    [InlineData("type: B }", "through: good }", "pass", "")]
    [InlineData("type: B }", "through: good, count: 2 }", "fail", "LW4201")]
    [InlineData("type: B, measured-loss: 4.5 dB }", "through: good }", "fail", "LW4209")]
    public void Trunks_TakeTheirFindingsIntoTheVerdict(string trunk, string links, string verdict, string codes)
    {
        var judged = PlanBlock.Compile(Plan.Replace("type: B }", trunk, StringComparison.Ordinal)
            .Replace("through: good }", links, StringComparison.Ordinal));
        var view = TrunksView.Of(Expect.Designed(judged));
        var names = view.Columns.Select(c => c.Name).ToList();
        var row = view.Rows().Single(r => r[0].Text == "good");
        Assert.Equal(("crossed", verdict, codes),
            (row[names.IndexOf("polarity")].Text, row[names.IndexOf("verdict")].Text, row[names.IndexOf("findings")].Text));
    }

    // Types of cables and adapters share their letters: each is said with what it is.
    [Fact]
    public void TrunkInWait_IsToldPartByPart()
    {
        var judged = PlanBlock.Compile(Plan[..Plan.IndexOf("  b: { from: l4", StringComparison.Ordinal)]);
        var finding = Assert.Single(judged.Findings, f => f.Kind.Code == "LW4202");
        Assert.Contains("'swapped' of adapter A, cable C, adapter A: ", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_HasTheTrunks()
    {
        var report = Encoding.UTF8.GetString(Delivered.File(Judged, "report.html"));
        foreach (var said in (string[])["id=\"plant\"", "href=\"#plant\"", "test, edition E, dB", "trunk may show, dB",
            "cheapest with places",
            "Fronts of panels", "The way of C000002"])
            Assert.Contains(said, report, StringComparison.Ordinal);
    }

    /// <summary>On a label 9 mm high the third line would stand in letters of 1.4 mm: it is left to the table. A label too narrow for its
    /// text says so. 5 pt (1.8 mm) is taken for the smallest letters that are read on a rack: common practice.</summary>
    [Fact]
    public void LowLabel_HasTwoLinesThatCanBeRead()
    {
        var rows = Delivered.Table(Judged, "labels.csv").Select(r => r.Split(',')).ToList();
        var letters = rows.Skip(1).Select(r => double.Parse(r[^1], CultureInfo.InvariantCulture)).ToList();
        Assert.Equal("letters-mm", rows[0][^1].TrimEnd());
        Assert.All(rows.Skip(1).Zip(letters).Where(r => r.First[1].Length < 12 && r.First[2].Length < 12),
            r => Assert.True(r.Second >= 1.8, string.Join(',', r.First)));
        var narrow = PlanBlock.Compile(Plan.Replace("l4", "controller-of-the-northern-storage-hall", StringComparison.Ordinal));
        Assert.Contains("letters are smaller than 1.8 mm",
            Encoding.UTF8.GetString(Delivered.File(narrow, "labels.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("storage-controller-of-tenant-17", "-17")]
    [InlineData("primary-supply-north-b", "-b")]
    public void LongName_KeepsItsBeginningAndItsNumber(string name, string end)
    {
        var shown = TextFit.Middle(name, 80, 9.5);
        Assert.True(TextFit.Width(shown, 9.5) <= 80);
        Assert.StartsWith(name[..3], shown, StringComparison.Ordinal);
        Assert.EndsWith(end, shown, StringComparison.Ordinal);
        Assert.Equal(name, TextFit.Middle(name, 1000, 9.5));
    }
}
