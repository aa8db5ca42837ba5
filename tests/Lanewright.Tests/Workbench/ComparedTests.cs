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
