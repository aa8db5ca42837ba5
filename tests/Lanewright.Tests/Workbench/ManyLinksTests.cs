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
        await using var plan = await OpenedPlan.OfText(Text());
        var (editor, faults) = await chromium.Window();
        var (links, _) = await chromium.Window();
        await editor.GotoAsync(plan.Root + "plan");
        await links.GotoAsync(plan.Root + "links");
        await links.Locator("#links .line").First.WaitForAsync(new() { Timeout = 60_000 });
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
        await Edit(editor, links);
        Assert.Empty(faults);
    }

    /// <summary>Types one character that makes an error, several times, and waits until both windows show it.</summary>
    private async Task Edit(IPage editor, IPage links)
    {
        var area = editor.Locator("#editor textarea");
        await Assertions.Expect(area).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("generated"));
        await area.EvaluateAsync("a => { const at = a.value.indexOf('fixed-32x400') + 12; a.setSelectionRange(at, at); a.focus() }");
        var times = new List<(long Findings, long Sheet)>();
        for (var i = 0; i < 5; i++)
        {
            var watch = Stopwatch.StartNew();
            await editor.Keyboard.TypeAsync("x");
            var seen = editor.Locator("#editor .found .stop").First.WaitForAsync();
            var followed = links.Locator("#block .act").First.WaitForAsync();
            await seen;
            var findings = watch.ElapsedMilliseconds;
            await followed;
            times.Add((findings, watch.ElapsedMilliseconds));
            await editor.Keyboard.PressAsync("Backspace");
            await Assertions.Expect(editor.Locator("#editor .found .stop")).ToHaveCountAsync(0);
            await Assertions.Expect(links.Locator("#block .act")).ToHaveCountAsync(0);
        }
        output.WriteLine("edit of one line: findings after " + string.Join(", ", times.Select(t => t.Findings)) + " ms, the other window's "
            + "sheet after " + string.Join(", ", times.Select(t => t.Sheet)) + " ms");
        // Far above the aim: a busy machine shall not fail it, links judged one by one shall.
        Assert.True(times.Min(t => t.Sheet) < 20_000);
    }

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
