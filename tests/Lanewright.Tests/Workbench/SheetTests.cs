using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>What the sheets of the demo do under the pointer and under the keys, in a real browser.</summary>
[Collection(BrowserCollection.Name)]
public sealed class SheetTests(Chromium chromium, OpenedDemo demo) : IClassFixture<OpenedDemo>
{
    [Fact]
    public async Task Fabric_TakesDownWhatIsChosenAndKeepsItInTheAddress()
    {
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(demo.Root + "fabric/D05");
        var full = page.Locator(".tried dd").First;
        await Assertions.Expect(full).ToHaveTextAsync("70 %");
        // A box by the pointer, another thing by the keys alone: Tab reaches the drawing, arrows move on it, Enter takes down.
        await page.Locator("figure svg.lw a[aria-label^='spine,']").ClickAsync();
        await Assertions.Expect(page.Locator(".tried .tag")).ToHaveCountAsync(1);
        await Assertions.Expect(full).ToContainTextAsync("70 % while all works");
        Assert.Matches(@"\?down=spine-\d$", page.Url);
        var one = await full.Locator("b").InnerTextAsync();
        await page.Locator("figure svg.lw a[tabindex='0']").First.FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await page.Keyboard.PressAsync("End");
        await page.Keyboard.PressAsync("ArrowUp");
        var label = await page.EvaluateAsync<string>("document.activeElement.getAttribute('aria-label')");
        Assert.Contains("take", label, StringComparison.Ordinal);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".tried .tag")).ToHaveCountAsync(2);
        Assert.True(await page.EvaluateAsync<bool>("document.activeElement.closest('svg.lw') !== null"), "the focus stays on the drawing");
        // The address is enough for somebody else, and going back takes one step back.
        var (other, _) = await chromium.Window();
        await other.GotoAsync(page.Url);
        await Assertions.Expect(other.Locator(".tried .tag")).ToHaveCountAsync(2);
        await page.GoBackAsync();
        await Assertions.Expect(page.Locator(".tried .tag")).ToHaveCountAsync(1);
        await Assertions.Expect(full.Locator("b")).ToHaveTextAsync(one);
        await Shots.Take(page, "Fabric-down");
        await page.Locator(".tried a", new() { HasTextString = "all up again" }).ClickAsync();
        await Assertions.Expect(page.Locator(".tried .tag")).ToHaveCountAsync(0);
        await Assertions.Expect(full).ToHaveTextAsync("70 %");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Options_SliderTellsTheStretchItStandsIn()
    {
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(demo.Root + "options");
        // They take longer than a sheet should, so the sheet is there before them, tells how far they are and takes them in.
        await Assertions.Expect(page.Locator("#options table")).ToBeVisibleAsync();
        var energy = page.Locator(".slider[data-key='energy-price']");
        await energy.WaitForAsync();
        // Of prices the figure between two corners is told as well; the ratio changes what is cheapest.
        Assert.Equal("yes", await energy.GetAttributeAsync("data-exact"));
        var asked = await energy.Locator("input").InputValueAsync();
        Assert.True(await Stretches(energy) > 0, "the price of energy has a range");
        Assert.True(await Stretches(page.Locator(".slider[data-key='oversubscription']")) > 1, "the demo has a break-even of the ratio");
        var slider = energy.Locator("input");
        await Set(slider, double.Parse(asked, CultureInfo.InvariantCulture) * 2);
        // The window's address keeps where it stands; the keys move it; a button puts it back.
        Assert.Contains("#energy-price=", page.Url, StringComparison.Ordinal);
        await Shots.Take(page, "Options-moved");
        var before = await slider.InputValueAsync();
        await slider.FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        Assert.NotEqual(before, await slider.InputValueAsync());
        await energy.Locator("button").ClickAsync();
        Assert.Equal(asked, await slider.InputValueAsync());
        Assert.DoesNotContain("#", page.Url, StringComparison.Ordinal);
        Assert.Empty(faults);
    }

    /// <summary>Moves a slider into the middle of each of its stretches; how many it has.</summary>
    private static async Task<int> Stretches(ILocator one)
    {
        using var stretches = JsonDocument.Parse((await one.GetAttributeAsync("data-stretches"))!);
        foreach (var stretch in stretches.RootElement.EnumerateArray())
        {
            var middle = (stretch.GetProperty("from").GetDouble() + stretch.GetProperty("to").GetDouble()) / 2;
            await Set(one.Locator("input"), middle);
            await Assertions.Expect(one.Locator("output")).ToContainTextAsync(stretch.GetProperty("name").GetString()!);
            if (await one.GetAttributeAsync("data-exact") != "yes") continue;
            var points = stretch.GetProperty("points").EnumerateArray()
                .Select(p => (X: p[0].GetDouble(), Y: p[1].GetDouble())).ToList();
            // Between two corners of a chain of straight lines the price is in proportion.
            var (a, b) = points.Zip(points.Skip(1)).First(p => p.Second.X >= middle);
            var price = a.Y + ((b.Y - a.Y) * ((middle - a.X) / (b.X - a.X)));
            var said = Regex.Replace(await one.Locator("output").InnerTextAsync(), "[\u202f\u00a0]", "");
            Assert.Contains(Math.Round(price).ToString(CultureInfo.InvariantCulture), said, StringComparison.Ordinal);
        }
        return stretches.RootElement.GetArrayLength();
    }

    private static async Task Set(ILocator slider, double value) => await slider.EvaluateAsync(
        "(s, v) => { s.value = v; s.dispatchEvent(new Event('input', { bubbles: true })); }", value.ToString(CultureInfo.InvariantCulture));

    [Fact]
    public async Task NamesOnDrawings_AreReachedAndOpenedByKeys()
    {
        var (page, faults) = await chromium.Window();
        await page.GotoAsync(demo.Root + "racks");
        await page.Locator("figure svg.lw a.way").First.WaitForAsync();
        // Every drawing is one stop of the tab key.
        var stops = await page.Locator("figure svg.lw a[tabindex='0']").CountAsync();
        Assert.Equal(await page.Locator("figure svg.lw:has(a)").CountAsync(), stops);
        await page.Locator("figure svg.lw a[tabindex='0']").First.FocusAsync();
        // Devices are named from the floor up, and below the lowest stand the feeds of the rack.
        await page.Keyboard.PressAsync("ArrowUp");
        var name = await page.EvaluateAsync<string>("document.activeElement.textContent");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync(name);
        // The device leads to its rack, where its name stands out.
        await page.Locator("#sheet p a").First.ClickAsync();
        await Assertions.Expect(page.Locator("figure text.picked").First).ToHaveTextAsync(name);
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Links_PrintAllRowsOrSayHowManyAreLeftOut()
    {
        var (page, _) = await chromium.Window();
        await page.GotoAsync(demo.Root + "links");
        await page.Locator("#links .line").First.WaitForAsync();
        var all = int.Parse((await page.Locator("#links").GetAttributeAsync("aria-rowcount"))!, CultureInfo.InvariantCulture) - 1;
        await page.WaitForFunctionAsync(
            "all => { dispatchEvent(new Event('beforeprint')); const n = document.querySelectorAll('#paper tbody tr').length; "
            + "const words = document.querySelector('#paper p').textContent; dispatchEvent(new Event('afterprint')); "
            + "return n === all && words.includes(String(all)); }",
            all,
            new() { PollingInterval = 300 });
        Assert.Equal(0, await page.Locator("#paper").CountAsync());
        var pdf = System.Text.Encoding.Latin1.GetString(await page.PdfAsync(new() { PreferCSSPageSize = true }));
        // 1277 rows do not go on fewer than ten sheets of A3 at any size that can be read.
        Assert.True(Regex.Count(pdf, @"/Type\s*/Page\b") >= 10, "the print holds the whole table");
        await page.GotoAsync(demo.Root + "plan/storage.yaml");
        await Assertions.Expect(page.Locator("#editor textarea")).ToHaveValueAsync(new Regex("devices:"));
        var printed = await page.EvaluateAsync<string>(
            "dispatchEvent(new Event('beforeprint')), document.querySelector('#paper pre').textContent");
        var text = await page.Locator("#editor textarea").InputValueAsync();
        Assert.Equal(text.Split('\n').Length, printed.Split('\n').Length);
        Assert.EndsWith(text.Split('\n')[4], printed.Split('\n')[4], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Words_StandOutFromWhatTheyStandOn(ColorScheme ink)
    {
        var (page, _) = await chromium.Window(1280, 800, ink);
        foreach (var sheet in new[] { "brief", "options", "fabric/D05", "links", "findings", "plan/plan.yaml", "why/price" })
        {
            await page.GotoAsync(demo.Root + sheet);
            await page.Locator("h1").First.WaitForAsync();
            // WCAG 2.2, success criterion 1.4.3, of every word as the browser draws it; what is disabled is exempt.
            var faint = await page.EvaluateAsync<string[]>(FaintWords);
            Assert.True(faint.Length == 0, $"{sheet}, {ink}: {string.Join("; ", faint.Take(5))}");
            // A 13-inch laptop: nothing makes the page wider than the window.
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{sheet} is too wide");
        }
    }

    /// <summary>No table of the demo goes on out of sight, on the screens of two laptops and on a print of A3.</summary>
    [Theory]
    [InlineData(1440, Media.Screen)]
    [InlineData(1280, Media.Screen)]
    [InlineData(1512, Media.Print)]
    public async Task Tables_FitTheSheet(int width, Media media)
    {
        var (page, _) = await chromium.Window(width, 900);
        await page.EmulateMediaAsync(new() { Media = media });
        foreach (var sheet in new[] { "parts", "floor", "lines", "plant", "options", "why/price", "why/verdicts", "why/trunk/headland" })
        {
            await page.GotoAsync(demo.Root + sheet);
            await page.Locator(".roll").First.WaitForAsync();
            var wide = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.roll')]"
                + ".filter(r => r.querySelector('table').scrollWidth > r.clientWidth).map(r => r.querySelector('caption').textContent)");
            Assert.True(wide.Length == 0, $"{sheet} at {width}: {string.Join("; ", wide)}");
        }
    }

    private const string FaintWords = """
        () => {
          const parse = c => c.match(/[\d.]+/g).map(Number);
          const lin = v => v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4;
          const lum = c => { const [r, g, b] = c.slice(0, 3).map(lin);
            return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
          const back = e => { for (let at = e; at; at = at.parentElement) { const c = parse(getComputedStyle(at).backgroundColor);
            if (c.length < 4 || c[3] > 0) return c; } return [255, 255, 255]; };
          const faint = [];
          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walk.nextNode()) {
            const e = walk.currentNode.parentElement;
            if (!walk.currentNode.textContent.trim() || e.closest('svg, [disabled], [hidden], .unseen, script')) continue;
            const [a, b] = [lum(parse(getComputedStyle(e).color)), lum(back(e))];
            const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
            if (ratio < 4.5) faint.push(`${walk.currentNode.textContent.trim().slice(0, 30)}: ${ratio.toFixed(2)}`);
          }
          return faint;
        }
        """;
}
