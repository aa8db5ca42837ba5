using System.CommandLine;
using Lanewright.Cli.Printing;

namespace Lanewright.Cli;

/// <summary>Runs a command line and turns every way it can go wrong into a message and an exit code.</summary>
internal static class CommandRunner
{
    /// <summary>Runs the arguments.</summary>
    public static int Run(RootCommand root, string[] args)
    {
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) Console.Error.WriteLine("lanewright: " + Printable.Of(error.Message));
            Console.Error.WriteLine($"lanewright: '{Name(parsed.CommandResult.Command)} --help' shows how it is used");
            return ExitCodes.CouldNotRun;
        }
        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (UsageFault fault)
        {
            Console.Error.WriteLine("lanewright: " + Printable.Of(fault.Message));
            return ExitCodes.CouldNotRun;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine("lanewright: " + Printable.Of(fault.Message));
            return ExitCodes.CouldNotRun;
        }
    }

    private static string Name(Command command) => command is RootCommand ? "lanewright" : "lanewright " + command.Name;
}
