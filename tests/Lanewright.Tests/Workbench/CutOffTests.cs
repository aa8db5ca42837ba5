using System.Globalization;
using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>A window whose texts the workbench does not take: it asks again with patience, and says what is kept and what is not.</summary>
[Collection(BrowserCollection.Name)]
public sealed class CutOffTests(Chromium chromium)
{
    private const string Plan = "lanewright: 1\nname: small\ntitle: one";

    [Fact]
    public async Task TextThatIsNotTakenNow_IsSentAgainLaterAndLater()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        await Opened(page, plan);
        var isOpen = false;
        await Answer(page, async (route, number) =>
        {
            if (isOpen) await route.ContinueAsync();
            else await route.FulfillAsync(new() { Status = 500, Body = $"refusal {number}." });
        });
        await page.Keyboard.TypeAsync("b");
        await page.Clock.RunForAsync(10);
        foreach (var (number, wait) in new[] { 1000, 2000, 4000, 8000, 10_000, 10_000 }.Index())
        {
            var refusals = (number + 1).ToString(CultureInfo.InvariantCulture);
            await Assertions.Expect(page.Locator("#editor .said")).ToHaveTextAsync($"refusal {refusals}.");
            // A key that is struck meanwhile does not hasten it, and one a moment before does not put it off.
            if (number is 1 or 4) await page.Keyboard.TypeAsync("c");
            await page.Clock.RunForAsync(wait - 1);
            Assert.Equal(number + 1, await Posts(page));
            await page.Clock.RunForAsync(1);
            Assert.Equal(number + 2, await Posts(page));
        }
        await Assertions.Expect(page.Locator("#editor .said")).ToHaveTextAsync("refusal 7.");
        isOpen = true;
        await page.Clock.RunForAsync(10_000);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == Plan + "bcc");
        await Assertions.Expect(page.Locator("#editor .said")).ToHaveTextAsync("");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task TextThatIsTooLarge_IsSentAgainOnceItIsAnother()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        await Opened(page, plan);
        await Answer(page, (route, _) => route.FulfillAsync(new() { Status = 413, Body = "larger than the workbench takes" }));
        await page.Keyboard.TypeAsync("b");
        await page.Clock.RunForAsync(10);
        await Assertions.Expect(page.Locator("#editor .said")).ToContainTextAsync("larger");
        await page.Clock.RunForAsync(60_000);
        Assert.Equal(1, await Posts(page));
        await page.Keyboard.TypeAsync("c");
        await page.Clock.RunForAsync(10);
        Assert.Equal(2, await Posts(page));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Save_OfATextThatIsNotTakenSavesNoOlderOne()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        await Opened(page, plan);
        await page.Keyboard.TypeAsync("b");
        await page.Clock.RunForAsync(10);
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == Plan + "b");
        await Answer(page, (route, _) => route.FulfillAsync(new() { Status = 500, Body = "refusal" }));
        await page.Keyboard.TypeAsync("c");
        await page.Keyboard.PressAsync("Control+s");
        await Assertions.Expect(page.Locator("#editor .said")).ToHaveTextAsync("refusal");
        await Assertions.Expect(page.Locator("#editor textarea")).ToBeFocusedAsync();
        Assert.Equal(Plan, plan.OnDisk("plan.yaml"));
        Assert.Empty(faults);
    }

    [Fact]
    public async Task WorkbenchThatIsGone_IsNotSaidToKeepWhatIsTypedOn()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "plan");
        await Assertions.Expect(page.Locator("#editor textarea")).ToHaveValueAsync(Plan);
        await page.Locator("#editor textarea").FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("b");
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == Plan + "b");
        await plan.Server.DisposeAsync();
        await Assertions.Expect(page.Locator("#said")).ToContainTextAsync("is kept beside the plan");
        await page.Keyboard.TypeAsync("c");
        await Assertions.Expect(page.Locator("#said")).ToContainTextAsync("in this window alone");
        await Assertions.Expect(page.Locator("#said")).Not.ToContainTextAsync("is kept");
        Assert.Empty(faults);
        var asked = new TaskCompletionSource<string>(TaskCreationOptions.RunContinuationsAsynchronously);
        page.Dialog += (_, dialog) => asked.TrySetResult(dialog.Type);
        await page.CloseAsync(new() { RunBeforeUnload = true });
        Assert.Equal("beforeunload", await asked.Task);
    }

    [Fact]
    public async Task WindowWithNothingUnsent_ClosesUnasked()
    {
        await using var plan = await OpenedPlan.OfText(Plan);
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(plan.Root + "plan");
        await Assertions.Expect(page.Locator("#editor textarea")).ToHaveValueAsync(Plan);
        await page.Locator("#editor textarea").FocusAsync();
        await page.Keyboard.TypeAsync("b");
        await plan.TextWhen("plan.yaml", t => t.GetProperty("text").GetString() == "b" + Plan);
        var closed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        page.Close += (_, _) => closed.SetResult();
        await page.CloseAsync(new() { RunBeforeUnload = true });
        await closed.Task;
        Assert.Empty(faults);
    }

    /// <summary>The caret at the end of the plan, in a window whose clock stands still and that counts the texts it sends.</summary>
    private static async Task Opened(IPage page, OpenedPlan plan)
    {
        await page.Clock.InstallAsync();
        await page.AddInitScriptAsync("""
            const honest = window.fetch;
            window.posts = 0;
            window.fetch = (address, how) => {
              if (String(address).includes('/type?')) window.posts++;
              return honest(address, how);
            };
            """);
        await page.RouteAsync("**/state?*", _ => Task.CompletedTask);
        await page.GotoAsync(plan.Root + "plan");
        await Assertions.Expect(page.Locator("#editor textarea")).ToHaveValueAsync(Plan);
        await page.Locator("#editor textarea").FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Clock.PauseAtAsync(DateTime.UtcNow.AddHours(1));
    }

    private static async Task Answer(IPage page, Func<IRoute, int, Task> answer)
    {
        var number = 0;
        await page.RouteAsync("**/type?*", route => answer(route, Interlocked.Increment(ref number)));
    }

    private static Task<int> Posts(IPage page) => page.EvaluateAsync<int>("window.posts");
}
