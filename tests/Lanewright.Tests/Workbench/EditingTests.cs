using System.Net;
using System.Text.Json;

namespace Lanewright.Tests.Workbench;

/// <summary>The file on disk is the truth: nothing that somebody else wrote is written over, and nothing that was typed is lost.</summary>
public sealed class EditingTests
{
    private const string Plan = "lanewright: 1\nname: small\ntitle: one\n# kept\n# kept\nrevision: A\n";

    [Fact]
    public async Task TypedText_IsJudgedAtOnceAndOnDiskOnlyOnceSaved()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var typed = Plan + "devices: { a: { model: no-such-model, count: 2 } }\n";
        await Type(plan, typed);
        var text = await plan.TextWhen("plan.yaml", t => t.GetProperty("findings").EnumerateArray()
            .Any(f => f.GetProperty("severity").GetString() == "error"));
        var error = text.GetProperty("findings").EnumerateArray().First(f => f.GetProperty("severity").GetString() == "error");
        Assert.Equal(7, error.GetProperty("line").GetInt32());
        Assert.Equal(Plan, plan.OnDisk("plan.yaml"));
        Assert.Equal(HttpStatusCode.OK, (await Save(plan)).Status);
        Assert.Equal(typed, plan.OnDisk("plan.yaml"));
        Assert.Equal(Plan, plan.OnDisk(".lanewright/plan.yaml.previous"));
        Assert.Empty(Directory.GetFiles(plan.Folder, "*.partial", SearchOption.AllDirectories));
    }

    [Fact]
    public async Task Save_KeepsLineEndsAndPermissions()
    {
        await using var plan = await OpenedPlan.OfText(Plan.Replace("\n", "\r\n", StringComparison.Ordinal));
        var file = Path.Combine(plan.Folder, "plan.yaml");
        if (OperatingSystem.IsWindows()) Assert.Skip("permissions are those of Unix");
        else File.SetUnixFileMode(file, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        await Type(plan, Plan.Replace("one", "two", StringComparison.Ordinal));
        await Save(plan);
        var two = Plan.Replace("one", "two", StringComparison.Ordinal);
        Assert.Equal(two.Replace("\n", "\r\n", StringComparison.Ordinal), plan.OnDisk("plan.yaml"));
        if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    [Fact]
    public async Task Save_KeepsTheByteOrderMark()
    {
        await using var plan = await OpenedPlan.OfText("\ufeff" + Plan);
        await Type(plan, Plan.Replace("one", "two", StringComparison.Ordinal));
        await Save(plan);
        var bytes = await File.ReadAllBytesAsync(Path.Combine(plan.Folder, "plan.yaml"));
        Assert.Equal([0xef, 0xbb, 0xbf], bytes[..3]);
        Assert.Equal(Plan.Replace("one", "two", StringComparison.Ordinal), System.Text.Encoding.UTF8.GetString(bytes[3..]));
    }

    [Fact]
    public async Task ChangeOutside_IsShownWhereNothingIsTyped()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await plan.Version("plan.yaml");
        Outside(plan, Plan.Replace("one", "outside", StringComparison.Ordinal));
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString()!.Contains("outside", StringComparison.Ordinal));
        Assert.Contains("outside", (await plan.Get("brief")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ChangeOutsideInOtherLines_IsMerged()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await Type(plan, Plan.Replace("one", "typed", StringComparison.Ordinal));
        Outside(plan, Plan.Replace("revision: A", "revision: B", StringComparison.Ordinal));
        var both = "lanewright: 1\nname: small\ntitle: typed\n# kept\n# kept\nrevision: B\n";
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == both);
        Assert.Equal(HttpStatusCode.OK, (await Save(plan)).Status);
        Assert.Equal(both, plan.OnDisk("plan.yaml"));
    }

    [Fact]
    public async Task ChangeOutsideInTheSameLine_IsNeverWrittenOver()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await Type(plan, Plan.Replace("one", "typed", StringComparison.Ordinal));
        var outside = Plan.Replace("one", "outside", StringComparison.Ordinal);
        Outside(plan, outside);
        // Saved at once, before anybody could have noticed.
        var (status, words) = await Save(plan);
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("changed outside", words, StringComparison.Ordinal);
        Assert.Equal(outside, plan.OnDisk("plan.yaml"));
        var torn = await plan.TextWhen("plan.yaml", t => t.GetProperty("torn").GetBoolean());
        Assert.Contains("typed", torn.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains("was changed outside", (await plan.Get("links")).Text, StringComparison.Ordinal);
        // A person who has seen it may keep what is typed; the other text is put aside.
        Assert.Equal(HttpStatusCode.OK, (await plan.Post($"keep?file=plan.yaml&version={await plan.Version("plan.yaml")}")).Status);
        Assert.Equal(HttpStatusCode.OK, (await Save(plan)).Status);
        Assert.Contains("title: typed", plan.OnDisk("plan.yaml"), StringComparison.Ordinal);
        Assert.Equal(outside, plan.OnDisk(".lanewright/plan.yaml.previous"));
    }

    [Fact]
    public async Task ChangeOutsideThatTheClockOfTheDiskDoesNotTell_IsNeverWrittenOver()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await Type(plan, Plan.Replace("one", "typed", StringComparison.Ordinal));
        var file = new FileInfo(Path.Combine(plan.Folder, "plan.yaml"));
        // The workbench has seen this time and length.
        var seen = Plan.Replace("revision: A", "revision: B", StringComparison.Ordinal);
        Outside(plan, seen);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString()!.Contains("revision: B", StringComparison.Ordinal));
        file.Refresh();
        var written = file.LastWriteTimeUtc;
        var outside = seen.Replace("one", "two", StringComparison.Ordinal);
        Outside(plan, outside);
        file.LastWriteTimeUtc = written;
        Assert.Equal(HttpStatusCode.Conflict, (await Save(plan)).Status);
        Assert.Equal(outside, plan.OnDisk("plan.yaml"));
    }

    [Fact]
    public async Task TwoWindows_ThatTypeInOtherLinesKeepBoth()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var version = await plan.Version("plan.yaml");
        await Type(plan, version, Plan.Replace("one", "first", StringComparison.Ordinal));
        var (status, text) = await Type(plan, version, Plan.Replace("revision: A", "revision: C", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.OK, status);
        using var answer = JsonDocument.Parse(text);
        var both = "lanewright: 1\nname: small\ntitle: first\n# kept\n# kept\nrevision: C\n";
        Assert.Equal(both, answer.RootElement.GetProperty("text").GetString());
    }

    [Fact]
    public async Task TwoWindows_ThatBothTypeOnNeverSeeEachOthersTextAndKeepBoth()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        long[] seen = [await plan.Version("plan.yaml"), await plan.Version("plan.yaml")];
        string[] texts = [Plan, Plan];
        foreach (var stroke in Enumerable.Range(0, 30))
        {
            var window = stroke % 2;
            texts[window] = texts[window].Replace(window == 0 ? "one" : "revision: A", window == 0 ? "oneo" : "revision: AA",
                StringComparison.Ordinal);
            var (status, text) = await Type(plan, seen[window], texts[window]);
            Assert.Equal(HttpStatusCode.OK, status);
            using var answer = JsonDocument.Parse(text);
            // Who types on has not taken the text that both were put together to.
            var version = answer.RootElement.TryGetProperty("ownVersion", out var own) ? own : answer.RootElement.GetProperty("version");
            seen[window] = version.GetInt64();
        }
        var both = Plan.Replace("one", "one" + new string('o', 15), StringComparison.Ordinal)
            .Replace("revision: A", "revision: A" + new string('A', 15), StringComparison.Ordinal);
        Assert.Equal(both, (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
    }

    [Fact]
    public async Task TwoWindows_ThatTypeInOneLineAreToldSo()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var version = await plan.Version("plan.yaml");
        await Type(plan, version, Plan.Replace("one", "first", StringComparison.Ordinal));
        var (status, text) = await Type(plan, version, Plan.Replace("one", "second", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("another window", text, StringComparison.Ordinal);
        Assert.Contains("first", (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task RefusedText_IsKeptAndMayTakeTheOthersPlace()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var version = await plan.Version("plan.yaml");
        var first = Plan.Replace("one", "first", StringComparison.Ordinal);
        var second = Plan.Replace("one", "second", StringComparison.Ordinal);
        await Type(plan, version, first);
        await Type(plan, version, second);
        Assert.Equal(second, plan.OnDisk(".lanewright/plan.yaml.refused"));
        Assert.Equal(HttpStatusCode.Conflict, (await plan.Post($"replace?file=plan.yaml&version={version}", second)).Status);
        var now = await plan.Version("plan.yaml");
        Assert.Equal(HttpStatusCode.OK, (await plan.Post($"replace?file=plan.yaml&version={now}", second)).Status);
        Assert.Equal(second, (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
        Assert.Equal(first, plan.OnDisk(".lanewright/plan.yaml.aside-1"));
    }

    [Fact]
    public async Task GivingUp_NeedsTheNewestTextAndKeepsEveryTextGivenUp()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var old = await plan.Version("plan.yaml");
        var typed = Enumerable.Range(1, 3).Select(i => Plan.Replace("one", "typed " + i, StringComparison.Ordinal)).ToList();
        await Type(plan, typed[0]);
        var (status, words) = await plan.Post($"discard?file=plan.yaml&version={old}");
        Assert.Equal(HttpStatusCode.Conflict, status);
        Assert.Contains("look at it first", words, StringComparison.Ordinal);
        Assert.Equal(typed[0], (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
        foreach (var text in typed)
        {
            await Type(plan, text);
            Assert.Equal(HttpStatusCode.OK, (await Discard(plan)).Status);
        }
        for (var i = 0; i < typed.Count; i++) Assert.Equal(typed[i], plan.OnDisk($".lanewright/plan.yaml.aside-{i + 1}"));
        Assert.Equal("*\n", plan.OnDisk(".lanewright/.gitignore"));
    }

    [Fact]
    public async Task TextOfAnotherEncoding_IsRefusedInWords()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var version = await plan.Version("plan.yaml");
        foreach (byte[] bytes in new[] { new byte[] { 0xff, 0xfe, 0x61, 0x00 }, [0xc3, 0x28] })
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, plan.Root + $"type?file=plan.yaml&version={version}")
            {
                Content = new ByteArrayContent(bytes),
            };
            var (status, words) = await plan.Send(request, ("Origin", plan.Origin));
            Assert.Equal(HttpStatusCode.BadRequest, status);
            Assert.Contains("no UTF-8", words, StringComparison.Ordinal);
        }
        await Type(plan, "\ufeff" + Plan);
        Assert.Equal(Plan, (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
    }

    [Fact]
    public async Task TextTypedAMomentAgo_OutlivesTheServer()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var typed = Plan.Replace("one", "not saved", StringComparison.Ordinal);
        await Type(plan, typed);
        await plan.Reopen();
        var text = await plan.TextWhen("plan.yaml", t => t.GetProperty("typed").GetBoolean());
        Assert.Equal(typed, text.GetProperty("text").GetString());
        Assert.Equal(Plan, plan.OnDisk("plan.yaml"));
        Assert.Equal(HttpStatusCode.OK, (await Discard(plan)).Status);
        Assert.Equal(Plan, (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString());
        Assert.Equal(typed, plan.OnDisk(".lanewright/plan.yaml.aside-1"));
        await plan.Reopen();
        Assert.False((await plan.TextWhen("plan.yaml", _ => true)).GetProperty("typed").GetBoolean());
    }

    [Fact]
    public async Task TextTypedBeforeTheServerEnded_IsNotPutOverAChangeMadeMeanwhile()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await Type(plan, Plan.Replace("one", "typed", StringComparison.Ordinal));
        await plan.Server.DisposeAsync();
        var outside = Plan.Replace("one", "outside", StringComparison.Ordinal);
        Outside(plan, outside);
        await plan.Reopen();
        await plan.TextWhen("plan.yaml", t => t.GetProperty("torn").GetBoolean());
        Assert.Equal(HttpStatusCode.Conflict, (await Save(plan)).Status);
        Assert.Equal(outside, plan.OnDisk("plan.yaml"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\0\0\0")]
    [InlineData("a: [[[[[[[[")]
    [InlineData("lanewright: 1\nname: small\nlinks: { x: { from: x, to: x, rate: 999999999999999T } }")]
    [InlineData("lanewright: 1\nname: small\ndevices: { a: { model: fixed-32x400, count: 99999999 } }")]
    public async Task AnyText_IsAnsweredOnEverySheet(string text)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await Type(plan, text);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("findings").GetArrayLength() > 0);
        foreach (var sheet in DoorTests.Sheets.Select(s => s.Data).Where(s => !s.StartsWith("devices", StringComparison.Ordinal)))
        {
            var (status, page) = await plan.Ready(sheet);
            Assert.Equal(HttpStatusCode.OK, status);
            Assert.Contains("<h1>", page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task WhatIf_TellsTheDifference()
    {
        await using var plan = await OpenedPlan.OfText("lanewright: 1\nname: small\ndevices: { a: { model: fixed-32x400, count: 2 } }\n");
        Assert.Contains("Nothing is typed", (await plan.Ready("compare")).Text, StringComparison.Ordinal);
        await Type(plan, "lanewright: 1\nname: small\ndevices: { a: { model: fixed-32x400, count: 3 } }\n");
        var page = await Patience.For("the difference", async () =>
            (await plan.Get("compare")).Text is var text && text.Contains("parts that differ", StringComparison.Ordinal) ? text : null);
        Assert.Matches("""<tr class="">\s*<td class="t">devices</td>\s*<td class="n">2</td>\s*<td class="n">3</td>""", page);
    }

    private static void Outside(OpenedPlan plan, string text) => File.WriteAllText(Path.Combine(plan.Folder, "plan.yaml"), text);

    private static async Task<(HttpStatusCode Status, string Text)> Type(OpenedPlan plan, string text) =>
        await Type(plan, await plan.Version("plan.yaml"), text);

    private static Task<(HttpStatusCode Status, string Text)> Type(OpenedPlan plan, long version, string text) =>
        plan.Post($"type?file=plan.yaml&version={version}", text);

    private static async Task<(HttpStatusCode Status, string Text)> Discard(OpenedPlan plan) =>
        await plan.Post($"discard?file=plan.yaml&version={await plan.Version("plan.yaml")}");

    private static async Task<(HttpStatusCode Status, string Text)> Save(OpenedPlan plan) =>
        await plan.Post($"save?file=plan.yaml&version={await plan.Version("plan.yaml")}");
}
