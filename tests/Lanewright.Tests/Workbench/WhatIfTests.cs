using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>A text that is typed and not saved, held against the text on disk from every sheet, in a real browser.</summary>
[Collection(BrowserCollection.Name)]
public sealed class WhatIfTests(Chromium chromium)
{
    private const string Text = """
        lanewright: 1
        name: small
        sites: { s: { halls: { h: { rows: { A: { racks: 4 } } } } } }
        devices:
          a: { model: fixed-32x400, racks: s/h/A/1, unit: 40 }
          b: { model: fixed-32x400, racks: s/h/A/3, unit: 40 }
        links:
          l: { from: a, to: b, rate: 400G, count: 2 }
        """;

    [Fact]
    public async Task EverySheet_ShowsBothAndTheDifferenceAndLetsOneChoose()
    {
        await using var plan = await OpenedPlan.OfText(Text);
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "brief");
        await Assertions.Expect(page.Locator("#whatif")).ToHaveCountAsync(0);
        var version = await plan.Version("plan.yaml");
        await plan.Post($"type?file=plan.yaml&version={version}", Text.Replace("count: 2", "count: 6", StringComparison.Ordinal));
        await Assertions.Expect(page.Locator("#whatif dd b").First).ToBeVisibleAsync();
        foreach (var sheet in new[] { "brief", "parts", "racks", "floor", "findings", "why/price" })
        {
            await page.GotoAsync(plan.Root + sheet);
            var price = page.Locator("#whatif dl div").First;
            await Assertions.Expect(price).ToContainTextAsync("→");
            await Assertions.Expect(price.Locator("b")).ToContainTextAsync("+");
            await page.Locator("#whatif .tabs a", new() { HasTextString = "both" }).ClickAsync();
            await Assertions.Expect(page.Locator(".beside > section")).ToHaveCountAsync(2);
            Assert.EndsWith("?as=both", page.Url, StringComparison.Ordinal);
            Assert.Empty(await page.EvaluateAsync<string[]>(
                "() => { const ids = [...document.querySelectorAll('[id]')].map(e => e.id); "
                + "return ids.filter((id, i) => ids.indexOf(id) !== i); }"));
        }
        // The price of the sheet as saved is the first of the two on the strip, and that as typed the second.
        await page.GotoAsync(plan.Root + "why/price?as=both");
        var strip = (await page.Locator("#whatif dl dd").First.InnerTextAsync()).Split('→', ' ');
        var heads = await page.Locator(".beside h1").AllInnerTextsAsync();
        Assert.Contains(strip[0].Trim(), heads[0], StringComparison.Ordinal);
        Assert.NotEqual(heads[0], heads[1]);
        await Shots.Take(page, "What-if-both");
        // Given up, it is gone from every window; kept, it is on disk.
        await page.Locator("#whatif button", new() { HasTextString = "Give up" }).ClickAsync();
        await page.Locator("#whatif button", new() { HasTextString = "sure?" }).ClickAsync();
        await Assertions.Expect(page.Locator("#whatif")).ToHaveCountAsync(0);
        version = await plan.Version("plan.yaml");
        await plan.Post($"type?file=plan.yaml&version={version}", Text.Replace("count: 2", "count: 3", StringComparison.Ordinal));
        await page.Locator("#whatif button", new() { HasTextString = "Keep" }).ClickAsync();
        await Assertions.Expect(page.Locator("#whatif")).ToHaveCountAsync(0);
        Assert.Contains("count: 3", plan.OnDisk("plan.yaml"), StringComparison.Ordinal);
        Assert.Empty(faults);
    }
}
