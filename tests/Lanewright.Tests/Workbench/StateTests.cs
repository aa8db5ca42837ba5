using System.Net;

namespace Lanewright.Tests.Workbench;

/// <summary>Sheets that have nothing to show say so in words, and say what would change that.</summary>
public sealed class StateTests
{
    private const string Small = "lanewright: 1\nname: small\ndevices: { a: { model: fixed-32x400, count: 2 } }\n";
    private const string Unreadable = "lanewright: 1\nname: [\n";

    [Theory]
    [InlineData("options", "A section 'wanted'")]
    [InlineData("floor", "A section 'sites'")]
    [InlineData("racks", "No device stands in a rack")]
    [InlineData("fabric", "A section 'demands'")]
    [InlineData("links", "no links yet")]
    [InlineData("lines", "no line between sites")]
    [InlineData("plant", "the section 'trunks'")]
    [InlineData("compare", "Change")]
    [InlineData("find", "Type a device")]
    public async Task SheetWithNothingToShow_SaysWhatWouldFillIt(string sheet, string words)
    {
        await using var plan = await OpenedPlan.OfText(Small);
        await plan.Version("plan.yaml");
        var (status, page) = await plan.Ready(sheet);
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains(words, WebUtility.HtmlDecode(page), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("brief")]
    [InlineData("options")]
    [InlineData("floor")]
    [InlineData("racks")]
    [InlineData("fabric")]
    [InlineData("links")]
    [InlineData("lines")]
    [InlineData("plant")]
    [InlineData("parts")]
    [InlineData("findings")]
    [InlineData("why/price")]
    public async Task PlanThatDoesNotParse_IsToldOnEverySheet(string sheet)
    {
        await using var plan = await OpenedPlan.OfText(Unreadable);
        await plan.Version("plan.yaml");
        var (status, page) = await plan.Ready(sheet);
        Assert.Equal(HttpStatusCode.OK, status);
        var text = WebUtility.HtmlDecode(page);
        string[] words = ["cannot be read", "Nothing can be made", "plan.yaml:"];
        Assert.True(words.Any(w => text.Contains(w, StringComparison.Ordinal)), text);
    }

    [Fact]
    public async Task FileThatIsGone_IsToldKeptOnTheSheetsAndWrittenAgain()
    {
        await using var plan = await OpenedPlan.OfText(Small);
        var version = await plan.Version("plan.yaml");
        var path = Path.Combine(plan.Folder, "plan.yaml");
        File.Delete(path);
        await Until(plan, "is not on disk any more", isThere: true);
        Assert.Contains("fixed-32x400", (await plan.Ready("parts")).Text, StringComparison.Ordinal);
        var (status, _) = await plan.Post($"save?file=plan.yaml&version={version}");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal(Small, plan.OnDisk("plan.yaml"));
        await Until(plan, "is not on disk any more", isThere: false);
    }

    /// <summary>Text of another encoding, one larger than the largest plan, a folder.</summary>
    [Theory]
    [InlineData("no UTF-8 text")]
    [InlineData("larger than 16 MiB")]
    [InlineData("a folder")]
    public async Task FileThatCannotBeReadAnyMore_IsToldAndNotWrittenOver(string why)
    {
        await using var plan = await OpenedPlan.OfText(Small);
        var typed = Small.Replace("count: 2", "count: 3", StringComparison.Ordinal);
        await plan.Post($"type?file=plan.yaml&version={await plan.Version("plan.yaml")}", typed);
        var version = await plan.Version("plan.yaml");
        var path = Path.Combine(plan.Folder, "plan.yaml");
        File.Delete(path);
        byte[] foreign = why == "no UTF-8 text" ? [0x63, 0x61, 0x66, 0xe9] : new byte[(16 * 1024 * 1024) + 1];
        if (why == "a folder") Directory.CreateDirectory(path);
        else await File.WriteAllBytesAsync(path, foreign, TestContext.Current.CancellationToken);
        // Saved at once, and again when the sheets tell.
        var (status, words) = await plan.Post($"save?file=plan.yaml&version={version}");
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains(why, words, StringComparison.Ordinal);
        await Until(plan, "plan.yaml on disk cannot be read", isThere: true);
        Assert.Equal(HttpStatusCode.Conflict, (await plan.Post($"save?file=plan.yaml&version={version}")).Status);
        if (why == "a folder")
        {
            Assert.True(Directory.Exists(path));
            Directory.Delete(path);
        }
        else
        {
            Assert.Equal(foreign, await File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken));
            File.Delete(path);
        }
        Assert.Equal(HttpStatusCode.OK, (await plan.Post($"save?file=plan.yaml&version={version}")).Status);
        Assert.Equal(typed, plan.OnDisk("plan.yaml"));
        await Until(plan, "on disk cannot be read", isThere: false);
    }

    [Fact]
    public async Task FileThatIsReplaced_IsNotCalledGone()
    {
        await using var plan = await OpenedPlan.OfText(Small);
        await plan.Version("plan.yaml");
        var (path, aside) = (Path.Combine(plan.Folder, "plan.yaml"), Path.Combine(plan.Folder, "aside.yaml"));
        File.Move(path, aside);
        await Until(plan, "is not on disk any more", isThere: true);
        File.Move(aside, path);
        await Until(plan, "is not on disk any more", isThere: false);
    }

    private static Task Until(OpenedPlan plan, string words, bool isThere) =>
        Patience.Until($"'{words}' {(isThere ? "on" : "off")} the sheets",
            async () => (await plan.Get("brief")).Text.Contains(words, StringComparison.Ordinal) == isThere);
}
