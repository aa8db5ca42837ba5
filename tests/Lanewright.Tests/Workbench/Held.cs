using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>Answers of the workbench to a window, held back until they are let go.</summary>
internal sealed class Held
{
    private readonly TaskCompletionSource released = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private int answered;

    private Held()
    {
    }

    /// <summary>How many answers are held or were.</summary>
    public int Answered => answered;

    /// <summary>Holds the answers of an address back: the workbench has done what it was asked to, and the window does not know.</summary>
    public static async Task<Held> On(IPage page, string address)
    {
        var held = new Held();
        await page.RouteAsync(address, async route =>
        {
            var answer = await route.FetchAsync();
            Interlocked.Increment(ref held.answered);
            await held.released.Task;
            await route.FulfillAsync(new() { Response = answer });
        });
        return held;
    }

    /// <summary>Lets them go, and all that come later.</summary>
    public void Release() => released.SetResult();
}
