using Lanewright.Findings;
using Lanewright.Rules;
using Spectre.Console;

namespace Lanewright.Cli.Printing;

/// <summary>Prints findings for people: one a line, so that editors and terminals can jump to the place.</summary>
internal static class FindingPrinter
{
    /// <summary>Prints all, a line that counts them, and one that tells which rules could not speak yet.</summary>
    public static void Print(IAnsiConsole console, JudgedPlan judged)
    {
        Print(console, judged.Findings);
        if (judged.RulesWaiting > 0)
            console.WriteLine($"{Counted(judged.RulesWaiting, "rule")} about networks and loads "
                + $"{(judged.RulesWaiting == 1 ? "waits" : "wait")} until the errors are mended");
    }

    /// <summary>Prints findings, and a closing line that counts them.</summary>
    public static void Print(IAnsiConsole console, IReadOnlyCollection<Finding> findings)
    {
        foreach (var finding in findings)
        {
            var (path, position) = (finding.Span.Path, finding.Span.Position);
            var at = finding.Span.Source is null ? "" : $"{Printable.Of(path)}:{position.Line}:{position.Column}: ";
            var word = Word(finding.Severity);
            console.MarkupLineInterpolated(
                $"{at}[{Colour(finding.Severity)}]{word}[/] {finding.Kind.Code} {finding.Kind.Name}: {Printable.Of(finding.Message)}");
        }
        var errors = findings.Count(f => f.Severity == Severity.Error);
        var warnings = findings.Count(f => f.Severity == Severity.Warning);
        console.WriteLine($"{Counted(errors, "error")}, {Counted(warnings, "warning")}, {findings.Count - errors - warnings} advice");
    }

    /// <summary>A severity in one word.</summary>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "advice",
    };

    private static string Colour(Severity severity) => severity switch
    {
        Severity.Error => "red",
        Severity.Warning => "yellow",
        _ => "grey",
    };

    private static string Counted(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";
}
