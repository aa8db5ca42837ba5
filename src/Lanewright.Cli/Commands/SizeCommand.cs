using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Fabrics;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Fabrics;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>size</c>: what fabric to buy.</summary>
internal sealed class SizeCommand
{
    private readonly Argument<string?> plan = new("PLAN")
    {
        Description = "a plan with a section 'wanted', or the folder that holds it; flags override the section",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly WantedOptions wanted = new();
    private readonly CountOptions count;
    private readonly Option<bool> breakEvens = new("--break-evens")
    {
        Description = "also find what would change the answer: prices of modules and energy, growth, oversubscription, hosts",
    };

    private readonly Option<string?> write = new("--write")
    {
        Description = "write one option as a plan to --out: its shape, or its number from 1",
    };

    private readonly Option<string?> output = new("--out")
    {
        Description = "folder for the option sheet, a plan of each option and, where quick or with --break-evens, charts of what would "
            + "change the answer; with --write, the plan file",
    };

    private readonly Option<bool> json = CommonOptions.Json();

    private SizeCommand() => count = new CountOptions(wanted);

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new SizeCommand();
        var command = new Command("size", "answer what fabric to buy, or count one from its radix") { options.plan };
        foreach (var option in options.wanted.All.Concat(options.count.All)) command.Options.Add(option);
        Option[] own = [options.breakEvens, options.write, options.output, options.json];
        foreach (var option in own) command.Options.Add(option);
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        if (count.IsAsked(parsed)) return count.Run(parsed, parsed.GetValue(plan), parsed.GetValue(json));
        var (chosen, target) = (parsed.GetValue(write), parsed.GetValue(output));
        if (chosen is not null && target is null) throw new UsageFault("--write needs --out, the plan file to write");
        var sized = Ask(parsed);
        if (sized is not { Study: { } study, Plan: { } asked }) return Unread(sized);
        var isFolder = target is not null && chosen is null;
        var withBreakEvens = parsed.GetValue(breakEvens) || (isFolder && study.IsQuick);
        var isTable = !parsed.GetValue(json);
        // What would change the answer takes long; options and their plans are there before it is looked for.
        if (study.Answer.Options.IsEmpty) Screen.WithProgress(step => InTheWay(study, step));
        if (chosen is not null && target is not null) WriteOne(asked, Chosen(study, chosen), target);
        if (isFolder && target is not null) WriteAll(asked, study, target, withBreakEvens: false);
        if (isTable) SizingPrinter.Print(study, asked.Currency);
        if (withBreakEvens && !study.Answer.Options.IsEmpty)
        {
            Screen.WithProgress(step => WorkOut(study, step));
            if (isFolder && target is not null) WriteAll(asked, study, target, withBreakEvens: true);
            if (isTable) SizingPrinter.PrintBreakEvens(study, asked.Currency);
        }
        if (!isTable) Screen.Document(stream => SizingJson.Write(study, asked.Currency, withBreakEvens, stream));
        if (isFolder && !withBreakEvens && !study.Answer.Options.IsEmpty && !parsed.GetValue(json))
            Screen.Line("left out: what would change the answer takes long to find for this question; --break-evens finds and draws it");
        return study.Answer.Options.IsEmpty ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
    }

    private SizedPlan Ask(ParseResult parsed)
    {
        var question = wanted.Text(parsed);
        var path = parsed.GetValue(plan) is { } named ? DiskFiles.PlanPath(named) : null;
        var files = new DiskFiles();
        if (path is not null && files.Read(path) is null)
            throw new UsageFault($"the plan '{path}' cannot be read: it does not exist, is too large or is no UTF-8 text");
        if (path is null && wanted.Values(parsed, "count").Length > 0 && wanted.Values(parsed, "rate").IsEmpty)
            throw new UsageFault("--host-rate is missing: the rate of each port of a host, such as 200G");
        var sized = Screen.WithProgress(step => Compilation.Size(files, path, question, step));
        var ofFlags = sized.Findings.FirstOrDefault(f => f.Severity == Severity.Error && f.Span.Path == WantedOptions.Source);
        if (ofFlags is not null) throw new UsageFault(Words(parsed, ofFlags));
        if (!sized.HasErrors && sized.Study is null)
            throw new UsageFault("nothing is wanted: name a plan with a section 'wanted', or say --hosts and --host-rate");
        return sized;
    }

    /// <summary>Finds what stands in the way while people are told what takes so long.</summary>
    private static int InTheWay(FabricStudy study, Action<string> step)
    {
        step("looking for what stands in the way");
        return study.Relaxations.Length;
    }

    /// <summary>Finds what would change the answer while people are told what takes so long.</summary>
    private static int WorkOut(FabricStudy study, Action<string> step) => study.WorkOut((quantity, answers) => step(
        $"looking for what would change the answer: {BreakEvenWords.Key(quantity)}"
        + (answers > 0 ? $", {Numerals.Whole(answers)} questions answered" : ""))).Length;

    private string Words(ParseResult parsed, Finding finding)
    {
        var flag = wanted.FlagOf(parsed, finding.Span.Position.Line);
        return flag.Length > 0 ? $"{flag}: {finding.Message}" : finding.Message;
    }

    private static int Unread(SizedPlan sized)
    {
        FindingPrinter.Print(Screen.Lines, sized.Findings);
        return ExitCodes.ErrorsFound;
    }

    private static FabricOption Chosen(FabricStudy study, string named)
    {
        var options = study.Answer.Options;
        if (Numerals.TryWhole(named, out var number) && number >= 1 && number <= options.Length) return options[(int)number - 1];
        var words = options.Select(o => FabricShapes.Word(o.Shape)).Distinct().ToList();
        return options.FirstOrDefault(o => FabricShapes.Word(o.Shape) == named)
            ?? throw new UsageFault(words.Count == 0
                ? "nothing fits, so there is no option to write"
                : $"no option is called '{named}'{Spelling.DidYouMean(named, words)}; there are {string.Join(", ", words)}");
    }

    private static void WriteOne(Plan asked, FabricOption option, string target)
    {
        if (Directory.Exists(target)) throw new UsageFault($"'{target}' is a folder; name the plan file to write");
        var folder = Path.GetDirectoryName(Path.GetFullPath(target)) ?? ".";
        DocumentFolder.Write(folder,
            [new Deliverable(Path.GetFileName(target), stream => OptionPlan.Write(asked, option, From(folder), stream))], _ => { });
    }

    private static void WriteAll(Plan asked, FabricStudy study, string folder, bool withBreakEvens) => Screen.WithProgress(step =>
        DocumentFolder.Write(folder, FabricDocuments.Of(asked, study, From(folder), withBreakEvens), step));

    /// <summary>How a file is called from a folder.</summary>
    private static Func<string, string> From(string folder) =>
        path => Path.GetRelativePath(Path.GetFullPath(folder), Path.GetFullPath(path)).Replace('\\', '/');
}
