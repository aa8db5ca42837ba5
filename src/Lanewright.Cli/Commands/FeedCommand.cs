using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Power;
using Lanewright.Model.Power;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>feed</c>: what a load comes to in amperes, heat and air.</summary>
internal sealed class FeedCommand
{
    private readonly Option<string?> load = new("--load") { Description = "what all feeds carry together, such as 6kW", Required = true };
    private readonly Option<string?> volts = new("--volts")
    {
        Description = "between phases, or between the conductors of one phase, such as 230V", Required = true,
    };
    private readonly Option<string?> breaker = new("--breaker") { Description = "rating of each breaker, such as 32A", Required = true };
    private readonly Option<int> feeds = new("--feeds")
    {
        Description = "feeds that share the load, one of which may be lost; 2", DefaultValueFactory = _ => 2,
    };
    private readonly Option<int> phases = new("--phases") { Description = "1 or 3; 1", DefaultValueFactory = _ => 1 };
    private readonly Option<bool> isBetween = new("--phase-to-phase") { Description = "outlets lie between two phases of three" };
    private readonly Option<bool> isFullRated = new("--full-rated")
    {
        Description = "breakers are listed for their full rating without end",
    };
    private readonly Option<string?> powerFactor = new("--power-factor") { Description = "such as 95%; as of the standards tables" };
    private readonly Option<string?> share = new("--breaker-share")
    {
        Description = "share of a breaker that continuous load may take, such as 80%; as of the standards tables",
    };
    private readonly Option<string?> altitude = new("--altitude") { Description = "height above the sea, such as 1500m; 0m" };
    private readonly Option<string?> airClass = new("--air-class") { Description = "class of the equipment's inlet, A1 to A4" };
    private readonly Option<double?> rise = new("--rise") { Description = "how many kelvin the air leaves warmer than it came" };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new FeedCommand();
        var command = new Command("feed", "tell what a load comes to in amperes with a feed lost, in heat and in air")
        {
            options.load, options.volts, options.breaker, options.feeds, options.phases, options.isBetween, options.isFullRated,
            options.powerFactor, options.share, options.altitude, options.airClass, options.rise, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var answer = Answer(parsed);
        var inlet = Inlet(parsed, answer);
        if (parsed.GetValue(json)) Screen.Document(stream => ReckoningJson.Write(answer, inlet, stream));
        else Print(answer, inlet);
        return answer.Bears ? ExitCodes.NoErrors : ExitCodes.ErrorsFound;
    }

    private FeedAnswer Answer(ParseResult parsed)
    {
        var standards = StandardsLibrary.Shipped;
        var count = parsed.GetValue(feeds);
        if (count is < 1 or > 8) throw new UsageFault("--feeds lies between 1 and 8");
        return new FeedAnswer(
            Watts.From(Above(parsed, load, UnitText.Powers, "a load such as 6kW", 1e9)), Feed(parsed), count,
            Portion(parsed, powerFactor, standards.Facility("power", "factor")),
            Portion(parsed, share, standards.Facility("breaker", "continuous-share")))
        {
            Altitude = High(QuantityOptions.Length(parsed, altitude) ?? default),
            Rise = Warmer(parsed, standards),
            Standards = standards,
        };
    }

    private PowerFeed Feed(ParseResult parsed)
    {
        var count = parsed.GetValue(phases);
        if (count is not (1 or 3)) throw new UsageFault("--phases is 1 or 3");
        if (count == 1 && parsed.GetValue(isBetween)) throw new UsageFault("--phase-to-phase goes with --phases 3");
        var voltage = Above(parsed, volts, UnitText.Voltages, "a voltage such as 230V", 1500);
        var rating = Amperes.From(Above(parsed, breaker, UnitText.Currents, "a current such as 32A", 10_000));
        return new PowerFeed("feed", [], voltage, count, parsed.GetValue(isBetween), rating, parsed.GetValue(isFullRated), default);
    }

    private static double Above(ParseResult parsed, Option<string?> option, IReadOnlyList<UnitScale> units, string wanted, double most) =>
        QuantityOptions.Read(parsed, option, units, wanted) is { } value and > 0 && value <= most
            ? value
            : throw new UsageFault($"{option.Name} lies above 0 and up to {Numerals.Unit(most, units[0].Name)}");

    private static Known<double> Portion(ParseResult parsed, Option<string?> option, Known<double> usual)
    {
        if (QuantityOptions.Share(parsed, option) is not { } stated) return usual;
        return stated.Value is > 0 and <= 1
            ? new Known<double>(stated.Value, Citation.OfPlan)
            : throw new UsageFault($"{option.Name} lies above 0 % and up to 100 %");
    }

    private static Length High(Length altitude) =>
        altitude.Metres <= 9000 ? altitude : throw new UsageFault("--altitude lies between 0 and 9000 m");

    private TemperatureRise Warmer(ParseResult parsed, StandardsLibrary standards) => parsed.GetValue(rise) switch
    {
        null => new AirStream(standards).UsualRise,
        > 0 and <= 100 and var kelvin => TemperatureRise.FromKelvin(kelvin),
        _ => throw new UsageFault("--rise lies above 0 and up to 100 K"),
    };

    private InletLimits? Inlet(ParseResult parsed, FeedAnswer answer)
    {
        if (parsed.GetValue(airClass) is not { } name) return null;
        if (!Classes.Contains(name)) throw new UsageFault($"--air-class '{name}' is none of {string.Join(", ", Classes)}");
        var limits = InletLimits.Of(answer.Standards, name, answer.Altitude);
        return answer.Altitude <= limits.Highest.Value
            ? limits
            : throw new UsageFault($"class {name} says nothing above {limits.Highest.Value}");
    }

    private static void Print(FeedAnswer answer, InletLimits? inlet)
    {
        var rows = new List<IReadOnlyList<string>>
        {
            Row("a phase of each feed", answer.Normal.ToString()),
            Row("its breaker carries without end", $"{answer.Limit} of {answer.Feed.Breaker}"),
            Row("the least breaker for that", answer.LeastBreaker.ToString()),
            Row("heat", $"{answer.Load}, {Numerals.Grouped((decimal)Math.Round(AirStream.BtuAnHour(answer.Load)))} BTU/h"),
            Row("air", $"{Numerals.Shown(answer.Air, "m3/h")}, "
                + $"{Numerals.Shown(AirStream.CubicFeetAMinute(answer.Air), "ft3/min")}, "
                + $"{Numerals.Plain(Math.Round(answer.Rise.Kelvin, 2))} K warmer, of "
                + $"{Numerals.Plain(Math.Round(answer.Density, 4))} kg/m3"),
        };
        if (answer.AfterLoss is { } after) rows.Insert(1, Row("the same with a feed lost", after.ToString()));
        if (inlet is not null) rows.Add(Row($"air at inlets, class {inlet.Class}", $"up to {inlet.AllowableHigh.Value}"));
        Screen.Print(["", ""], rows);
        Screen.Line(answer.Bears
            ? "the breaker bears it"
            : "the breaker does not bear it" + (answer.AfterLoss is null ? "" : " with a feed lost"));
        Screen.Line("even over feeds and phases, which a rack is not; a plan tells what each phase carries. For planning only: a licensed "
            + "electrician sizes circuits under the local code");
    }

    private static IReadOnlyList<string> Row(string what, string value) => [what, value];

    private static readonly string[] Classes = ["A1", "A2", "A3", "A4"];
}
