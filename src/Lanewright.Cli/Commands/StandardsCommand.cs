using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>standards</c>: list and search the tables, or show one subject whole with its sources.</summary>
internal sealed class StandardsCommand
{
    private readonly Argument<string?> subject = new("SUBJECT")
    {
        Description = "one subject to show whole, such as 400GBASE-DR4",
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<string?> table = new("--table") { Description = "only this table" };
    private readonly Option<string?> rate = new("--rate") { Description = "only subjects of this rate" };
    private readonly Option<string?> medium = new("--medium")
    {
        Description = "only types that run on this medium: OS2, OM4, DAC and so on",
    };
    private readonly Option<string?> reach = new("--reach") { Description = "only types that reach at least this far on the medium" };
    private readonly Option<string?> formFactor = new("--form-factor")
    {
        Description = "only types a shipped module of this form factor runs",
    };
    private readonly Option<string?> find = new("--find")
    {
        Description = "only subjects whose name, values or sources hold this text, such as G.694.1",
    };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new StandardsCommand();
        var command = new Command("standards", "list and search the standards values, or show one subject with its sources")
        {
            options.subject, options.table, options.rate, options.medium, options.reach, options.formFactor, options.find, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var library = StandardsLibrary.Shipped;
        if (parsed.GetValue(subject) is { } named)
        {
            Show(library, named, parsed.GetValue(json));
            return ExitCodes.NoErrors;
        }
        var query = new StandardsQuery(library, Model.Binding.CatalogueBinder.Shipped)
        {
            Table = parsed.GetValue(table),
            Rate = QuantityOptions.Rate(parsed, rate),
            Medium = parsed.GetValue(medium),
            Reach = QuantityOptions.Length(parsed, reach),
            FormFactor = parsed.GetValue(formFactor),
            Find = parsed.GetValue(find),
        };
        if (query.Problem is { } problem) throw new UsageFault(problem);
        var found = query.Answer();
        if (parsed.GetValue(json)) Screen.Document(stream => StandardsJson.WriteList(found, stream));
        else Print(found);
        return ExitCodes.NoErrors;
    }

    private static void Print(IReadOnlyCollection<(string Table, FactSheet Sheet)> found)
    {
        Screen.Print(
            ["table", "subject", "rate", "lanes", "signal", "medium", "reach", "standard", "weakest mark"],
            found.Select(f => (IReadOnlyList<string>)
            [
                f.Table, f.Sheet.Subject, Value(f.Sheet, "rate"), Value(f.Sheet, "media-lanes", "lanes"), Signal(f.Sheet),
                Value(f.Sheet, "fibre", "medium", "kind"), Value(f.Sheet, "reach-os2", "reach-om4", "reach-om3", "reach"),
                f.Sheet.Facts[0].Source.Document, Marks.Name(f.Sheet.Facts.Max(x => x.Source.Mark)),
            ]));
        var subjects = found.Count == 1 ? "1 subject" : $"{found.Count} subjects";
        Screen.Line($"{subjects}; 'lanewright standards SUBJECT' shows one whole with its sources");
    }

    private static string Signal(FactSheet sheet) =>
        sheet["baud"] is null ? "" : $"{sheet.Word("baud")} GBd {sheet.Word("modulation")}";

    private static string Value(FactSheet sheet, params string[] fields)
    {
        foreach (var field in fields)
            if (sheet[field] is { } fact) return fact.Unit.Length > 0 ? fact.Value + " " + fact.Unit : fact.Value;
        return "";
    }

    private static void Show(StandardsLibrary library, string named, bool asJson)
    {
        var found = StandardsQuery.Subjects(library, named);
        if (found.Count == 0)
        {
            var known = library.Sheets.Values.SelectMany(t => t.Sheets).Select(s => s.Subject);
            throw new UsageFault(
                $"no subject is called '{named}'{Spelling.DidYouMean(named, known)}; 'lanewright standards --find TEXT' searches");
        }
        if (asJson)
        {
            Screen.Document(stream => StandardsJson.WriteSheets(found, stream));
            return;
        }
        foreach (var (table, sheet) in found)
        {
            Screen.Line($"{sheet.Subject} ({table})");
            Screen.Print(
                ["field", "value", "unit", "source", "mark", "read in", "note"],
                sheet.Facts.Select(f => (IReadOnlyList<string>)
                [
                    f.Field, f.Value, f.Unit, f.Source.ToString(), Marks.Name(f.Source.Mark), f.Source.ReadIn, f.Source.Note,
                ]));
            foreach (var (key, what) in StandardsQuery.TextsReadIn(sheet)) Screen.Line($"  {key}: {what}");
        }
    }
}
