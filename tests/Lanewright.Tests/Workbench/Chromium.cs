using Microsoft.Playwright;

namespace Lanewright.Tests.Workbench;

/// <summary>The browser of the distribution, driven for tests; one for all of them.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser"];

    /// <summary>Milliseconds that a slow machine may take for what comes at once elsewhere.</summary>
    private const int Longest = 180_000;

    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>A window with nothing kept from others, and what went wrong in it.</summary>
    public async Task<(IPage Page, List<string> Faults)> Window(int width = 1440, int height = 900, ColorScheme ink = ColorScheme.Light)
    {
        var context = await browser!.NewContextAsync(new()
        {
            ViewportSize = new ViewportSize { Width = width, Height = height },
            ColorScheme = ink,
        });
        var page = await context.NewPageAsync();
        page.SetDefaultTimeout(Longest);
        var faults = new List<string>();
        page.PageError += (_, fault) => faults.Add(fault);
        page.Console += (_, said) =>
        {
            if (said.Type == "error" && !said.Text.Contains("Failed to load resource", StringComparison.Ordinal)
                && !said.Text.Contains("ERR_CONNECTION_REFUSED", StringComparison.Ordinal)) faults.Add(said.Text);
        };
        page.Dialog += async (_, dialog) =>
        {
            faults.Add("a name ran as a script: " + dialog.Message);
            await dialog.DismissAsync();
        };
        return (page, faults);
    }

    public async ValueTask InitializeAsync()
    {
        var program = Places.FirstOrDefault(File.Exists) ?? throw new InvalidOperationException("./check installs chromium; run it once");
        Assertions.SetDefaultExpectTimeout(Longest);
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Headless = true, Args = ["--no-sandbox"] });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null) await browser.DisposeAsync();
        playwright?.Dispose();
    }
}
