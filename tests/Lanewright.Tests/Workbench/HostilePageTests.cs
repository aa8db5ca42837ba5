using System.Net;
using System.Xml.Linq;

namespace Lanewright.Tests.Workbench;

/// <summary>Names that look like markup stay names on every sheet.</summary>
public sealed class HostilePageTests
{
    internal const string Plan = """
        lanewright: 1
        name: "<script>alert(1)</script>"
        title: "</title><img src=x onerror=alert(2)>"
        revision: "<i>7</i>"
        devices:
          "<b>g": { model: fixed-32x400, count: 2, name: "<img src=x onerror=alert(3)>{n}" }
          "b\"'": { model: fixed-32x400, count: 2, name: "\"'><svg onload=alert(4)>{n}" }
        links:
          "set</textarea><script>alert(5)</script>": { from: "<b>g", to: "b\"'", rate: 400G, type: 400GBASE-DR4, length: 100 m }
        """;

    /// <summary>A plan in which everything that may have a name has a hostile one.</summary>
    private const string Whole = """
        lanewright: 1
        name: "<script>alert(1)</script>"
        title: "</title><img src=x onerror=alert(2)>"
        revision: "<i>7</i>"
        date: "<b>d</b>"
        sites:
          "<img src=s onerror=alert(10)>":
            halls:
              "<img src=h onerror=alert(11)>":
                rows: { "<img src=r onerror=alert(12)>": { racks: 4 } }
                pathways: { "<img src=p onerror=alert(13)>": { from: { x: -1 m, y: 0 m }, to: { x: 4 m, y: 0 m },
                        width: 300 mm, depth: 100 mm } }
          "<svg onload=alert(14)>": { halls: { g: { rows: { A: { racks: 2 } } } } }
        devices:
          "<b>g": { model: fixed-32x400, count: 2, name: "<img src=x onerror=alert(3)>{n}",
            racks: "<img src=h onerror=alert(11)>/<img src=r onerror=alert(12)>/1..2",
            unit: 40, feeds: ["<img src=f onerror=alert(15)>"] }
          "b\"'": { model: fixed-32x400, count: 2, name: "\"'><svg onload=alert(4)>{n}",
            racks: "<img src=h onerror=alert(11)>/<img src=r onerror=alert(12)>/3..4",
            unit: 40 }
          "<img src=hosts onerror=alert(16)>": { model: server-2u, cards: nic-2x200, count: 4,
            racks: "<img src=h onerror=alert(11)>/<img src=r onerror=alert(12)>/1..4",
            unit: 4 }
          "<img src=odf onerror=alert(21)>": { model: panel-1u-12, count: 2,
            racks: "<img src=h onerror=alert(11)>/<img src=r onerror=alert(12)>/1..2",
            unit: 30 }
        trunks: { "<img src=t onerror=alert(22)>": { from: "<img src=odf onerror=alert(21)>-1",
            to: "<img src=odf onerror=alert(21)>-2",
            cable: trunk-os2-12, cassette: cassette-lc-sm, method: A } }
        power: { "<img src=f onerror=alert(15)>": { racks: "<img src=h onerror=alert(11)>/<img src=r onerror=alert(12)>/1..4",
            volts: 230 V, phases: 1, breaker: 32 A } }
        links:
          "set</textarea><script>alert(5)</script>": { from: "<b>g", to: "b\"'", rate: 400G, type: 400GBASE-DR4, count: 4 }
          "<img src=e onerror=alert(17)>": { from: "<img src=hosts onerror=alert(16)>", to: "<b>g",
            rate: 200G, pattern: each-to-each }
        demands: { "<img src=d onerror=alert(18)>": { kind: all-to-all, among: "<img src=hosts onerror=alert(16)>" } }
        spans: { "<img src=sp onerror=alert(19)>": { from: "<img src=s onerror=alert(10)>", to: "<svg onload=alert(14)>",
            length: 20 km } }
        lines: { "<img src=l onerror=alert(20)>": { from: "<img src=s onerror=alert(10)>", to: "<svg onload=alert(14)>",
            channels: 2, rate: 400G } }

        """;

