using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>Pictures of sheets, taken where the variable LANEWRIGHT_SHOTS names a folder.</summary>
internal static class Shots
{
    private static readonly string? Folder = Environment.GetEnvironmentVariable("LANEWRIGHT_SHOTS");

    public static bool AreTaken => Folder is not null;

    public static string PathOf(string name) => Path.Combine(Folder ?? "", name);

    public static async Task Take(IPage page, string name)
    {
        if (Folder is null) return;
        await page.WaitForTimeoutAsync(500);
        await page.ScreenshotAsync(new() { Path = PathOf($"{name.Replace(' ', '-')}-{page.ViewportSize!.Width}.png") });
    }
}
