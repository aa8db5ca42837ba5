using System.Diagnostics;

namespace Lanewright.Tests.Workbench;

/// <summary>A plan opened as a person opens it: by the program, in a process of its own.</summary>
internal sealed class StartedProgram : IAsyncDisposable
{
    private readonly Process process;
    private readonly string folder;

    private StartedProgram(Process process, string folder, Uri address, Stopwatch since)
    {
        this.process = process;
        this.folder = folder;
        Root = address.ToString()[..^"brief".Length];
        Since = since;
    }

    /// <summary>Where its addresses begin.</summary>
    public string Root { get; }

    /// <summary>Runs from the moment the program was started.</summary>
    public Stopwatch Since { get; }

    /// <summary>What the program has used of the machine's processors.</summary>
    public TimeSpan Used
    {
        get
        {
            process.Refresh();
            return process.TotalProcessorTime;
        }
    }

    /// <summary>Opens a text as a plan.</summary>
    public static Task<StartedProgram> OfText(string text) => Of([("plan.yaml", text)]);

    /// <summary>Opens a copy of an example.</summary>
    public static Task<StartedProgram> OfExample(string name) =>
        Of([.. Directory.GetFiles(Repository.Path("examples", name)).Select(f => (Path.GetFileName(f), File.ReadAllText(f)))]);

    public async ValueTask DisposeAsync()
    {
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    private static async Task<StartedProgram> Of(IEnumerable<(string Name, string Text)> files)
    {
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        foreach (var (name, text) in files) await File.WriteAllTextAsync(Path.Combine(folder, name), text);
        var program = System.Reflection.Assembly.Load("lanewright").Location;
        var start = new ProcessStartInfo("dotnet", $"\"{program}\" open \"{folder}\" --no-browser") { RedirectStandardOutput = true };
        var since = Stopwatch.StartNew();
        var process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start");
        var address = await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken);
        return new StartedProgram(process, folder, new Uri(address ?? ""), since);
    }
}
