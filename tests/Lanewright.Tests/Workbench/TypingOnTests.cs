using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>What is typed while an answer of the workbench is on its way is neither lost nor put over what somebody else wrote.</summary>
[Collection(BrowserCollection.Name)]
public sealed class TypingOnTests(Chromium chromium)
{
    private const string Plan = "lanewright: 1\nname: small\ntitle: one\n# kept\n# kept\nrevision: A";

    [Fact]
    public async Task ChangeOutside_IsKeptWhileSomebodyTypesOn()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        var area = await Opened(page, plan);
        var held = await Held.On(page, "**/type?*");
        var outside = Plan.Replace("one", "OUTSIDE", StringComparison.Ordinal);
        await File.WriteAllTextAsync(Path.Combine(plan.Folder, "plan.yaml"), outside, TestContext.Current.CancellationToken);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == outside);
        await page.Keyboard.TypeAsync("b");
        // The workbench has put both together; before the window learns of it, the next key is struck.
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == outside + "b");
        await page.Keyboard.TypeAsync("c");
        held.Release();
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == outside + "bc");
        await Assertions.Expect(area).ToHaveValueAsync(outside + "bc");
        await Assertions.Expect(page.Locator("#editor .torn")).ToBeHiddenAsync();
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Save_WithNothingToSaveEatsNoStroke()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        var area = await Opened(page, plan);
        var held = await Held.On(page, "**/save?*");
        await page.Keyboard.PressAsync("Control+s");
        await Patience.Until("the save", () => Task.FromResult(held.Answered == 1));
        await page.Keyboard.TypeAsync("bcd");
        held.Release();
        await Assertions.Expect(page.Locator("#editor .said")).ToContainTextAsync("Nothing to save");
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == Plan + "bcd");
        await Assertions.Expect(area).ToHaveValueAsync(Plan + "bcd");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Save_TakesTheTextAsItWasAndWhatIsTypedMeanwhileFollows()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        var area = await Opened(page, plan);
        var held = await Held.On(page, "**/save?*");
        await page.Keyboard.TypeAsync("b");
        await page.Keyboard.PressAsync("Control+s");
        await Patience.Until("the save", () => Task.FromResult(held.Answered == 1));
        await page.Keyboard.TypeAsync("c");
        held.Release();
        await Assertions.Expect(page.Locator("#editor .said")).ToContainTextAsync("Saved");
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == Plan + "bc");
        await page.Keyboard.TypeAsync("d");
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == Plan + "bcd");
        await Assertions.Expect(area).ToHaveValueAsync(Plan + "bcd");
        await Assertions.Expect(page.Locator("#editor .torn")).ToBeHiddenAsync();
        Assert.Equal(Plan + "b", plan.OnDisk("plan.yaml"));
        Assert.Empty(faults);
    }

    /// <summary>The caret at the end of the plan, in a window that does not follow changes by itself.</summary>
    private static async Task<ILocator> Opened(IPage page, OpenedPlan plan)
    {
        await page.RouteAsync("**/state?*", _ => Task.CompletedTask);
        await page.GotoAsync(plan.Root + "plan");
        var area = page.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync(Plan);
        await area.FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        return area;
    }
}
