using System.Diagnostics;

namespace Lanewright.Tests.Support;

/// <summary>Asks the distribution's own Python, which has the reference libraries that ./check installs; another one on the path may
/// not.</summary>
internal static class Python
{
    /// <summary>The lines that a script writes when it reads questions, a line each.</summary>
    public static List<string> Ask(string script, IEnumerable<string> questions) => Run(["-c", script], questions);

    /// <summary>The same with a script of its own file.</summary>
    public static List<string> AskFile(string path, IEnumerable<string> questions) => Run([path], questions);

    private static List<string> Run(string[] arguments, IEnumerable<string> questions)
    {
        var start = new ProcessStartInfo("/usr/bin/python3", arguments)
        {
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var process = Process.Start(start) ?? throw new InvalidOperationException("python3 did not start");
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        foreach (var question in questions) process.StandardInput.WriteLine(question);
        process.StandardInput.Close();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, "./check installs what this test needs. " + error.Result);
        return [.. output.Result.Split('\n', StringSplitOptions.RemoveEmptyEntries)];
    }
}
