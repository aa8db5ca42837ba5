using System.Net;
using Lanewright.Workbench;
using Spectre.Console;

namespace Lanewright.Cli;

/// <summary>Where the passphrase comes from that lets people in from other machines: a file of one's own, or the keyboard. Command lines
/// and variables can be read by others.</summary>
internal static class PassphraseSource
{
    private const UnixFileMode Others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.OtherRead | UnixFileMode.OtherWrite;

    /// <summary>The address to serve on with its passphrase; null for this machine alone.</summary>
    /// <exception cref="UsageFault">The address is none, or there is no passphrase that can be used.</exception>
    public static Elsewhere? Elsewhere(string? address, string? file)
    {
        if (address is null)
            return file is null ? null
                : throw new UsageFault("--passphrase-file goes with --listen; this machine alone needs no passphrase");
        if (!IPAddress.TryParse(address, out var number))
            throw new UsageFault($"'{address}' is no address by number; write one of this machine such as 192.0.2.7, or 0.0.0.0 for all it "
                + "has");
        try
        {
            return Workbench.Elsewhere.Of(number, file is null ? FromKeyboard() : FromFile(file));
        }
        catch (WorkbenchFault fault)
        {
            throw new UsageFault(fault.Message);
        }
    }

    private static string FromFile(string file)
    {
        if (!File.Exists(file)) throw new UsageFault($"the file '{file}' with the passphrase does not exist");
        if (!OperatingSystem.IsWindows() && (File.GetUnixFileMode(file) & Others) != 0)
            throw new UsageFault($"others on this machine can read or write '{file}'; take that from them with: chmod 600 {file}");
        return File.ReadLines(file).FirstOrDefault() ?? "";
    }

    private static string FromKeyboard()
    {
        if (Console.IsInputRedirected || Console.IsErrorRedirected)
            throw new UsageFault("--listen needs a passphrase: run it on a terminal, where it is asked for, or name a file that holds it "
                + "with --passphrase-file");
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        var phrase = console.Prompt(new TextPrompt<string>("Passphrase for those who open the plan:").Secret(null));
        if (console.Prompt(new TextPrompt<string>("The same again:").Secret(null)) != phrase)
            throw new UsageFault("the two were not the same; nothing was opened");
        return phrase;
    }
}
