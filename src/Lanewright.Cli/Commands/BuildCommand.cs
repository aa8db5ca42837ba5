using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Cli.Commands;

/// <summary><c>build</c>: judge a plan and write the documents to build from.</summary>
internal static class BuildCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var json = CommonOptions.Json();
        var output = new Option<string>("--out") { Description = "folder for the documents; made if it does not exist", Required = true };
        var format = new Option<string?>("--format") { Description = "formats of drawings, separated by commas: svg, png, pdf" };
        var command = new Command("build", "judge a plan and write its documents") { plan, output, format, json };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(plan), parsed.GetRequiredValue(output),
            PictureFormats.Read(parsed.GetValue(format)), parsed.GetValue(json)));
        return command;
    }

    private static int Run(string plan, string folder, IReadOnlySet<string> formats, bool asJson)
    {
        var judged = CommonOptions.Compile(plan);
        var documents = PictureFormats.With(DeliverySet.Of(judged), formats, (judged.Plan?.Name ?? "plan") + ", drawings");
        var written = Screen.WithProgress(step => DocumentFolder.Write(folder, documents, step));
        if (asJson)
        {
            Screen.Document(stream => SummaryJson.Write(judged, written, stream));
        }
        else
        {
            FindingPrinter.Print(Screen.Lines, judged.Findings);
            Print(judged, folder, written);
        }
        return judged.HasErrors ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
    }

    private static void Print(JudgedPlan judged, string folder, IReadOnlyList<string> written)
    {
        if (judged.Designed is { } designed)
        {
            var summary = PlanSummary.Of(designed);
            if (designed.Plan.Wanted is not null && summary.Devices == 0)
                Screen.Line("the plan describes no devices, only the fabric that is wanted: 'lanewright size' answers what to buy, and its "
                    + "'--write' makes a plan to build from");
            Screen.Line(
                $"{designed.Plan.Title}: {Numerals.Grouped(summary.Devices)} devices, {Numerals.Grouped(summary.Links)} links "
                + $"in {summary.Classes} classes, {Numerals.Grouped(summary.Cables)} cables");
            Screen.Line(
                $"to buy {Numerals.Grouped(summary.Price.Units)} {designed.Plan.Currency}{summary.Missing}, "
                + $"at most {Numerals.Grouped((decimal)summary.Power.Value)} W; "
                + $"links: {summary.Passing} pass, {summary.Unproven} unproven, {summary.Failing} fail");
        }
        var listed = string.Join(", ", written.Where(w => !w.Contains('/')));
        var drawings = written.Any(w => w.Contains('/')) ? ", drawings/" : "";
        Screen.Line($"{written.Count} documents in {folder}: {listed}{drawings}");
    }
}
