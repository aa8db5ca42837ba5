using System.Diagnostics;
using System.Net.Http.Headers;
using System.Text.Json;
using Lanewright.Quantities;
using Lanewright.Workbench;

namespace Lanewright.Bench;

/// <summary>From a stroke to what a window shows, without the browser: the text is typed over HTTP, then the change is waited for, and the
/// page in sight and the findings are fetched as its script does.</summary>
internal static class SeenBench
{
    private const int Runs = 12;

    /// <summary>Prints the milliseconds for each sheet.</summary>
    public static void Run(IEnumerable<int> sizes)
    {
        Console.WriteLine();
        Console.WriteLine("edit of one line: milliseconds from the stroke until the sheet in sight and the findings are there, over HTTP");
        foreach (var size in sizes) Of(size).GetAwaiter().GetResult();
    }

    private static async Task Of(int size)
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            var text = GeneratedPlan.Of(size);
            var file = Path.Combine(folder, "plan.yaml");
            await File.WriteAllTextAsync(file, text).ConfigureAwait(false);
            await using var server = await WorkbenchServer.StartAsync(file, 0).ConfigureAwait(false);
            using var window = new Window(server);
            await window.Judged().ConfigureAwait(false);
            foreach (var sheet in new[] { "plan", "links", "brief", "findings", "racks", "floor" })
            {
                var (best, cpu) = (double.MaxValue, double.MaxValue);
                var bytes = 0;
                for (var run = 0; run < Runs; run++)
                {
                    // The revision is what tells in the title block that a page is of the new text.
                    var mark = $"{sheet}-{run}";
                    var edited = text.Replace("up-2: { ", $"up-2: {{ length: {20 + run} m, ", StringComparison.Ordinal)
                        .Replace("name: ", $"revision: {mark}\nname: ", StringComparison.Ordinal);
                    await window.Settle().ConfigureAwait(false);
                    var before = Environment.CpuUsage.TotalTime;
                    var watch = Stopwatch.StartNew();
                    bytes = await window.Edit(edited, sheet, mark).ConfigureAwait(false);
                    best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
                    cpu = Math.Min(cpu, (Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
                    await window.Edit(text, sheet, "").ConfigureAwait(false);
                }
                Console.WriteLine($"  {Numerals.Whole(size),7} links, sheet {sheet,-8} {Numerals.Fixed(best, 0),5} ms, "
                    + $"{Numerals.Fixed(cpu, 0)} ms of all cores, {Numerals.Whole(bytes / 1024)} KiB sent");
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>What the script of a window does.</summary>
    private sealed class Window(WorkbenchServer server) : IDisposable
    {
        private readonly HttpClient http = new();
        private readonly string root = server.Address.ToString()[..^"brief".Length];
        private long seen;

        public void Dispose() => http.Dispose();

        /// <summary>Waits until the plan is judged for the first time.</summary>
        public async Task Judged()
        {
            while (true)
            {
                using var answer = await http.GetAsync(root + "text?file=plan.yaml").ConfigureAwait(false);
                if (answer.IsSuccessStatusCode) return;
                await Task.Delay(50).ConfigureAwait(false);
            }
        }

        /// <summary>Waits until nothing changes any more.</summary>
        public async Task Settle()
        {
            while (true)
            {
                var ticks = await Ticks(seen, 300).ConfigureAwait(false);
                if (ticks == seen) return;
                seen = ticks;
            }
        }

        /// <summary>Types a text and fetches what is new until it is of that text. Bytes that came.</summary>
        public async Task<int> Edit(string text, string sheet, string mark)
        {
            using var state = JsonDocument.Parse(await http.GetStringAsync(root + "text?file=plan.yaml&have=-1").ConfigureAwait(false));
            var version = state.RootElement.GetProperty("version").GetInt64();
            using var request = new HttpRequestMessage(HttpMethod.Post, $"{root}type?file=plan.yaml&version={version}")
            {
                Content = new StringContent(text),
            };
            request.Headers.Add("Origin", $"http://{server.Address.Authority}");
            request.Content.Headers.ContentType = new MediaTypeHeaderValue("text/plain");
            using var answer = await http.SendAsync(request).ConfigureAwait(false);
            answer.EnsureSuccessStatusCode();
            while (true)
            {
                seen = await Ticks(seen, 20_000).ConfigureAwait(false);
                var page = http.GetStringAsync(root + sheet);
                var more = sheet == "links" ? http.GetByteArrayAsync(root + "rows?from=0&count=100&filter=&sort=")
                    : http.GetByteArrayAsync($"{root}text?file=plan.yaml&have={version + 1}");
                var (came, rest) = (await page.ConfigureAwait(false), await more.ConfigureAwait(false));
                var isNew = mark.Length > 0 ? came.Contains(mark, StringComparison.Ordinal)
                    : !came.Contains(">revision<", StringComparison.Ordinal);
                if (isNew && !came.Contains("data-work", StringComparison.Ordinal)) return came.Length + rest.Length;
            }
        }

        private async Task<long> Ticks(long from, int most)
        {
            using var off = new CancellationTokenSource(most);
            try
            {
                using var json = JsonDocument.Parse(await http.GetStringAsync($"{root}state?seen={from}", off.Token).ConfigureAwait(false));
                return json.RootElement.GetProperty("ticks").GetInt64();
            }
            catch (OperationCanceledException)
            {
                return from;
            }
        }
    }
}
