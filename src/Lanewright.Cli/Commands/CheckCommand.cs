using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;

namespace Lanewright.Cli.Commands;

/// <summary><c>check</c>: what is wrong with a plan.</summary>
internal static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var json = CommonOptions.Json();
        var command = new Command("check", "judge a plan and print the findings") { plan, json };
        command.SetAction(parsed =>
        {
            var judged = CommonOptions.Compile(parsed.GetRequiredValue(plan));
            if (parsed.GetValue(json)) Screen.Document(stream => FindingsJson.Write(judged, stream));
            else FindingPrinter.Print(Screen.Lines, judged);
            return judged.HasErrors ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
        });
        return command;
    }
}
