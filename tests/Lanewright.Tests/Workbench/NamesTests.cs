using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Lanewright.Tests.Workbench;

/// <summary>Names for those who do not see the pages. Held against WCAG 2.2: success criteria 1.1.1, 1.3.1, 2.4.1, 2.4.2, 2.4.4, 3.1.1
/// and 4.1.2.</summary>
public sealed class NamesTests(OpenedDemo demo) : IClassFixture<OpenedDemo>
{
    public static TheoryData<string> Sheets => new("brief", "floor", "racks", "fabric", "links", "links/L000300", "lines", "plant", "parts",
        "parts/fixed-32x400", "findings", "plan", "compare", "documents", "devices/spine-1", "rules/LW2401", "find?q=spine", "why/price",
        "why/power", "why/devices", "why/cables", "why/rack/bay/survey/A/01",
        "why/tray/survey/over-S", "why/trunk/headland", "why/verdicts", "why/length/L000300", "why/channel/W01a/1",
        "why/delay/W01a", "why/uptime/W01a",
        "why/down/D05?down=sleaf-01", "classes/K001");

    [Theory]
    [MemberData(nameof(Sheets))]
    public async Task EverythingOnASheet_HasAName(string sheet)
    {
        var (status, text) = await demo.Get(sheet);
        Assert.Equal(System.Net.HttpStatusCode.OK, status);
        var page = XDocument.Parse(Regex.Replace(text, "<!DOCTYPE html>", "")).Root!;
        Assert.Equal("en-GB", page.Attribute("lang")?.Value);
        Assert.NotEmpty(All(page, "title").First().Value);
        Assert.Single(All(page, "main"));
        Assert.Single(All(page, "h1"));
        Assert.All(All(page, "nav").Concat(All(page, "footer")), e => Named(e));
        Assert.Contains(All(page, "a"), a => a.Attribute("href")?.Value == "#sheet");
        // The tables of the report have a heading right above them instead of a caption.
        Assert.All(All(page, "table").Where(t => t.Parent?.Attribute("class")?.Value.StartsWith("roll", StringComparison.Ordinal) == true),
            t => Assert.NotEmpty(All(t, "caption").Single().Value));
        Assert.All(All(page, "th"), h => Assert.Equal("col", h.Attribute("scope")?.Value));
        Assert.All(All(page, "a").Concat(All(page, "button")), Named);
        var labels = All(page, "label").Select(l => l.Attribute("for")?.Value).ToHashSet();
        Assert.All(All(page, "input").Concat(All(page, "textarea")),
            i => Assert.True(i.Attribute("aria-label") is not null || labels.Contains(i.Attribute("id")?.Value), i.ToString()));
        Assert.All(All(page, "svg"), Drawing);
        var ids = page.DescendantsAndSelf().Select(e => e.Attribute("id")?.Value).OfType<string>().ToList();
        Assert.Equal(ids.Distinct(), ids);
    }

    [Fact]
    public async Task Documents_SayWhatTheyHold()
    {
        var (_, text) = await demo.Get("documents");
        var page = XDocument.Parse(Regex.Replace(text, "<!DOCTYPE html>", "")).Root!;
        var rows = All(page, "tbody").SelectMany(b => All(b, "tr")).ToList();
        Assert.True(rows.Count >= 15, "the demo has lines, trunks and feeds, and so all documents");
        Assert.All(rows, r => Assert.NotEmpty(All(r, "td").Last().Value.Trim()));
    }

    private static void Drawing(XElement drawing)
    {
        if (drawing.Attribute("aria-hidden")?.Value == "true" || drawing.Attribute("aria-label") is not null) return;
        var names = drawing.Attribute("aria-labelledby")!.Value.Split(' ');
        Assert.Equal(2, names.Length);
        Assert.All(names, name => Assert.NotEmpty(drawing.Descendants().Single(e => e.Attribute("id")?.Value == name).Value));
    }

    private static void Named(XElement element) =>
        Assert.True(element.Attribute("aria-label") is { Value.Length: > 0 } || element.Value.Trim().Length > 0, element.ToString());

    private static IEnumerable<XElement> All(XElement page, string name) => page.Descendants().Where(e => e.Name.LocalName == name);
}
