using System.Text;
using System.Text.RegularExpressions;
using Lanewright.Deliverables.Labels;

namespace Lanewright.Tests.Deliverables;

/// <summary>Labels of cable ends. Source of what they hold: near and far identifier at both ends, TIA-606 and ISO/IEC TR 14763-2-1 as
/// abstracts quote them (seen).</summary>
public sealed partial class CableLabelTests
{
    private const string Plan = """
        lanewright: 1
        sites: { main: { halls: { 1b: { rows: { AK: { racks: 8 } } } } } }
        devices:
          leaf: { model: fixed-32x400, racks: 1b/AK/1, unit: 38 }
          spine: { model: fixed-32x400, racks: 1b/AK/2, unit: 40 }
          host: { model: server-2u, cards: nic-2x200, racks: 1b/AK/1, per-rack: 2, unit: 2 }
        links:
          up: { from: leaf, to: spine, pattern: paired, count: 2, rate: 400G }
          edge: { from: host, to: { of: leaf, breakout: 2x200G }, pattern: each-to-each, rate: 200G }
        """;

    [Fact]
    public void BothEnds_NameTheNearPortAndThenTheFar()
    {
        var labels = CableLabels.All(Expect.Designed(PlanBlock.Compile(Plan))).ToList();
        // Two cables with two ends, and a fan-out with a root and two legs.
        Assert.Equal((2 * 2) + 3, labels.Count);
        var up = labels.Where(l => l.Near.Contains("AK02", StringComparison.Ordinal)).ToList();
        Assert.Equal(2, up.Count);
        Assert.All(up, l => Assert.Contains(labels, o => o.Cable == l.Cable && o.Near == l.Far && o.Far == l.Near));
        Assert.All(labels, l => Assert.Matches(Form(), l.Near));
    }

    [Fact]
    public void FanOut_HasOneRootAndALabelForEachLeg()
    {
        var edge = CableLabels.All(Expect.Designed(PlanBlock.Compile(Plan))).GroupBy(l => l.Cable).Single(g => g.Count() == 3).ToList();
        var root = edge.Single(l => l.Far.EndsWith(" and 1 more", StringComparison.Ordinal));
        Assert.Equal("to", root.End);
        Assert.Equal(["from 1", "from 2"], edge.Where(l => l != root).Select(l => l.End).Order());
    }

    [Fact]
    public void Sheet_HoldsEveryLabelAndEscapesNames()
    {
        using var stream = new MemoryStream();
        const string own = "\nname: \"<b>x\"\nlabels: { width: 38 mm, height: 21 mm, columns: 5, left: 10 mm }";
        LabelSheets.Write(Expect.Designed(PlanBlock.Compile(Plan + own)), stream);
        var text = Encoding.UTF8.GetString(stream.ToArray());
        // Two racks, four devices and seven plugs.
        Assert.Equal(13, text.Split("width=\"38\" height=\"21\" class=\"cut\"").Length - 1);
        Assert.DoesNotContain("<b>x", text, StringComparison.Ordinal);
    }

    // Source: reference notes on TIA-606 (own example there): room, rack by grid coordinate, unit in two digits, port in two or three.
    [GeneratedRegex("^[0-9A-Z]+\\.[A-Z]{2}[0-9]{2}-[0-9]{2}:[0-9]{1,3}(/[0-9]+)*$")]
    private static partial Regex Form();
}
