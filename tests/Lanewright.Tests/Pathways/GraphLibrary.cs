using System.Diagnostics;

namespace Lanewright.Tests.Pathways;

/// <summary>Asks the general-purpose graph library networkx: a question a line in, an answer a line out.</summary>
internal static class GraphLibrary
{
    /// <summary>The answers of a script to questions.</summary>
    public static List<string> Ask(string script, IEnumerable<string> questions)
    {
        var start = new ProcessStartInfo("/usr/bin/python3")
        {
            ArgumentList = { "-c", script }, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
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
