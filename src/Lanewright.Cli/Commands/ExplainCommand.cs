using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>explain</c>: the page of a finding.</summary>
internal static class ExplainCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var code = new Argument<string?>("CODE")
        {
            Description = "a code or name, such as LW2401; without it all codes are listed",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var json = CommonOptions.Json();
        var command = new Command("explain", "print the page of a finding: what it means, why it matters, how to put it right")
        {
            code, json,
        };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(code) is { } named) Page(named, parsed.GetValue(json));
            else All(parsed.GetValue(json));
            return ExitCodes.NoErrors;
        });
        return command;
    }

    private static void Page(string named, bool asJson)
    {
        var page = RulePage.Find(named)
            ?? throw new UsageFault(
                $"no finding has the code or name '{named}'"
                + Spelling.DidYouMean(named, RuleBook.Kinds.SelectMany(k => new[] { k.Code, k.Name }))
                + "; 'lanewright explain' lists all");
        if (asJson) Screen.Document(stream => CodesJson.WritePage(page, stream));
        else Console.Out.WriteLine(page.Text.TrimEnd());
    }

    private static void All(bool asJson)
    {
        if (asJson)
        {
            Screen.Document(CodesJson.WriteAll);
            return;
        }
        Screen.Print(
            ["code", "name", "severity"],
            RuleBook.Kinds.Select(k => (IReadOnlyList<string>)[k.Code, k.Name, FindingPrinter.Word(k.Severity)]));
    }
}
