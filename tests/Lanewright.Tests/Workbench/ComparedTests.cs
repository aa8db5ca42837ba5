using System.Net;
using System.Text.RegularExpressions;

namespace Lanewright.Tests.Workbench;

/// <summary>What the sheet What if says of two texts: an error hides things and mends nothing, and other numbers are no other
/// finding.</summary>
public sealed class ComparedTests
{
    [Fact]
    public async Task BrokenText_IsNoGain()
    {
        await using var plan = await OpenedPlan.OfExample("kestrel-bay");
        await Type(plan, "storage.yaml", "dleaf: { model: fixed-32x800,", "dleaf: { model: fixed-32x800z,", "NameUnknown");
        foreach (var sheet in new[] { "brief", "findings", "compare" })
        {
            var page = await Sheet(plan, sheet);
            Assert.Contains("16 rules about networks and loads wait until they are mended", page, StringComparison.Ordinal);
            Assert.Contains("figures leave out what the errors hide; 16 rules wait", page, StringComparison.Ordinal);
        }
        var compared = await Sheet(plan, "compare");
        var (gone, notJudged) = (Part(compared, "Findings that are gone"), Part(compared, "Findings that are not judged until"));
        Assert.DoesNotContain("LW3108", gone, StringComparison.Ordinal);
        Assert.Contains("LW3108", notJudged, StringComparison.Ordinal);
        // Of all differences only the new error is one.
        Assert.Equal(["+1"], Differences(compared));
        Assert.DoesNotMatch(@">[+-]\d", Part(compared, "parts that differ").Split("</table>")[0]);
        Assert.DoesNotContain("least margin, dB", compared, StringComparison.Ordinal);
        Assert.DoesNotContain("has errors", await Sheet(plan, "brief?as=saved"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task FindingsWithOtherNumbers_AreNeitherNewNorGone()
    {
        await using var plan = await OpenedPlan.OfExample("kestrel-bay");
        await Type(plan, "storage.yaml", "per-rack: 6,", "per-rack: 5,", "hosts of 330");
        var page = await Sheet(plan, "compare");
        Assert.DoesNotContain("Findings that are new", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Findings that are gone", page, StringComparison.Ordinal);
        var changed = Part(page, "Findings that say other numbers, 4");
        Assert.Contains("234 hosts of 330 are cut off", changed, StringComparison.Ordinal);
        Assert.Contains("as saved: when tray survey/over-S is lost, 238 hosts of 334 are cut off", changed, StringComparison.Ordinal);
        // The margin is as it was, so no difference stands beside it.
        Assert.Contains("least margin of loss, dB", page, StringComparison.Ordinal);
        Assert.DoesNotContain(Differences(page), d => d.Contains("0.00", StringComparison.Ordinal));
    }

    /// <summary>Documents, drawings and answers to a search can be had of either text, and of both side by side.</summary>
    [Fact]
    public async Task DocumentsAndSearch_AreShownOfEitherText()
    {
        await using var plan = await OpenedPlan.OfText(Small);
        await Type(plan, "plan.yaml", "unit: 20", "unit: 12", "parts that differ");
        Assert.Contains("files/cables.csv?as=saved", await Sheet(plan, "documents?as=saved"), StringComparison.Ordinal);
        var (saved, typed) = ((await plan.Get("files/cables.csv?as=saved")).Text, (await plan.Get("files/cables.csv")).Text);
        Assert.NotEqual(saved, typed);
        foreach (var sheet in new[] { "documents", "find?q=leaf" })
        {
            var both = await Sheet(plan, sheet + (sheet.Contains('?', StringComparison.Ordinal) ? "&as=both" : "?as=both"));
            Assert.Contains("aria-label=\"as saved\"", both, StringComparison.Ordinal);
            Assert.Contains("aria-label=\"as typed\"", both, StringComparison.Ordinal);
        }
    }

    /// <summary>Links can be had of either text, and those that only their margin tells apart are listed.</summary>
    [Fact]
    public async Task Links_AreShownOfEitherTextAndThoseThatChangedAreListed()
    {
        await using var plan = await OpenedPlan.OfText(Small);
        await Type(plan, "plan.yaml", "unit: 20", "unit: 12", "parts that differ");
        Assert.Contains("data-as=\"saved\"", await Sheet(plan, "links?as=saved"), StringComparison.Ordinal);
        var (saved, typed) = ((await plan.Get("rows?count=9&as=saved")).Text, (await plan.Get("rows?count=9")).Text);
        Assert.NotEqual(saved, typed);
        Assert.DoesNotContain(">both</a>", await Sheet(plan, "links"), StringComparison.Ordinal);
        var changed = Part(await Sheet(plan, "compare"), "Links whose margin or verdict changed, 2");
        var margins = Regex.Matches(saved + typed, @"([\d.]+) dB").Select(m => m.Groups[1].Value).Distinct().ToList();
        Assert.Equal(2, margins.Count);
        Assert.All(margins, m => Assert.Contains($">{m}<", changed, StringComparison.Ordinal));
        var lines = Part(await Sheet(plan, "compare"), "Lines of plan.yaml that differ, 1");
        Assert.Contains("unit: 20", lines, StringComparison.Ordinal);
        Assert.Contains("unit: 12", lines, StringComparison.Ordinal);
        Assert.Contains("Lines that differ: on What if", await Sheet(plan, "plan"), StringComparison.Ordinal);
    }

    /// <summary>A name that would turn the words after it is shown with what turns them written out.</summary>
    [Fact]
    public async Task NameThatTurnsWhatFollows_IsWrittenOut()
    {
        await using var plan = await OpenedPlan.OfText(Small.Replace("name: small", "name: small\ntitle: \"a\\u202Eb\"",
            StringComparison.Ordinal).Replace("  l: {", "  \"l\\u2067m\": {", StringComparison.Ordinal));
        await plan.Version("plan.yaml");
        var (brief, rows) = (await Sheet(plan, "brief"), (await plan.Get("rows?count=9")).Text);
        Assert.Contains("a\\u202Eb", brief, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', brief);
        using var json = System.Text.Json.JsonDocument.Parse(rows);
        Assert.Equal("l\\u2067m", json.RootElement.GetProperty("rows")[0][2].GetString());
    }

    private const string Small = """
        lanewright: 1
        name: small
        policy: { connection-grade: B, connection-loss: 0.3 dB }
        sites: { s: { halls: { h: { rows: { A: { racks: 40 } } } } } }
        devices:
          a: { model: fixed-32x400, racks: s/h/A/1, unit: 40 }
          b: { model: fixed-32x400, racks: s/h/A/1, unit: 20 }
        links:
          l: { from: a, to: b, rate: 400G, count: 2 }
        """;

    private static async Task Type(OpenedPlan plan, string file, string old, string text, string shows)
    {
        var version = await plan.Version(file);
        var whole = plan.OnDisk(file);
        Assert.Contains(old, whole, StringComparison.Ordinal);
        await plan.Post($"type?file={file}&version={version}", whole.Replace(old, text, StringComparison.Ordinal));
        await Patience.Until("the typed text is on the sheets",
            async () => (await plan.Get("compare")).Text.Contains(shows, StringComparison.Ordinal));
    }

    private static async Task<string> Sheet(OpenedPlan plan, string sheet) => WebUtility.HtmlDecode((await plan.Ready(sheet)).Text);

    /// <summary>From a heading to the next one; empty without it.</summary>
    private static string Part(string page, string heading)
    {
        var at = page.IndexOf(heading, StringComparison.Ordinal);
        if (at < 0) return "";
        var end = page.IndexOf("<h2", at, StringComparison.Ordinal);
        return page[at..(end < 0 ? page.Length : end)];
    }

    private static List<string> Differences(string page) => [.. Regex
        .Matches(Part(page, "headline numbers"), "<span class=\"bold\">([^<]+)</span>").Select(m => m.Groups[1].Value)];
}
