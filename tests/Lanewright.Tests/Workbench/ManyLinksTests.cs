using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>A plan of a hundred thousand links in a real browser: what is measured is printed.</summary>
[Collection(BrowserCollection.Name)]
public sealed class ManyLinksTests(Chromium chromium, ITestOutputHelper output)
{
    private const int Rows = 98;

    [Fact]
    public async Task Links_ScrollAndFollowAnEdit()
    {
        await using var plan = await StartedProgram.OfText(Text());
        var (editor, faults) = await chromium.Window();
        var (links, _) = await chromium.Window();
        await editor.GotoAsync(plan.Root + "plan");
        await links.GotoAsync(plan.Root + "links");
        await links.Locator("#links .line").First.WaitForAsync();
        var total = int.Parse((await links.Locator("#links").GetAttributeAsync("aria-rowcount"))!, CultureInfo.InvariantCulture) - 1;
        Assert.InRange(total, 95_000, 105_000);
        var watch = Stopwatch.StartNew();
        for (var part = 1; part <= 20; part++)
        {
            var row = (int)((long)(total - 1) * part / 20);
            await links.Locator("#links .window").EvaluateAsync("(w, row) => { w.scrollTop = row * 27 }", row);
            await links.Locator($"#links .line[data-link='L{row + 1:D6}']").WaitForAsync();
        }
        output.WriteLine($"{total} links: 20 jumps through the table, {watch.ElapsedMilliseconds / 20} ms each on average");
        Assert.InRange(await links.Locator("#links .line").CountAsync(), 10, 80);
        await Shots.Take(links, "Links-many");
        await Edit(plan, editor, links);
        Assert.Empty(faults);
    }

    /// <summary>Types one character that makes an error, several times, and waits until both windows show it. A page takes the time itself,
    /// from the stroke until what was found is painted; processor time tells what a machine with nothing else to do would take.</summary>
    private async Task Edit(StartedProgram plan, IPage editor, IPage links)
    {
        var area = editor.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("generated"));
        await area.EvaluateAsync("a => { const at = a.value.indexOf('fixed-32x400') + 12; a.setSelectionRange(at, at); a.focus() }");
        var busy = (Editor: await BusyTime.Of(editor), Links: await BusyTime.Of(links));
        for (var i = 0; i < 6; i++)
        {
            await links.EvaluateAsync(Watch, "#block .act");
            await editor.EvaluateAsync(Watch, "#editor .found .stop");
            var (first, second) = (await busy.Editor.Milliseconds(), await busy.Links.Milliseconds());
            var server = plan.Used;
            await editor.Keyboard.TypeAsync("x");
            var found = await editor.EvaluateAsync<double[]>("window.painted");
            var followed = await links.EvaluateAsync<double[]>("window.painted");
            var used = (plan.Used - server).TotalMilliseconds;
            var pages = (await busy.Editor.Milliseconds() - first, await busy.Links.Milliseconds() - second);
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"edit of one line: findings painted {found[1] - found[0]:F0} ms after the stroke, the other window's sheet "
                + $"{followed[1] - found[0]:F0} ms; processor of the program {used:F0} ms, of the pages {pages.Item1:F0} and "
                + $"{pages.Item2:F0} ms"));
            // The window that is not typed in follows by itself, and after the stroke.
            Assert.True(followed[1] > found[0]);
            await editor.Keyboard.PressAsync("Backspace");
            await Assertions.Expect(editor.Locator("#editor .found .stop")).ToHaveCountAsync(0);
            await Assertions.Expect(links.Locator("#block .act")).ToHaveCountAsync(0);
        }
    }

    /// <summary>Takes down when the next stroke comes and when something has been painted that is not there yet. The page is told of what
    /// comes into it, so that watching asks for no frames of its own.</summary>
    private const string Watch = """
        what => {
          window.stroke = 0;
          document.addEventListener('input', () => { window.stroke = performance.timeOrigin + performance.now(); }, { once: true });
          window.painted = new Promise(done => {
            const watcher = new MutationObserver(() => {
              if (!document.querySelector(what)) return;
              watcher.disconnect();
              requestAnimationFrame(() => setTimeout(() => done([window.stroke, performance.timeOrigin + performance.now()])));
            });
            watcher.observe(document.documentElement, { subtree: true, childList: true });
          });
        }
        """;

    private static string Text()
    {
        var pods = ((Rows * 16 * 2) + 63) / 64;
        var spines = ((pods * 8) + 63) / 64;
        IEnumerable<int> rows = Enumerable.Range(1, Rows);
        return string.Join('\n', (string[])
        [
            "lanewright: 1", "name: generated", "policy: { connection-grade: B, connection-loss: 0.3 dB }",
            "sites: { site: { halls: { hall: { rows: {",
            .. rows.Select(r => $"  R{r}: {{ racks: 16, y: {r * 3} m }},"),
            .. Enumerable.Range(1, spines).Select(r => $"  S{r}: {{ racks: 16, y: {(Rows + r) * 3} m }},"),
            "} } } } }", "devices:",
            .. rows.SelectMany(r => new[]
            {
                $"  leaf-{r}: {{ model: fixed-32x400, racks: hall/R{r}, per-rack: 2, unit: 44 }}",
                $"  host-{r}: {{ model: server-2u, cards: nic-2x200, racks: hall/R{r}, per-rack: 16, unit: 4 }}",
                $"  keeper-{r}: {{ model: fixed-48x1-4x10, racks: hall/R{r}, unit: 42 }}",
            }),
            .. Enumerable.Range(1, pods).Select(p => $"  spine-{p}: {{ model: fixed-64x400, count: 8, racks: hall/S{((p - 1) / 8) + 1}/"
                + $"{(((p - 1) % 8) * 2) + 1}..{(((p - 1) % 8) * 2) + 2}, per-rack: 4, unit: 4, step: 8 }}"),
            "links:",
            .. rows.SelectMany(r => new[]
            {
                $"  edge-{r}: {{ from: host-{r}, to: leaf-{r}, pattern: same-rack, rate: 200G }}",
                $"  keep-{r}: {{ from: host-{r}, to: keeper-{r}, pattern: same-rack, rate: 1G }}",
                $"  up-{r}: {{ from: leaf-{r}, to: spine-{Math.Min(pods, ((r - 1) / 2) + 1)}, pattern: each-to-each, rate: 400G }}",
            }),
            "",
        ]);
    }
}
