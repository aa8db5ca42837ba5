using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;

namespace Lanewright.Cli.Commands;

/// <summary><c>new</c>: a plan to start from.</summary>
internal static class NewCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var path = new Argument<string>("PATH") { Description = "the plan file to write; an existing file is never overwritten" };
        var command = new Command("new", "write a commented plan to start from") { path };
        command.SetAction(parsed =>
        {
            var target = parsed.GetRequiredValue(path);
            if (string.IsNullOrWhiteSpace(target)) throw new UsageFault("the plan file has no name; write 'lanewright new PATH'");
            if (File.Exists(target) || Directory.Exists(target))
                throw new UsageFault($"'{target}' exists already and is left as it is; name another file");
            var folder = Path.GetDirectoryName(Path.GetFullPath(target)) ?? ".";
            DocumentFolder.Write(folder, [new Deliverable(Path.GetFileName(target), PlanStarter.Write)], _ => { });
            Screen.Line($"wrote {target}; 'lanewright check {target}' judges it");
            return ExitCodes.NoErrors;
        });
        return command;
    }
}
