using System.Diagnostics;

namespace Lanewright.Tests.Workbench;

/// <summary>Waits for what will come to be, however slow the machine is: a test must fail of what it tests, never of the time.</summary>
internal static class Patience
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    /// <summary>Looks until there is something to be seen.</summary>
    /// <param name="what">What is waited for, in words.</param>
    /// <param name="look">Looks once; null when it is not there yet.</param>
    public static async Task<T> For<T>(string what, Func<Task<T?>> look)
        where T : class
    {
        var watch = Stopwatch.StartNew();
        while (watch.Elapsed < Longest)
        {
            if (await look() is { } found) return found;
            await Task.Delay(Pause);
        }
        throw new TimeoutException($"{what} never came to be");
    }

    /// <summary>Looks until something holds.</summary>
    public static Task Until(string what, Func<Task<bool>> holds) => For(what, async () => await holds() ? "" : null);
}
