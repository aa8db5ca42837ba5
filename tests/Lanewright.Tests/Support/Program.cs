using System.Diagnostics;

namespace Lanewright.Tests.Support;

/// <summary>Runs the program in a process of its own, in the root of the checkout.</summary>
internal static class Program
{
    public static (int Code, string Output, string Error) Run(string arguments)
    {
        var program = System.Reflection.Assembly.Load("lanewright").Location;
        var start = new ProcessStartInfo("dotnet", $"\"{program}\" {arguments}")
        {
            WorkingDirectory = Repository.Root,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start");
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }
}
