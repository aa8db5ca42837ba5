using System.CommandLine;
using System.Text.Json;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>why</c>: what a link of a plan could be made of, and why each other way lost.</summary>
internal static class WhyCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var plan = CommonOptions.Plan();
        var link = new Argument<string>("LINK") { Description = "a set of links by name, a link (L000001) or a class (K001)" };
        var json = CommonOptions.Json();
        var command = new Command("why", "show every way a link could be made and why each lost") { plan, link, json };
        command.SetAction(parsed => Run(
            CommonOptions.Compile(parsed.GetRequiredValue(plan)), parsed.GetRequiredValue(link), parsed.GetValue(json)));
        return command;
    }

    private static int Run(JudgedPlan judged, string name, bool asJson)
    {
        var designed = CommonOptions.Designed(judged);
        var choices = Named(designed, name);
        if (choices.Count == 0)
        {
            var known = designed.Plan.Statements.Select(s => s.Name);
            throw new UsageFault($"the plan has no set, link or class '{name}'{Spelling.DidYouMean(name, known)}");
        }
        if (asJson) Screen.Document(stream => Write(designed.Plan, choices, stream));
        else Print(designed.Plan, choices);
        return ExitCodes.NoErrors;
    }

    private static List<ClassChoice> Named(DesignedPlan designed, string name)
    {
        var (plan, design) = (designed.Plan, designed.Design);
        for (var link = 0; link < plan.Links.Count; link++)
            if (Identifiers.Link(link) == name) return [design.Choices[design.ClassOf(link)]];
        return [.. design.Choices.Where(c => c.Class.Statements.Any(s => s.Name == name) || Identifiers.Class(c.Class.Index, 0) == name)];
    }

    /// <summary>A table that stands there already is named and not printed again.</summary>
    private static void Print(Plan plan, List<ClassChoice> choices)
    {
        var printed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var choice in choices)
        {
            var rows = Rows(plan, choice);
            var key = string.Join('\n', rows.Select(r => string.Join('\t', r)));
            var name = Identifiers.Class(choice.Class.Index, 0);
            if (printed.TryGetValue(key, out var same)) Screen.Line($"{Heading(choice)}: the same ways as {same}, with the same verdicts");
            else Print(plan, choice, rows);
            printed.TryAdd(key, name);
        }
    }

    private static string Heading(ClassChoice choice) =>
        $"{Identifiers.Class(choice.Class.Index, 0)} of '{choice.Class.SetNames}': "
        + $"{choice.Class.Count} {(choice.Class.Count == 1 ? "link" : "links")} at {choice.Class.Statement.Rate}, "
        + $"{choice.Class.Needed?.ToString() ?? "unknown"} or longer";

    private static List<IReadOnlyList<string>> Rows(Plan plan, ClassChoice choice) =>
    [
        .. choice.Candidates.Select(s => (IReadOnlyList<string>)
        [
            s.Name != choice.Chosen?.Name ? "" : choice.Verdict == Verdict.Fail ? "nearest" : "taken",
            s.Name, s.MediumName, Checks.Word(s.Verdict),
            s.Price.ToString(), s.Power.Value.ToString("0.##"),
            LostBy.Reason(s, choice.Winner, plan.Currency),
        ]),
    ];

    private static void Print(Plan plan, ClassChoice choice, List<IReadOnlyList<string>> rows)
    {
        Screen.Line(Heading(choice));
        Screen.Print(["", "way", "medium", "verdict", plan.Currency + " a link", "W a link", "lost by"], rows);
        if (choice.Verdict == Verdict.Fail && SmallestChange.Of(plan, choice) is { } change) Screen.Line("smallest change: " + change);
    }

    private static void Write(Plan plan, List<ClassChoice> choices, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteStartArray("classes");
        foreach (var choice in choices) Write(writer, plan, choice);
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter writer, Plan plan, ClassChoice choice)
    {
        writer.WriteStartObject();
        writer.WriteString("class", Identifiers.Class(choice.Class.Index, 0));
        writer.WriteString("set", choice.Class.SetNames);
        writer.WriteNumber("count", choice.Class.Count);
        var isFailing = choice.Verdict == Verdict.Fail;
        writer.WriteString("chosen", isFailing ? "" : choice.Chosen?.Name ?? "");
        writer.WriteString("nearest", isFailing ? choice.Chosen?.Name ?? "" : "");
        writer.WriteString("smallestChange", choice.Verdict == Verdict.Fail ? SmallestChange.Of(plan, choice) ?? "" : "");
        writer.WriteStartArray("candidates");
        foreach (var candidate in choice.Candidates)
        {
            writer.WriteStartObject();
            SolutionJson.WriteKeys(writer, candidate);
            writer.WriteString("lostBy", LostBy.Reason(candidate, choice.Winner, plan.Currency));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
