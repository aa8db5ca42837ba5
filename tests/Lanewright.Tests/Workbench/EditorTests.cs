using System.Text.Json;
using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>What the editor offers and takes back, in a real browser.</summary>
[Collection(BrowserCollection.Name)]
public sealed class EditorTests(Chromium chromium)
{
    private const string Plan = """
        lanewright: 1
        name: small
        devices:
          leaf: { model: fixed-32x400, count: 2 }
          "odd: name": { model: fixed-32x400, count: 2, name: "odd{n}" }
        links:
          up: { from: leaf, to: "odd: name", rate: 400G, length: 30 m }

        """;

    /// <summary>Places are marked by a bar: the way to it, whether a value stands there, and what is begun (YAML 1.2.2, chapters 7.4 and
    /// 8.2: flow and block collections).</summary>
    [Theory]
    [InlineData("devices:\n  a: { model: fixed-3|", "devices/a/model", true, "fixed-3")]
    [InlineData("devices:\n  a:\n    model: |", "devices/a/model", true, "")]
    [InlineData("devices:\n  a: { model: x, cards: [nic-2x200, n|", "devices/a/cards", true, "n")]
    [InlineData("links:\n  l: { from: { of: sp|", "links/l/from/of", true, "sp")]
    [InlineData("links:\n  l: { from: a,\n    to: b, pat|", "links/l", false, "pat")]
    [InlineData("links:\n  l:\n    through:\n      - tr|", "links/l/through", true, "tr")]
    [InlineData("policy:\n  copper-limits:\n    - { rate: 100G, le|", "policy/copper-limits", false, "le")]
    [InlineData("devices:\n  \"odd: name\": { model: |", "devices/odd: name/model", true, "")]
    [InlineData("devices:\n  a: { model: x }\n\n  b:\n    |", "devices/b", false, "")]
    [InlineData("devices:\n  # not { closed\n  a: { name: \"x}{\", mo|", "devices/a", false, "mo")]
    [InlineData("devices:\n  a: { model: x }\n|", "", false, "")]
    public async Task Place_IsTheWayThatLeadsToTheCaret(string marked, string way, bool isValue, string begun)
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, _) = await chromium.Window();
        await page.GotoAsync(plan.Root + "assets/words.js");
        var place = await page.EvaluateAsync<JsonElement>(
            "async ([text, at]) => (await import('./words.js')).placeAt(text, at)",
            new object[] { marked.Replace("|", "", StringComparison.Ordinal), marked.IndexOf('|', StringComparison.Ordinal) });
        Assert.Equal(way, string.Join('/', place.GetProperty("path").EnumerateArray().Select(k => k.GetString())));
        Assert.Equal(isValue, place.TryGetProperty("isValue", out var value) && value.GetBoolean());
        Assert.Equal(begun, place.GetProperty("begun").GetString());
    }

    [Fact]
    public async Task Names_AreOfferedWhereTheyMayStandAndWrittenSoThatTheyAreRead()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        var area = await Opened(page, plan);
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("  more: { from: le");
        await page.Keyboard.PressAsync("Control+Space");
        await Assertions.Expect(page.Locator("#editor .words li").First).ToContainTextAsync("2 x fixed-32x400");
        await Shots.Take(page, "Plan-names");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync(", to: odd:");
        await page.Keyboard.PressAsync("Control+Space");
        await page.Locator("#editor .words li").First.WaitForAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync(", rate: 400G, type: 400GBASE-DR4");
        await page.Keyboard.PressAsync("Control+Space");
        await page.Locator("#editor .words li").First.WaitForAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync(", length: 30 m }");
        var typed = Plan + "  more: { from: leaf, to: \"odd: name\", rate: 400G, type: 400GBASE-DR4, length: 30 m }";
        await Assertions.Expect(area).ToHaveValueAsync(typed);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == typed);
        await Patience.Until("four links", async () =>
        {
            using var rows = JsonDocument.Parse((await plan.Get("rows?from=0&count=0")).Text);
            return rows.RootElement.GetProperty("of").GetInt32() == 4;
        });
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Undo_TakesBackWhatThisWindowTypedAndLeavesWhatCameFromElsewhere()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        var area = await Opened(page, plan);
        await area.EvaluateAsync("a => { const at = a.value.indexOf('30 m') + 1; a.setSelectionRange(at, at); }");
        await page.Keyboard.TypeAsync("5");
        await Assertions.Expect(page.Locator("#block")).ToContainTextAsync("not saved");
        // Another window changes a line above and one below; both come in here.
        var typed = Plan.Replace("30 m", "350 m", StringComparison.Ordinal);
        var seen = await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == typed);
        var both = typed.Replace("name: small", "name: smaller", StringComparison.Ordinal);
        await plan.Post($"type?file=plan.yaml&version={seen.GetProperty("version").GetInt64()}", both);
        await Assertions.Expect(area).ToHaveValueAsync(both);
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(area).ToHaveValueAsync(both.Replace("350 m", "30 m", StringComparison.Ordinal));
        await page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(page.Locator("#editor .said")).ToContainTextAsync("Nothing more to undo");
        await Assertions.Expect(area).ToHaveValueAsync(both.Replace("350 m", "30 m", StringComparison.Ordinal));
        await page.Keyboard.PressAsync("Control+y");
        await Assertions.Expect(area).ToHaveValueAsync(both);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == both);
        Assert.Empty(faults);
    }

    private static async Task<ILocator> Opened(IPage page, OpenedPlan plan)
    {
        await page.GotoAsync(plan.Root + "plan");
        var area = page.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync(Plan);
        await area.FocusAsync();
        return area;
    }
}
