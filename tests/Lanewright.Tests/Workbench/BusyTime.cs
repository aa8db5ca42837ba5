using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>How long a page's thread has been busy, as the browser counts it (TaskDuration of the domain Performance of the Chrome DevTools
/// Protocol).</summary>
internal sealed class BusyTime
{
    private readonly ICDPSession session;

    private BusyTime(ICDPSession session) => this.session = session;

    public static async Task<BusyTime> Of(IPage page)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Performance.enable");
        return new BusyTime(session);
    }

    public async Task<double> Milliseconds()
    {
        var found = await session.SendAsync("Performance.getMetrics");
        var all = found!.Value.GetProperty("metrics").EnumerateArray();
        return all.First(m => m.GetProperty("name").GetString() == "TaskDuration").GetProperty("value").GetDouble() * 1000;
    }
}