    [Fact]
    public async Task EverySheet_HoldsNoNameAsMarkupWhateverHasIt()
    {
        await using var plan = await OpenedPlan.OfText(Whole);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("findings").EnumerateArray()
            .All(f => f.GetProperty("severity").GetString() != "error"));
        string[] hall = ["<img src=h onerror=alert(11)>", "<img src=r onerror=alert(12)>"];
        string[] sheets =
        [
            "brief", "options", "floor", "racks", "fabric", "links", "lines", "plant", "parts", "findings", "plan", "compare", "documents",
            "why/price", "why/power", "why/verdicts", "why/length/L000001",
            $"why/tray/{Uri.EscapeDataString(hall[0])}/" + Uri.EscapeDataString("<img src=p onerror=alert(13)>"),
            "why/feed/" + Uri.EscapeDataString("<img src=f onerror=alert(15)>"),
            $"racks/{Uri.EscapeDataString(hall[0])}/{Uri.EscapeDataString(hall[1])}/01",
            "why/channel/W01a/1", "why/delay/W01a", "why/uptime/W01a", "find?q=img",
            "documents/drawings/E01-front.svg", "fabric?down=" + Uri.EscapeDataString("<img src=x onerror=alert(3)>1"),
        ];
        foreach (var sheet in sheets)
        {
            var (status, page) = await plan.Ready(sheet);
            Assert.True(status == HttpStatusCode.OK, $"{sheet}: {status}");
            // Read as a browser reads it: nothing is an image, one script is the workbench's own, and nothing listens.
            var read = XDocument.Parse(page.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal)).Root!.DescendantsAndSelf().ToList();
            Assert.DoesNotContain(read, e => e.Name.LocalName is "img" or "u");
            Assert.Single(read, e => e.Name.LocalName == "script");
            Assert.DoesNotContain(read.Attributes(), at => at.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
            Assert.DoesNotContain(read.Attributes("href"), at => at.Value.StartsWith("javascript:", StringComparison.OrdinalIgnoreCase));
        }
    }

    [Theory]
    [InlineData("brief")]
    [InlineData("links")]
    [InlineData("links/L000001")]
    [InlineData("classes/K001")]
    [InlineData("findings")]
    [InlineData("plan")]
    [InlineData("parts")]
    [InlineData("fabric")]
    [InlineData("documents")]
    [InlineData("find?q=alert")]
    [InlineData("find?q=%3Cscript%3Ealert(6)%3C/script%3E")]
    [InlineData("links?q=%22%3E%3Cscript%3Ealert(7)%3C/script%3E")]
    [InlineData("devices/%3Cimg%20src=x%20onerror=alert(3)%3E1")]
    [InlineData("%3Cscript%3Ealert(8)%3C/script%3E")]
    [InlineData("rules/%3Cscript%3E")]
    public async Task Sheet_HoldsNoNameAsMarkup(string sheet)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await plan.Version("plan.yaml");
        var (_, page) = await plan.Ready(sheet);
        Assert.DoesNotContain("<script>", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<svg onload", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>g", page, StringComparison.Ordinal);
        Assert.Contains("&lt;", page, StringComparison.Ordinal);
        // What may carry a script is the workbench's own element alone.
        Assert.Equal(1, page.Split("<script", StringSplitOptions.None).Length - 1);
        Assert.DoesNotMatch("""<[^>]* on\w+=""", page);
    }

    [Fact]
    public async Task Device_IsFoundUnderItsHostileName()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await plan.Version("plan.yaml");
        var (status, page) = await plan.Ready("devices/" + Uri.EscapeDataString("<img src=x onerror=alert(3)>1"));
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains("L000001", page, StringComparison.Ordinal);
    }
}
