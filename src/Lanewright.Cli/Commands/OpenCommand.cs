using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Workbench;

namespace Lanewright.Cli.Commands;

/// <summary><c>open</c>: the workbench, served to this machine alone.</summary>
internal static class OpenCommand
{
    private const int HighestPort = 65535;

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var port = new Option<int>("--port") { Description = "port on this machine; without it any that is free" };
        var noBrowser = new Option<bool>("--no-browser") { Description = "print the address and open no browser" };
        var command = new Command("open", "open a plan in the browser, to read, change and print it") { plan, port, noBrowser };
        command.SetAction((parsed, stop) =>
            Run(parsed.GetRequiredValue(plan), parsed.GetValue(port), !parsed.GetValue(noBrowser), stop));
        return command;
    }

    private static async Task<int> Run(string named, int port, bool opensBrowser, CancellationToken stop)
    {
        if (port is < 0 or > HighestPort) throw new UsageFault($"--port is a number from 1 to {HighestPort}");
        try
        {
            await using var server = await WorkbenchServer.StartAsync(DiskFiles.PlanPath(named), port).ConfigureAwait(false);
            Screen.Line(server.Address.ToString());
            Screen.Line("Whoever has this address can read and change the plan; it works on this machine only. Ctrl C ends it.");
            using var door = opensBrowser ? BrowserDoor.Open(server.Address) : null;
            if (door is { IsOpen: false }) Screen.Line("No browser could be opened; open the address yourself.");
            await Task.Delay(Timeout.Infinite, stop).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            return ExitCodes.NoErrors;
        }
        catch (WorkbenchFault fault)
        {
            throw new UsageFault(fault.Message);
        }
    }
}
