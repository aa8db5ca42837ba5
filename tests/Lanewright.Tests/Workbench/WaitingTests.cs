using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Lanewright.Tests.Workbench;

/// <summary>Work that takes long says how far it is and can be broken off.</summary>
[Collection(BrowserCollection.Name)]
public sealed class WaitingTests(Chromium chromium)
{
    /// <summary>A fabric so large that what to buy takes many seconds to find out.</summary>
    private const string Plan = """
        lanewright: 1
        name: large
        sites: { s: { halls: { h: { rows: { A: { racks: 400 }, B: { racks: 400, y: 3 m }, C: { racks: 400, y: 6 m } } } } } }
        wanted:
          hosts: { h: { count: 9000, rate: 100G, ports: 2 } }
          years: 5
          growth: 20 %

        """;

    [Fact]
    public async Task Sheet_ThatTakesLongTellsItsStepIsBrokenOffAndTakenUpAgain()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        await plan.Version("plan.yaml");
        var work = await WorkOf(plan);
        await Until(plan, work, p => p.GetProperty("step").GetString()!.StartsWith("sizing: ", StringComparison.Ordinal));
        Assert.Equal(HttpStatusCode.OK, (await plan.Post("break-off?work=" + Uri.EscapeDataString(work))).Status);
        await Until(plan, work, p => !p.GetProperty("goesOn").GetBoolean());
        await Until(plan, "judging", p => !p.GetProperty("goesOn").GetBoolean());
        var (_, page) = await plan.Get("options");
        Assert.Contains("You broke this off", page, StringComparison.Ordinal);
        // Nothing else was lost, and it can be had after all.
        Assert.Contains("<h1>Floor</h1>", (await plan.Get("floor")).Text, StringComparison.Ordinal);
        await plan.Post("resume?work=" + Uri.EscapeDataString(work));
        Assert.Equal(work, await WorkOf(plan));
        await Until(plan, work, p => p.GetProperty("goesOn").GetBoolean());
    }

    [Fact]
    public async Task Sheet_OfATextThatChangedIsNoLongerWorkedOut()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var version = await plan.Version("plan.yaml");
        var work = await WorkOf(plan);
        await Until(plan, work, p => p.GetProperty("goesOn").GetBoolean());
        // Saved first, so that nothing is held against the text whose sheet is being made.
        await plan.Post($"type?file=plan.yaml&version={version}", Plan.Replace("years: 5", "years: 4", StringComparison.Ordinal));
        await plan.Post($"save?file=plan.yaml&version={await plan.Version("plan.yaml")}");
        await Until(plan, work, p => !p.GetProperty("goesOn").GetBoolean());
    }

    [Fact]
    public async Task Browser_ShowsTheStepAndABreakOffButton()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "options");
        await Microsoft.Playwright.Assertions.Expect(page.Locator(".waiting .step")).ToContainTextAsync("sizing: ");
        await Shots.Take(page, "Waiting");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Break it off" }).ClickAsync();
        await page.Locator("h1", new() { HasTextString = "Broken off" }).WaitForAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Work it out after all" }).ClickAsync();
        await page.Locator("h1", new() { HasTextString = "One moment" }).WaitForAsync();
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Document_IsKeptByItsNameInTheBrowser()
    {
        await using var plan = await OpenedPlan.OfText("lanewright: 1\nname: small\ndevices: { a: { model: fixed-32x400, count: 2 } }\n");
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "documents");
        var kept = await page.RunAndWaitForDownloadAsync(() => page.GetByText("findings.json", new() { Exact = true }).ClickAsync());
        Assert.Equal("findings.json", kept.SuggestedFilename);
        using var json = JsonDocument.Parse(await File.ReadAllTextAsync(await kept.PathAsync()));
        Assert.Equal(JsonValueKind.Object, json.RootElement.ValueKind);
        Assert.Empty(faults);
    }

    /// <summary>The place that the work of the options is known by, once it goes on.</summary>
    private static async Task<string> WorkOf(OpenedPlan plan)
    {
        return await Patience.For("the options being worked out", async () =>
        {
            var (_, page) = await plan.Get("options");
            var work = WebUtility.HtmlDecode(Regex.Match(page, "data-work=\"([^\"]*)\"").Groups[1].Value);
            return work.StartsWith("options", StringComparison.Ordinal) ? work : null;
        });
    }

    private static async Task Until(OpenedPlan plan, string work, Func<JsonElement, bool> holds)
    {
        await Patience.Until("the work as expected", async () =>
        {
            using var json = JsonDocument.Parse((await plan.Get("progress?work=" + Uri.EscapeDataString(work))).Text);
            return holds(json.RootElement);
        });
    }
}
