using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Reliability;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Cli.Commands;

/// <summary><c>spares</c>: how many spares last until more arrive, and how often enough units work.</summary>
internal sealed class SparesCommand
{
    private readonly Option<int> units = new("--units") { Description = "units in use", Required = true };
    private readonly Option<string?> fit = new("--fit") { Description = "failures of one in a thousand million hours, such as 3619" };
    private readonly Option<string?> mtbf = new("--mtbf") { Description = "instead: mean time between failures of one, such as 300000h" };
    private readonly Option<string?> perYear = new("--per-year") { Description = "instead: failures of one in a year, such as 0.02" };
    private readonly Option<string?> resupply = new("--resupply")
    {
        Description = "from ordering a spare to having it, such as 10d; 30d", DefaultValueFactory = _ => "30d",
    };
    private readonly Option<string?> confidence = new("--confidence")
    {
        Description = "how sure spares are to last, such as 99.9%; 99.9%", DefaultValueFactory = _ => "99.9%",
    };
    private readonly Option<int?> needed = new("--needed") { Description = "units of them that have to work" };
    private readonly Option<string?> repair = new("--repair")
    {
        Description = "with --needed: from failure to working again, such as 4h; 4h", DefaultValueFactory = _ => "4h",
    };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new SparesCommand();
        var command = new Command("spares", "tell how many spares last until more arrive, and how often enough units work")
        {
            options.units, options.fit, options.mtbf, options.perYear, options.resupply, options.confidence, options.needed,
            options.repair, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var answer = Answer(parsed);
        if (parsed.GetValue(json)) Screen.Document(stream => ReckoningJson.Write(answer, stream));
        else Print(answer);
        return ExitCodes.NoErrors;
    }

    private SpareAnswer Answer(ParseResult parsed)
    {
        var count = parsed.GetValue(units);
        if (count is < 1 or > MostUnits) throw new UsageFault($"--units lies between 1 and {Numerals.Whole(MostUnits)}");
        var level = QuantityOptions.Share(parsed, confidence) ?? default;
        if (level.Value is not (> 0 and < 1)) throw new UsageFault("--confidence lies above 0 % and below 100 %");
        if (parsed.GetValue(needed) is { } asked && (asked < 1 || asked > count))
            throw new UsageFault("--needed lies between 1 and --units");
        return new SpareAnswer(Rate(parsed), count, Time(parsed, resupply), level)
        {
            Needed = parsed.GetValue(needed),
            Repair = Time(parsed, repair),
        };
    }

    private FailureIntensity Rate(ParseResult parsed)
    {
        Option<string?>[] ways = [fit, mtbf, perYear];
        if (ways.Count(w => parsed.GetValue(w) is not null) != 1) throw new UsageFault("give one of --fit, --mtbf and --per-year");
        if (parsed.GetValue(mtbf) is not null)
        {
            var between = QuantityOptions.Read(parsed, mtbf, UnitText.Repairs, "a time such as 300000h") ?? 0;
            return between >= 1
                ? FailureIntensity.FromMeanTimeBetween(Duration.FromHours(between))
                : throw new UsageFault("--mtbf is 1 h or more");
        }
        return Number(parsed, fit) is { } each
            ? FailureIntensity.FromFit(each)
            : FailureIntensity.FromPerYear(Number(parsed, perYear) ?? 0);
    }

    private static double? Number(ParseResult parsed, Option<string?> option)
    {
        const string wanted = "number of failures, zero or more";
        if (QuantityOptions.Number(parsed, option, wanted) is not { } value) return null;
        return value is >= 0 and <= UnitText.Largest
            ? value
            : throw new UsageFault($"{option.Name} '{parsed.GetValue(option)}' is no {wanted}");
    }

    private static Duration Time(ParseResult parsed, Option<string?> option) =>
        QuantityOptions.Read(parsed, option, UnitText.Repairs, "a time such as 10d or 4h") is { } hours and >= 0 and <= MostHours
            ? Duration.FromHours(hours)
            : throw new UsageFault($"{option.Name} lies between 0 and 100 years");

    private static void Print(SpareAnswer answer)
    {
        Screen.Print(["convention", "what it promises", "spares", "reached"],
        [
            Row(answer, SpareCount.OneOnShelf, "S", "a spare still lies on the shelf when more arrive"),
            Row(answer, SpareCount.NeverShort, "F", "no failure waits for a part until more arrive"),
        ]);
        Screen.Line($"{Numerals.Whole(answer.Units)} of {answer.Each} each: {Numerals.Shown(answer.PerYear, "")} failures a year, "
            + $"{Numerals.Shown(answer.Expected, "")} in the {Numerals.Shown(answer.Resupply.Hours, "h")} until more arrive");
        if (answer is { Needed: { } enough, EnoughUp: { } up })
            Screen.Line($"{Numerals.Whole(enough)} of {Numerals.Whole(answer.Units)} work {Percent(up)} of the time, one by itself "
                + $"{Percent(answer.Up)}");
        Screen.Line("failures come at a constant rate and one by one; early ones, and causes that take many at once, are outside it");
    }

    private static IReadOnlyList<string> Row(SpareAnswer answer, SpareCount count, string name, string promise)
    {
        var spares = answer.Spares(count);
        return [name, promise, Numerals.Whole(spares), Percent(answer.Reached(spares, count))];
    }

    private static string Percent(Share share) => Numerals.Fixed(share.Percent, 5) + " %";

    private const int MostUnits = 10_000_000;
    private const double MostHours = 876_000;
}
