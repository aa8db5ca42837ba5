using System.Globalization;
using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>The workbench as a person uses it, in a real browser.</summary>
[Collection(BrowserCollection.Name)]
public sealed class BrowserTests(Chromium chromium, ITestOutputHelper output)
{
    [Fact]
    public async Task Demo_ShowsEverySheetWithoutAFault()
    {
        await using var plan = await OpenedPlan.OfExample("kestrel-bay");
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "brief");
        await page.Locator(".figures").WaitForAsync();
        string[] titles = [.. await page.Locator("#register li span").AllInnerTextsAsync()];
        Assert.Contains("Plant", titles);
        for (var i = 0; i < titles.Length; i++)
        {
            await page.Locator("#register li a").Nth(i).ClickAsync();
            await page.Locator("h1", new() { HasTextString = titles[i] }).WaitForAsync();
        }
        // Drawings are those that build writes.
        await page.GotoAsync(plan.Root + "fabric");
        await page.Locator(".tabs a", new() { HasTextString = "reduce" }).ClickAsync();
        await Assertions.Expect(page.Locator("figure svg.lw")).ToHaveCountAsync(2);
        Assert.Empty(faults);
    }

    /// <summary>How soon a person sees something after the program was started: measured and printed.</summary>
    [Fact]
    public async Task Demo_IsSeenSoonAfterTheStart()
    {
        var (page, faults) = await chromium.Window();
        await using var plan = await StartedProgram.OfExample("kestrel-bay");
        var address = plan.Since.ElapsedMilliseconds;
        await page.GotoAsync(plan.Root + "brief", new() { WaitUntil = WaitUntilState.Commit });
        await page.Locator("#register li").First.WaitForAsync();
        var painted = await page.EvaluateAsync<double>("""
            new Promise(done => new PerformanceObserver(seen => done(performance.timeOrigin + seen.getEntries()[0].startTime))
              .observe({ type: 'paint', buffered: true }))
            """);
        var first = painted - (DateTimeOffset.UtcNow.ToUnixTimeMilliseconds() - plan.Since.ElapsedMilliseconds);
        await page.Locator(".figures").WaitForAsync();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"demo: the address is printed {address} ms after the program was "
            + $"started, the frame of the sheets painted after {first:F0} ms, the whole brief there after {plan.Since.ElapsedMilliseconds} "
            + $"ms; processor of the program {plan.Used.TotalMilliseconds:F0} ms"));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task BrokenLine_IsSeenFollowedAndPutRight()
    {
        await using var plan = await OpenedPlan.OfExample("kestrel-bay");
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "plan/storage.yaml");
        var area = page.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("devices:"));
        var text = await area.InputValueAsync();
        var model = System.Text.RegularExpressions.Regex.Match(text, @"model: (fixed-[\w-]+)").Groups[1].Value;
        Assert.NotEmpty(model);
        var (other, _) = await chromium.Window();
        await other.GotoAsync(plan.Root + "brief");
        await area.EvaluateAsync("(a, at) => a.setSelectionRange(at, at)", text.IndexOf(model, StringComparison.Ordinal) + model.Length);
        await area.FocusAsync();
        await page.Keyboard.TypeAsync("x");
        await page.Locator("#editor .found .stop").First.WaitForAsync();
        await page.Locator("#editor .marks .error").First.WaitForAsync();
        await Shots.Take(page, "Plan-broken");
        // The other window follows without being touched, and its finding leads back to the line.
        await other.Locator(".wrong .stop").First.WaitForAsync();
        await Assertions.Expect(other.Locator("#block .act").First).ToBeVisibleAsync();
        await other.Locator(".wrong li.error a", new() { HasTextString = "storage.yaml:" }).First.ClickAsync();
        await other.Locator("#editor .found .stop").First.WaitForAsync();
        Assert.Equal(text.Insert(text.IndexOf(model, StringComparison.Ordinal) + model.Length, "x"),
            await other.Locator("textarea").InputValueAsync());
        var line = await other.Locator("textarea").EvaluateAsync<int>("a => a.value.slice(0, a.selectionStart).split('\\n').length");
        Assert.Contains(model + "x", (await other.Locator("textarea").InputValueAsync()).Split('\n')[line - 1], StringComparison.Ordinal);
        // What if: both and the difference. Then it is put right, by undo, and nothing is left to save.
        await other.GotoAsync(plan.Root + "compare");
        await Assertions.Expect(other.Locator("h2", new() { HasTextString = "Findings that are new" })).ToBeVisibleAsync();
        await Shots.Take(other, "What-if-broken");
        await area.FocusAsync();
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(area).ToHaveValueAsync(text);
        await Assertions.Expect(page.Locator("#editor .found .stop")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("#block")).ToContainTextAsync("as saved");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task TypedText_IsSavedByKeyAndOutlivesARestart()
    {
        await using var plan = await OpenedPlan.OfText("lanewright: 1\nname: small\ntitle: one\n");
        var (page, _) = await chromium.Window();
        await page.GotoAsync(plan.Root + "plan");
        var area = page.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync("lanewright: 1\nname: small\ntitle: one\n");
        await area.FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("revision: B");
        await page.Keyboard.PressAsync("Control+s");
        await Assertions.Expect(page.Locator(".said")).ToContainTextAsync("Saved");
        Assert.Equal("lanewright: 1\nname: small\ntitle: one\nrevision: B", plan.OnDisk("plan.yaml"));
        await page.Keyboard.TypeAsync("2");
        await Assertions.Expect(page.Locator("#block")).ToContainTextAsync("not saved");
        // "not saved" may still be the word from before the save: what counts is that the stroke has reached the server.
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString()!.EndsWith("B2", StringComparison.Ordinal));
        await plan.Reopen();
        await Assertions.Expect(page.Locator("#said")).ToContainTextAsync("does not answer");
        await page.GotoAsync(plan.Root + "plan");
        await Assertions.Expect(page.Locator("#editor textarea")).ToHaveValueAsync("lanewright: 1\nname: small\ntitle: one\nrevision: B2");
        Assert.DoesNotContain("B2", plan.OnDisk("plan.yaml"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TwoWindows_ThatDisagreeAreToldAndNothingIsLost()
    {
        await using var plan = await OpenedPlan.OfText("lanewright: 1\nname: small\ntitle: one\n");
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "plan");
        var area = page.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync("lanewright: 1\nname: small\ntitle: one\n");
        // The window is asleep while another types, so that it sends a change of a text that is no more.
        await page.RouteAsync("**/state?*", route => Task.CompletedTask);
        await page.ReloadAsync();
        await Assertions.Expect(area).ToHaveValueAsync("lanewright: 1\nname: small\ntitle: one\n");
        await plan.Post($"type?file=plan.yaml&version={await plan.Version("plan.yaml")}", "lanewright: 1\nname: small\ntitle: other\n");
        await area.EvaluateAsync("a => { const at = a.value.indexOf('one'); a.setSelectionRange(at, at + 3); a.focus() }");
        await page.Keyboard.TypeAsync("mine");
        await Assertions.Expect(page.Locator(".torn").First).ToBeVisibleAsync();
        await Assertions.Expect(area).ToHaveValueAsync("lanewright: 1\nname: small\ntitle: mine\n");
        await Patience.Until("the last stroke kept", () =>
            Task.FromResult(plan.OnDisk(".lanewright/plan.yaml.refused") == "lanewright: 1\nname: small\ntitle: mine\n"));
        await page.Locator(".torn button[data-act=keep]").ClickAsync();
        await Assertions.Expect(page.Locator(".torn").First).ToBeHiddenAsync();
        Assert.Contains("mine", (await plan.TextWhen("plan.yaml", _ => true)).GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains("other", plan.OnDisk(".lanewright/plan.yaml.aside-1"), StringComparison.Ordinal);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Editor_OffersWhatMayStandThere()
    {
        await using var plan = await OpenedPlan.OfText("lanewright: 1\nname: small\npolicy:\n  ");
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "plan");
        var area = page.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync("lanewright: 1\nname: small\npolicy:\n  ");
        await area.FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("connection-g");
        await page.Keyboard.PressAsync("Control+Space");
        await page.Locator("#editor .words li").First.WaitForAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(area).ToHaveValueAsync("lanewright: 1\nname: small\npolicy:\n  connection-grade: ");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task HostileNames_RunNothing()
    {
        await using var plan = await OpenedPlan.OfText(HostilePageTests.Plan);
        var (page, faults) = await chromium.Window();
        foreach (var sheet in new[] { "brief", "links", "links/L000001", "findings", "plan", "parts", "find?q=alert", "documents" })
        {
            await page.GotoAsync(plan.Root + sheet);
            await page.Locator("h1").First.WaitForAsync();
            await page.WaitForTimeoutAsync(200);
            Assert.Equal(0, await page.Locator("#sheet img, #sheet script").CountAsync());
        }
        await page.GotoAsync(plan.Root + "links");
        await Assertions.Expect(page.Locator("#links .line").First).ToContainTextAsync("<img src=x");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Sheet_PrintsToPdf()
    {
        await using var plan = await OpenedPlan.OfExample("kestrel-bay");
        var (page, _) = await chromium.Window();
        await page.GotoAsync(plan.Root + "racks");
        await page.Locator("figure svg.lw").First.WaitForAsync();
        var pdf = await page.PdfAsync(new() { PreferCSSPageSize = true });
        Assert.Equal("%PDF-", System.Text.Encoding.ASCII.GetString(pdf, 0, 5));
        // A3 across is 420 mm by 297 mm (ISO 216), in points of 1/72 inch.
        Assert.Matches(@"/MediaBox \[0 0 119\d(\.\d+)? 84\d(\.\d+)?\]", System.Text.Encoding.Latin1.GetString(pdf));
    }

    [Fact]
    public async Task Keyboard_ReachesSheetsSearchAndLinks()
    {
        await using var plan = await OpenedPlan.OfExample("kestrel-bay");
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "brief");
        await page.Keyboard.PressAsync("6");
        await page.Locator("#links .line").First.WaitForAsync();
        await page.Keyboard.PressAsync("/");
        await page.Keyboard.TypeAsync("dspine");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("h1", new() { HasTextString = "Search" }).WaitForAsync();
        await page.GotoAsync(plan.Root + "links?q=fail");
        await page.GotoAsync(plan.Root + "links");
        await page.Locator("#links .line").First.WaitForAsync();
        await page.Locator("#links .window").FocusAsync();
        for (var i = 0; i < 3; i++) await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await page.Locator("h1", new() { HasTextString = "Link L000003" }).WaitForAsync();
        await Shots.Take(page, "Link");
        Assert.Empty(faults);
    }
}
