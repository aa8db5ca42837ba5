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
        var listen = new Option<string?>("--listen")
        {
            Description = "another address of this machine to serve on, by number, for others to look on; needs a passphrase and is not "
                + "encrypted",
        };
        var phrase = new Option<string?>("--passphrase-file")
        {
            Description = "file whose first line is the passphrase for --listen; without it the passphrase is asked for",
        };
        var command = new Command("open", "open a plan in the browser, to read, change and print it")
        {
            plan, port, noBrowser, listen, phrase,
        };
        command.SetAction((parsed, stop) => Run(
            parsed.GetRequiredValue(plan), parsed.GetValue(port), !parsed.GetValue(noBrowser),
            PassphraseSource.Elsewhere(parsed.GetValue(listen), parsed.GetValue(phrase)), stop));
        return command;
    }

    private static async Task<int> Run(string named, int port, bool opensBrowser, Elsewhere? elsewhere, CancellationToken stop)
    {
        if (port is < 0 or > HighestPort) throw new UsageFault($"--port is a number from 1 to {HighestPort}");
        try
        {
            await using var server = await WorkbenchServer.StartAsync(DiskFiles.PlanPath(named), port, elsewhere, practises: true)
                .ConfigureAwait(false);
            Screen.Line(server.Address.ToString());
            foreach (var line in What(elsewhere)) Screen.Line(line);
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

    private static IEnumerable<string> What(Elsewhere? elsewhere) => elsewhere is null
        ? ["Whoever has this address can read and change the plan; it works on this machine only. Ctrl C ends it."]
        :
        [
            "Everybody who can reach this address and knows the passphrase can read and change the plan. Ctrl C ends it.",
            "The connection is plain HTTP: whoever can listen on the network between can read the passphrase, the plan and what is typed, "
                + "and can put something else in its place. Use it on a network you trust, or through a tunnel that encrypts.",
        ];
}
