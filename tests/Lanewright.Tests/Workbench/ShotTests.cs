using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>Pictures of every sheet of the demo, for eyes: <c>tests/shots FOLDER</c> takes them. Without a folder there is nothing to
/// take.</summary>
[Collection(BrowserCollection.Name)]
public sealed class ShotTests(Chromium chromium, OpenedDemo demo) : IClassFixture<OpenedDemo>
{
    /// <summary>Sheets behind the register.</summary>
    private static readonly string[] Behind =
    [
        "links/L000300", "classes/K020", "devices/spine-1", "parts/fixed-32x400", "rules/LW2401", "find?q=spine", "fabric/D05?down=spine-1",
        "why/price", "why/power", "why/devices", "why/cables", "why/rack/bay/survey/A/01",
        "why/verdicts", "why/length/L000300", "why/feed/storage-a", "why/tray/survey/over-S",
        "why/channel/W01a/1", "why/delay/W01a", "why/uptime/W01a", "plant/headland", "why/down/D06?down=tray%20survey%2Fover-S",
    ];

    public static TheoryData<int, int, ColorScheme> Windows => new()
    {
        { 1280, 720, ColorScheme.Light },
        { 1440, 900, ColorScheme.Light },
        { 1920, 1080, ColorScheme.Light },
        { 1440, 900, ColorScheme.Dark },
    };

    [Theory]
    [MemberData(nameof(Windows))]
    public async Task EverySheet_IsTakenAsASheetOfThatSize(int width, int height, ColorScheme ink)
    {
        Assert.SkipUnless(Shots.AreTaken, "LANEWRIGHT_SHOTS names no folder");
        var (page, faults) = await chromium.Window(width, height, ink);
        foreach (var sheet in await Sheets(page))
        {
            await Show(page, sheet);
            await Shots.Take(page, NameOf(sheet) + (ink == ColorScheme.Dark ? "-dark" : ""));
        }
        Assert.Empty(faults);
    }

    [Fact]
    public async Task EverySheet_IsPrinted()
    {
        Assert.SkipUnless(Shots.AreTaken, "LANEWRIGHT_SHOTS names no folder");
        var (page, _) = await chromium.Window();
        foreach (var sheet in await Sheets(page))
        {
            await Show(page, sheet);
            await page.PdfAsync(new() { PreferCSSPageSize = true, Path = Shots.PathOf(NameOf(sheet) + ".pdf") });
        }
    }

    private async Task<IEnumerable<string>> Sheets(IPage page)
    {
        await page.GotoAsync(demo.Root + "brief");
        var ways = await page.Locator("#register li a").EvaluateAllAsync<string[]>("all => all.map(a => a.getAttribute('href'))");
        return ways.Select(w => w[(w.LastIndexOf('/') + 1)..]).Concat(Behind);
    }

    private async Task Show(IPage page, string sheet)
    {
        await page.GotoAsync(demo.Root + sheet);
        await Assertions.Expect(page.Locator(".waiting[data-work]")).ToHaveCountAsync(0);
        await page.Locator("h1").First.WaitForAsync();
    }

    private static string NameOf(string sheet) => sheet.Replace('/', '_').Replace('?', '_');
}
